package sopwell.orders;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import sopwell.log.Event;

/**
 * The place that the next order takes. Immutable.
 *
 * @param before what must happen first: a day past its cut closes, a day opens
 * @param order the order's id
 * @param number the order's number, or empty when every number is on an open order
 */
record Slot(List<Event> before, String order, Optional<Integer> number) {
    private static final int ORDINAL_DIGITS = 4;

    static Slot next(Orders orders, StandSettings settings, long nowMs) {
        List<Event> before = Days.before(orders, settings, nowMs);
        if (before.isEmpty()) {
            return new Slot(
                    before,
                    id(orders.date().orElseThrow(), orders.nextOrdinal()),
                    orders.freeNumber(settings.numberMax()));
        }
        OrderEvent.DayOpened opened = Days.opening(orders, settings, nowMs);
        int number = (opened.firstNumber() - 1) % settings.numberMax() + 1;
        return new Slot(before, id(opened.date(), opened.firstOrdinal()), Optional.of(number));
    }

    private static String id(LocalDate date, int ordinal) {
        String running = Integer.toString(ordinal);
        return date.format(DateTimeFormatter.BASIC_ISO_DATE)
                + "-"
                + "0".repeat(Math.max(0, ORDINAL_DIGITS - running.length()))
                + running;
    }
}
