package sopwell.web.pages;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import sopwell.till.DayReport;
import sopwell.till.Drawer;
import sopwell.till.Means;
import sopwell.till.Move;
import sopwell.till.Takings;
import sopwell.web.T;

/** A day's money in one language, as rows of words and amounts. Immutable. */
public record ReportView(T t, DayReport report, ZoneId zone, WhoWords words) {
    /**
     * One row.
     *
     * @param sum whether it is the sum of what stands above it
     */
    public record Row(String label, String amount, boolean sum) {}

    /** What was sold. */
    public List<Row> sales() {
        DayReport.Sales sales = report.sales();
        List<Row> rows = new ArrayList<>();
        if (sales.subtotalCents() != sales.netCents()) {
            rows.add(row("report.subtotal", sales.subtotalCents()));
        }
        rowIfAny(rows, "report.discounts", -sales.discountCents());
        rowIfAny(rows, "report.staff-meals", -sales.staffMealCents());
        rows.add(row("report.net", sales.netCents()));
        rows.add(row("report.tax", sales.taxCents()));
        rows.add(sum("report.total", sales.totalCents()));
        return rows;
    }

    /** How it was paid; the last row is what the orders came to. */
    public List<Row> paid() {
        Takings takings = report.takings();
        List<Row> rows = new ArrayList<>();
        rows.add(row("report.cash", takings.cashCents()));
        rows.add(row("report.card", takings.cardCents()));
        rowIfAny(rows, "report.cash-back", -takings.cashBackCents());
        rowIfAny(rows, "report.card-back", -takings.cardBackCents());
        rowIfAny(rows, "report.goodwill", report.goodwillCents());
        rowIfAny(rows, "report.unpaid", report.unpaid().cents());
        rowIfAny(rows, "report.due-back", -report.dueBack().cents());
        rows.add(sum("report.total", report.sales().totalCents()));
        return rows;
    }

    /** What came in beside sales. */
    public List<Row> beside() {
        Takings takings = report.takings();
        List<Row> rows = new ArrayList<>();
        rows.add(row("report.cash-tips", takings.cashTipCents()));
        rows.add(row("report.card-tips", takings.cardTipCents()));
        rowIfAny(rows, "report.rounding", takings.roundingCents());
        return rows;
    }

    /** One till, from its float to what was over or short. */
    public List<Row> drawer(Drawer drawer) {
        Takings takings = drawer.takings();
        List<Row> rows = new ArrayList<>();
        rows.add(row("report.float", drawer.floatCents()));
        rows.add(row("report.cash", takings.cashCents()));
        rowIfAny(rows, "report.rounding", takings.roundingCents());
        rowIfAny(rows, "report.cash-tips", takings.cashTipCents());
        rowIfAny(rows, "report.cash-back", -takings.cashBackCents());
        rowIfAny(rows, "report.paid-in", drawer.inCents());
        rowIfAny(rows, "report.paid-out", -drawer.outCents());
        rows.add(sum("report.expected", drawer.expectedCents()));
        drawer.counted().ifPresent(c -> rows.add(row("report.counted", c.countedCents())));
        return rows;
    }

    /** How a till came out, or that nobody counted it. */
    public String verdict(Drawer drawer) {
        return drawer.counted()
                .map(counted -> TillView.verdict(t, counted.overCents()))
                .orElseGet(() -> t.get("report.not-counted"));
    }

    /** When a till was open. */
    public String hours(Drawer drawer) {
        String from = t.time(drawer.openedAtMs(), zone);
        return drawer.counted()
                .map(counted -> t.of("report.from-to", from, t.time(counted.atMs(), zone)))
                .orElseGet(() -> t.of("report.since", from));
    }

    /** What a move was. */
    public String kind(Move move) {
        return switch (move.kind()) {
            case PAID_IN -> t.get("report.paid-in");
            case PAID_OUT -> t.get("report.paid-out");
            case REFUNDED ->
                    t.get(move.means() == Means.CASH ? "report.cash-back" : "report.card-back");
            case PAID, OPENED, CLOSED -> "";
        };
    }

    /** When and why the day went on after it was closed, a sentence each. */
    public List<String> reopenings() {
        return report.reopenings().stream()
                .map(
                        again ->
                                t.of(
                                        again.by().isPresent()
                                                ? "report.reopened.by"
                                                : "report.reopened",
                                        t.time(again.atMs(), zone),
                                        t.reason(again.reason()),
                                        again.by().map(who -> words.who(who, t)).orElse("")))
                .toList();
    }

    public String time(Move move) {
        return t.time(move.atMs(), zone);
    }

    /** Whether money was taken at no open till. */
    public boolean hasApart() {
        return !report.apart().equals(Takings.NONE);
    }

    private Row row(String key, long cents) {
        return new Row(t.get(key), t.money(cents), false);
    }

    private Row sum(String key, long cents) {
        return new Row(t.get(key), t.money(cents), true);
    }

    private void rowIfAny(List<Row> rows, String key, long cents) {
        if (cents != 0) {
            rows.add(row(key, cents));
        }
    }
}
