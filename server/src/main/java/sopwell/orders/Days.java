package sopwell.orders;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import sopwell.log.Event;

/** When business days begin and end. Stateless. */
final class Days {
    /** Why a day goes on that was closed by hand, when nobody was asked. */
    static final String WENT_ON = "after-close";

    private Days() {}

    /**
     * The opening of a day now; a date that was open before goes on where it stopped. Dates never
     * go back: a stand whose zone was moved west may have a local date that is over, and goes on
     * with its newest, or the old one's numbers and ids would be given again.
     */
    static OrderEvent.DayOpened opening(Orders orders, StandSettings settings, long nowMs) {
        ZonedDateTime now = Instant.ofEpochMilli(nowMs).atZone(settings.zone());
        LocalDate local = now.toLocalDate();
        LocalDate date = orders.date().filter(local::isBefore).orElse(local);
        boolean goesOn = orders.date().filter(date::equals).isPresent();
        return new OrderEvent.DayOpened(
                date,
                settings.zone().getId(),
                cutAfter(now, settings.cutHour()).toInstant().toEpochMilli(),
                goesOn ? orders.nextNumber() : 1,
                goesOn ? orders.nextOrdinal() : 1);
    }

    /** The newest day goes on where it stopped, until its own cut hour. */
    static List<OrderEvent> reopening(Orders orders, StandSettings settings, String reason) {
        LocalDate date = orders.date().orElseThrow();
        return List.of(
                new OrderEvent.DayOpened(
                        date,
                        settings.zone().getId(),
                        orders.cutAtMs(),
                        orders.nextNumber(),
                        orders.nextOrdinal()),
                new OrderEvent.DayReopened(date, reason));
    }

    static OrderEvent.DayClosed closing(Orders orders, boolean byCut) {
        List<String> leftOpen = orders.open().stream().map(Order::id).toList();
        return new OrderEvent.DayClosed(orders.date().orElseThrow(), byCut, leftOpen);
    }

    static boolean isPastCut(Orders orders, long nowMs) {
        return orders.isDayOpen() && nowMs >= orders.cutAtMs();
    }

    /**
     * What must happen first so that something can happen now: a day past its cut closes, a day
     * opens.
     */
    static List<Event> before(Orders orders, StandSettings settings, long nowMs) {
        boolean cut = isPastCut(orders, nowMs);
        if (orders.isDayOpen() && !cut) {
            return List.of();
        }
        if (cut) {
            return List.of(closing(orders, true), opening(orders, settings, nowMs));
        }
        return openings(orders, settings, nowMs);
    }

    /**
     * The opening of a day now while none is open; a day that was closed by hand and goes on says
     * so, so that nobody has to guess why its log has two closings.
     */
    static List<Event> openings(Orders orders, StandSettings settings, long nowMs) {
        OrderEvent.DayOpened opened = opening(orders, settings, nowMs);
        boolean goesOn = orders.date().filter(opened.date()::equals).isPresent();
        return goesOn && nowMs < orders.cutAtMs()
                ? List.of(opened, new OrderEvent.DayReopened(opened.date(), WENT_ON))
                : List.of(opened);
    }

    private static ZonedDateTime cutAfter(ZonedDateTime now, int cutHour) {
        ZonedDateTime cut = now.toLocalDate().atTime(cutHour, 0).atZone(now.getZone());
        if (cut.isAfter(now)) {
            return cut;
        }
        return now.toLocalDate().plusDays(1).atTime(cutHour, 0).atZone(now.getZone());
    }
}
