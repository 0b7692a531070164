package sopwell.web.api;

import io.undertow.server.HttpServerExchange;
import io.undertow.util.Headers;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Deque;
import java.util.Locale;
import java.util.Map;
import sopwell.till.DayReport;
import sopwell.till.Drawer;
import sopwell.till.Move;
import sopwell.till.Takings;
import sopwell.web.Reply;

/**
 * The day's report as comma-separated values, RFC 4180: lines end with CR LF, the first line names
 * the columns, and a text with commas, quotes or line ends stands in quotes. One figure a line, so
 * that a spreadsheet can sum and filter. Amounts are whole and hundredths with a point.
 *
 * <p>A text that somebody typed and that begins like a formula gets an apostrophe before it, so
 * that no spreadsheet computes it.
 */
final class TillCsv {
    private static final String TYPE = "text/csv; charset=utf-8; header=present";
    private static final String FORMULA = "=+-@\t\r";
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private final StringBuilder text = new StringBuilder();
    private final DayReport report;
    private final ZoneId zone;

    private TillCsv(DayReport report, ZoneId zone) {
        this.report = report;
        this.zone = zone;
    }

    /** Whether a request wants this rather than JSON: by {@code as=csv}, or by what it accepts. */
    static boolean isWanted(HttpServerExchange exchange) {
        Deque<String> as = exchange.getQueryParameters().get("as");
        if (as != null) {
            return as.getFirst().equals("csv");
        }
        String accept = exchange.getRequestHeaders().getFirst(Headers.ACCEPT);
        return accept != null && accept.strip().toLowerCase(Locale.ROOT).startsWith("text/csv");
    }

    static Reply reply(DayReport report, ZoneId zone) {
        byte[] bytes = of(report, zone).getBytes(StandardCharsets.UTF_8);
        return new Reply(
                200,
                TYPE,
                ByteBuffer.wrap(bytes),
                Map.of(
                        "Content-Disposition",
                        "attachment; filename=\"till-" + report.date() + ".csv\""));
    }

    static String of(DayReport report, ZoneId zone) {
        TillCsv csv = new TillCsv(report, zone);
        csv.all();
        return csv.text.toString();
    }

    private void all() {
        line("date", "figure", "cashier", "time", "order", "means", "reason", "count", "amount");
        DayReport.Sales sales = report.sales();
        sum("orders", "", sales.orders(), sales.totalCents());
        line(report.date().toString(), "voids", "", "", "", "", "", "" + sales.voids(), "");
        sum("subtotal", "", "", sales.subtotalCents());
        sum("discounts", "", "", -sales.discountCents());
        sum("staff meals", "", "", -sales.staffMealCents());
        sum("net sales", "", "", sales.netCents());
        sum("tax", "", "", sales.taxCents());
        sum("goodwill", "", "", -report.goodwillCents());
        sum("unpaid", "", report.unpaid().orders(), report.unpaid().cents());
        sum("due back", "", report.dueBack().orders(), report.dueBack().cents());
        takings("all", report.takings());
        takings("apart", report.apart());
        report.drawers().forEach(this::drawer);
        report.moves().forEach(this::move);
    }

    private void takings(String cashier, Takings takings) {
        sum("cash", cashier, "", takings.cashCents());
        sum("card", cashier, "", takings.cardCents());
        sum("tips in cash", cashier, "", takings.cashTipCents());
        sum("tips by card", cashier, "", takings.cardTipCents());
        sum("cash rounding", cashier, "", takings.roundingCents());
        sum("refunds in cash", cashier, "", -takings.cashBackCents());
        sum("refunds to card", cashier, "", -takings.cardBackCents());
    }

    private void drawer(Drawer drawer) {
        String cashier = safe(drawer.cashier());
        timed("float", cashier, drawer.openedAtMs(), drawer.floatCents());
        takings(cashier, drawer.takings());
        sum("paid in", cashier, "", drawer.inCents());
        sum("paid out", cashier, "", -drawer.outCents());
        sum("expected", cashier, "", drawer.expectedCents());
        if (drawer.counted().isPresent()) {
            Drawer.Counted counted = drawer.counted().get();
            timed("counted", cashier, counted.atMs(), counted.countedCents());
            timed("over", cashier, counted.atMs(), counted.overCents());
        }
    }

    private void move(Move move) {
        String kind =
                switch (move.kind()) {
                    case PAID_IN -> "one paid in";
                    case PAID_OUT -> "one paid out";
                    case REFUNDED -> "one refund";
                    case PAID, OPENED, CLOSED -> "";
                };
        line(
                report.date().toString(),
                kind,
                safe(move.cashier()),
                time(move.atMs()),
                move.order(),
                OrderJson.word(move.means()),
                safe(move.reason()),
                "",
                amount(kind.equals("one paid in") ? move.cents() : -move.cents()));
    }

    private void sum(String figure, String cashier, Object count, long cents) {
        line(report.date().toString(), figure, cashier, "", "", "", "", "" + count, amount(cents));
    }

    private void timed(String figure, String cashier, long atMs, long cents) {
        line(report.date().toString(), figure, cashier, time(atMs), "", "", "", "", amount(cents));
    }

    private String time(long atMs) {
        return TIME.format(Instant.ofEpochMilli(atMs).atZone(zone));
    }

    private static String amount(long cents) {
        long whole = Math.abs(cents);
        return String.format(
                Locale.ROOT, "%s%d.%02d", cents < 0 ? "-" : "", whole / 100, whole % 100);
    }

    /** A typed text, which no spreadsheet takes for a formula. */
    static String safe(String typed) {
        return !typed.isEmpty() && FORMULA.indexOf(typed.charAt(0)) >= 0 ? "'" + typed : typed;
    }

    private void line(String... fields) {
        for (int i = 0; i < fields.length; i++) {
            text.append(i == 0 ? "" : ",").append(quoted(fields[i]));
        }
        text.append("\r\n");
    }

    static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c < ' ');
        return plain ? field : "\"" + field.replace("\"", "\"\"") + "\"";
    }
}
