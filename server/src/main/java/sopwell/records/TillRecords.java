package sopwell.records;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sopwell.orders.Orders;
import sopwell.records.TableWriter.Plain;
import sopwell.till.DayReport;
import sopwell.till.Drawer;
import sopwell.till.Move;
import sopwell.till.Takings;

/**
 * A day's money: one figure a row, so that a spreadsheet can sum and filter. Amounts are whole and
 * hundredths with a point. Not thread-safe.
 */
public final class TillRecords {
    /** The columns, in their order. */
    public static final List<String> COLUMNS =
            List.of(
                    "date", "figure", "cashier", "time", "order", "means", "reason", "count",
                    "amount");

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private final TableWriter to;
    private final DayReport report;
    private final ZoneId zone;

    private TillRecords(TableWriter to, DayReport report, ZoneId zone) {
        this.to = to;
        this.report = report;
        this.zone = zone;
    }

    /** Writes a day; times are by the stand's clock. */
    public static void write(TableWriter to, DayReport report, ZoneId zone) throws IOException {
        new TillRecords(to, report, zone).all();
    }

    private void all() throws IOException {
        DayReport.Sales sales = report.sales();
        sum("orders", "", sales.orders(), sales.totalCents());
        row(List.of("voids", "", TableWriter.NONE, "", "", ""), sales.voids(), TableWriter.NONE);
        sum("subtotal", "", TableWriter.NONE, sales.subtotalCents());
        sum("discounts", "", TableWriter.NONE, -sales.discountCents());
        sum("staff meals", "", TableWriter.NONE, -sales.staffMealCents());
        sum("net sales", "", TableWriter.NONE, sales.netCents());
        sum("tax", "", TableWriter.NONE, sales.taxCents());
        sum("goodwill", "", TableWriter.NONE, -report.goodwillCents());
        sum("unpaid", "", report.unpaid().orders(), report.unpaid().cents());
        sum("due back", "", report.dueBack().orders(), report.dueBack().cents());
        takings("all", report.takings());
        takings("apart", report.apart());
        for (Drawer drawer : report.drawers()) {
            drawer(drawer);
        }
        for (Move move : report.moves()) {
            move(move);
        }
        for (Orders.Reopening again : report.reopenings()) {
            row(
                    List.of("reopened", "", time(again.atMs()), "", "", again.reason()),
                    TableWriter.NONE,
                    TableWriter.NONE);
        }
    }

    private void takings(String cashier, Takings takings) throws IOException {
        sum("cash", cashier, TableWriter.NONE, takings.cashCents());
        sum("card", cashier, TableWriter.NONE, takings.cardCents());
        sum("tips in cash", cashier, TableWriter.NONE, takings.cashTipCents());
        sum("tips by card", cashier, TableWriter.NONE, takings.cardTipCents());
        sum("cash rounding", cashier, TableWriter.NONE, takings.roundingCents());
        sum("refunds in cash", cashier, TableWriter.NONE, -takings.cashBackCents());
        sum("refunds to card", cashier, TableWriter.NONE, -takings.cardBackCents());
    }

    private void drawer(Drawer drawer) throws IOException {
        String cashier = drawer.cashier();
        timed("float", cashier, drawer.openedAtMs(), drawer.floatCents());
        takings(cashier, drawer.takings());
        sum("paid in", cashier, TableWriter.NONE, drawer.inCents());
        sum("paid out", cashier, TableWriter.NONE, -drawer.outCents());
        sum("expected", cashier, TableWriter.NONE, drawer.expectedCents());
        if (drawer.counted().isPresent()) {
            Drawer.Counted counted = drawer.counted().get();
            timed("counted", cashier, counted.atMs(), counted.countedCents());
            timed("over", cashier, counted.atMs(), counted.overCents());
        }
    }

    private void move(Move move) throws IOException {
        String kind =
                switch (move.kind()) {
                    case PAID_IN -> "one paid in";
                    case PAID_OUT -> "one paid out";
                    case REFUNDED -> "one refund";
                    case PAID, OPENED, CLOSED -> "";
                };
        row(
                List.of(
                        kind,
                        move.cashier(),
                        time(move.atMs()),
                        move.order(),
                        move.means().name().toLowerCase(Locale.ROOT),
                        move.reason()),
                TableWriter.NONE,
                amount(kind.equals("one paid in") ? move.cents() : -move.cents()));
    }

    private void sum(String figure, String cashier, Object count, long cents) throws IOException {
        row(List.of(figure, cashier, TableWriter.NONE, "", "", ""), count, amount(cents));
    }

    private void timed(String figure, String cashier, long atMs, long cents) throws IOException {
        row(List.of(figure, cashier, time(atMs), "", "", ""), TableWriter.NONE, amount(cents));
    }

    private void row(List<Object> what, Object count, Plain amount) throws IOException {
        List<Object> cells = new ArrayList<>();
        cells.add(new Plain(report.date().toString()));
        cells.addAll(what);
        cells.add(count);
        cells.add(amount);
        to.row(cells);
    }

    private Plain time(long atMs) {
        return new Plain(TIME.format(Instant.ofEpochMilli(atMs).atZone(zone)));
    }

    private static Plain amount(long cents) {
        long whole = Math.abs(cents);
        return new Plain(
                String.format(
                        Locale.ROOT, "%s%d.%02d", cents < 0 ? "-" : "", whole / 100, whole % 100));
    }
}
