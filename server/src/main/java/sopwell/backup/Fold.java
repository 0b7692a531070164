package sopwell.backup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.orders.Order;
import sopwell.till.DayReport;

/**
 * What a log comes to when all of it is read: the newest day's orders and money. Two logs with the
 * same events have the same. Immutable.
 *
 * @param seq the last event
 * @param atMs when that was
 * @param date the newest business day, if there was one
 * @param orders its orders, as they stand
 * @param report its money, if there was one
 */
record Fold(
        long seq,
        long atMs,
        Optional<LocalDate> date,
        List<Order> orders,
        Optional<DayReport> report) {
    Fold {
        orders = List.copyOf(orders);
    }

    static Fold of(Stand stand) {
        Optional<LocalDate> date = stand.orders().date();
        return new Fold(
                stand.seq(),
                stand.atMs(),
                date,
                List.copyOf(stand.orders().all()),
                date.map(day -> DayReport.of(stand.orders(), stand.till())));
    }
}
