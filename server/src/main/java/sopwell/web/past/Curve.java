package sopwell.web.past;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.audit.AuditEvent;
import sopwell.desk.Stand;
import sopwell.kitchen.OrderStage;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent;
import sopwell.menu.Station;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.prep.HistoryEvent;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.recipes.RecipeEvent;

/** Looks at a stand once a minute while its day is read. Not thread-safe: for one reading. */
final class Curve {
    private static final long MINUTE_MS = 60_000;

    private final Stand stand;
    private final List<PastDay.Minute> minutes = new ArrayList<>();
    private long fromMs = -1;
    private long lastMs;

    /** A curve of a stand to which the day's events are handed through this. */
    Curve(Stand stand) {
        this.stand = stand;
    }

    /** Takes in the day's next event. */
    void apply(Recorded recorded) {
        if (fromMs < 0) {
            fromMs = recorded.atMs();
            lastMs = fromMs;
        }
        if (isOfTheLunch(recorded.event())) {
            lookUntil(recorded.atMs());
            lastMs = recorded.atMs();
        }
        stand.apply(recorded);
    }

    /** Closing is not, nor is what an owner does with the books at night, before another day. */
    private static boolean isOfTheLunch(Event event) {
        return !(event instanceof OrderEvent.DayClosed
                || event instanceof MenuEvent
                || event instanceof RecipeEvent
                || event instanceof CalendarEvent
                || event instanceof HistoryEvent
                || event instanceof AuditEvent
                || event instanceof LarderEvent
                || event instanceof BatchEvent);
    }

    /** The day as it was read. */
    PastDay done(LocalDate date) {
        lookUntil(lastMs + MINUTE_MS);
        List<Station> stations = menu(stand).map(Menu::stations).orElse(List.of());
        int seconds = second(lastMs + 999);
        return new PastDay(date, fromMs, seconds, stations, minutes, peak(), slowest());
    }

    /** The menu of a day's last order: another may have come before the next day was opened. */
    static Optional<Menu> menu(Stand stand) {
        Optional<Menu> last = stand.hasMenu() ? Optional.of(stand.menu()) : Optional.empty();
        for (Order order : stand.orders().all()) {
            last = Optional.of(stand.menuOf(order.menuRevision()));
        }
        return last;
    }

    private int second(long atMs) {
        return (int) ((atMs - fromMs) / 1000);
    }

    private void lookUntil(long atMs) {
        while (fromMs + minutes.size() * MINUTE_MS < atMs) {
            minutes.add(look(fromMs + minutes.size() * MINUTE_MS));
        }
    }

    private PastDay.Minute look(long atMs) {
        int waiting = 0;
        long oldestMs = atMs;
        for (Order order : stand.orders().open()) {
            if (stand.kitchen().stage(order) != OrderStage.UP) {
                waiting++;
                oldestMs = Math.min(oldestMs, order.takenAtMs());
            }
        }
        return new PastDay.Minute(waiting, (int) ((atMs - oldestMs) / 1000));
    }

    private Optional<PastDay.Peak> peak() {
        PastDay.Peak peak = new PastDay.Peak(0, 0);
        for (int minute = 0; minute < minutes.size(); minute++) {
            if (minutes.get(minute).waiting() > peak.waiting()) {
                peak = new PastDay.Peak(minute * 60, minutes.get(minute).waiting());
            }
        }
        return peak.waiting() == 0 ? Optional.empty() : Optional.of(peak);
    }

    private Optional<PastDay.Slowest> slowest() {
        Optional<PastDay.Slowest> slowest = Optional.empty();
        long mostMs = -1;
        for (Order order : stand.orders().all()) {
            long wholeMs = stand.kitchen().wholeAtMs(order.id());
            OrderStage stage = stand.kitchen().stage(order);
            boolean whole = stage == OrderStage.UP || stage == OrderStage.HANDED;
            if (whole && wholeMs > 0 && wholeMs - order.takenAtMs() > mostMs) {
                mostMs = wholeMs - order.takenAtMs();
                int before = Math.max(0, second(wholeMs - 1000));
                slowest =
                        Optional.of(
                                new PastDay.Slowest(before, order.number(), (int) (mostMs / 1000)));
            }
        }
        return slowest;
    }
}
