package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import sopwell.money.CashCount;
import sopwell.money.CashUnit;
import sopwell.money.CashUnits;
import sopwell.money.Totals;
import sopwell.orders.OrderEvent.OrderDiscounted;
import sopwell.till.DayReport;
import sopwell.till.Drawer;
import sopwell.till.Means;
import sopwell.till.Move;
import sopwell.till.Payment;
import sopwell.till.Takings;
import sopwell.till.TillEvent;

/** Writes payments, tills and the day's report as JSON. Stateless. */
final class MoneyJson {
    private MoneyJson() {}

    static void totals(JsonGenerator json, Totals totals) throws IOException {
        json.writeNumberField("subtotalCents", totals.subtotalCents());
        json.writeNumberField("discountCents", totals.discountCents());
        json.writeNumberField("taxCents", totals.taxCents());
        json.writeBooleanField("taxIncluded", totals.taxIncluded());
        json.writeNumberField("totalCents", totals.totalCents());
    }

    static void discounted(JsonGenerator json, OrderDiscounted less) throws IOException {
        json.writeStringField("order", less.order());
        json.writeNumberField("version", less.version());
        totals(json, less.totals());
    }

    static void paid(JsonGenerator json, TillEvent.OrderPaid paid, CashUnits units)
            throws IOException {
        Payment payment = paid.payment();
        json.writeStringField("order", paid.order());
        json.writeStringField("means", OrderJson.word(paid.means()));
        json.writeStringField("cashier", paid.cashier());
        json.writeNumberField("cents", payment.cents());
        json.writeNumberField("tipCents", payment.tipCents());
        json.writeNumberField("roundingCents", payment.roundingCents());
        json.writeNumberField("tenderedCents", payment.tenderedCents());
        json.writeNumberField("changeCents", payment.changeCents());
        counts(json, "change", units.change(payment.changeCents()));
        json.writeNumberField("dueCents", paid.leftCents());
    }

    static void refunded(JsonGenerator json, TillEvent.OrderRefunded back, CashUnits units)
            throws IOException {
        long cashCents = back.means() == Means.CASH ? back.cents() + back.roundingCents() : 0;
        json.writeStringField("order", back.order());
        json.writeStringField("means", OrderJson.word(back.means()));
        json.writeStringField("cashier", back.cashier());
        json.writeNumberField("cents", back.cents());
        json.writeNumberField("roundingCents", back.roundingCents());
        json.writeNumberField("goodwillCents", back.goodwillCents());
        counts(json, "give", units.change(cashCents));
        json.writeNumberField("dueCents", back.leftCents());
    }

    /** What happened at a till. */
    static void moved(JsonGenerator json, TillEvent event) throws IOException {
        json.writeStringField("cashier", event.cashier());
        switch (event.kind()) {
            case OPENED ->
                    json.writeNumberField(
                            "floatCents", ((TillEvent.TillOpened) event).floatCents());
            case PAID_IN -> json.writeNumberField("cents", ((TillEvent.PaidIn) event).cents());
            case PAID_OUT -> json.writeNumberField("cents", ((TillEvent.PaidOut) event).cents());
            case CLOSED -> {
                TillEvent.TillClosed closed = (TillEvent.TillClosed) event;
                json.writeNumberField("expectedCents", closed.expectedCents());
                json.writeNumberField("countedCents", closed.countedCents());
                json.writeNumberField("overCents", closed.countedCents() - closed.expectedCents());
            }
            case PAID, REFUNDED -> {}
        }
    }

    static void drawer(JsonGenerator json, Drawer drawer) throws IOException {
        json.writeStartObject();
        json.writeStringField("cashier", drawer.cashier());
        OrderJson.time(json, "openedAt", drawer.openedAtMs());
        json.writeNumberField("floatCents", drawer.floatCents());
        takings(json, "takings", drawer.takings());
        json.writeNumberField("paidInCents", drawer.inCents());
        json.writeNumberField("paidOutCents", drawer.outCents());
        json.writeNumberField("expectedCents", drawer.expectedCents());
        if (drawer.counted().isPresent()) {
            Drawer.Counted counted = drawer.counted().get();
            OrderJson.time(json, "closedAt", counted.atMs());
            json.writeNumberField("countedCents", counted.countedCents());
            json.writeNumberField("overCents", counted.overCents());
            counts(json, "counts", counted.counts());
        }
        json.writeEndObject();
    }

    static void takings(JsonGenerator json, String field, Takings takings) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeNumberField("cashCents", takings.cashCents());
        json.writeNumberField("cardCents", takings.cardCents());
        json.writeNumberField("cashTipCents", takings.cashTipCents());
        json.writeNumberField("cardTipCents", takings.cardTipCents());
        json.writeNumberField("roundingCents", takings.roundingCents());
        json.writeNumberField("cashBackCents", takings.cashBackCents());
        json.writeNumberField("cardBackCents", takings.cardBackCents());
        json.writeEndObject();
    }

    static void report(JsonGenerator json, DayReport report) throws IOException {
        DayReport.Sales sales = report.sales();
        json.writeStartObject();
        json.writeStringField("date", report.date().toString());
        json.writeNumberField("orders", sales.orders());
        json.writeNumberField("voids", sales.voids());
        json.writeNumberField("subtotalCents", sales.subtotalCents());
        json.writeNumberField("discountCents", sales.discountCents());
        json.writeNumberField("staffMealCents", sales.staffMealCents());
        json.writeNumberField("netCents", sales.netCents());
        json.writeNumberField("taxCents", sales.taxCents());
        json.writeNumberField("totalCents", sales.totalCents());
        json.writeNumberField("goodwillCents", report.goodwillCents());
        takings(json, "takings", report.takings());
        takings(json, "apart", report.apart());
        owed(json, "unpaid", report.unpaid());
        owed(json, "dueBack", report.dueBack());
        json.writeArrayFieldStart("tills");
        for (Drawer drawer : report.drawers()) {
            drawer(json, drawer);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("moves");
        for (Move move : report.moves()) {
            move(json, move);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    static void units(JsonGenerator json, CashUnits units) throws IOException {
        json.writeArrayFieldStart("units");
        for (CashUnit unit : units.units()) {
            json.writeStartObject();
            json.writeNumberField("cents", unit.cents());
            json.writeBooleanField("note", unit.note());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void move(JsonGenerator json, Move move) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", OrderJson.word(move.kind()).replace('_', '-'));
        OrderJson.time(json, "at", move.atMs());
        json.writeStringField("cashier", move.cashier());
        if (!move.order().isEmpty()) {
            json.writeStringField("order", move.order());
        }
        json.writeStringField("means", OrderJson.word(move.means()));
        json.writeNumberField("cents", move.cents());
        json.writeStringField("reason", move.reason());
        json.writeEndObject();
    }

    private static void owed(JsonGenerator json, String field, DayReport.Owed owed)
            throws IOException {
        json.writeObjectFieldStart(field);
        json.writeNumberField("orders", owed.orders());
        json.writeNumberField("cents", owed.cents());
        json.writeEndObject();
    }

    private static void counts(JsonGenerator json, String field, List<CashCount> counts)
            throws IOException {
        json.writeArrayFieldStart(field);
        for (CashCount count : counts) {
            json.writeStartObject();
            json.writeNumberField("cents", count.unit().cents());
            json.writeBooleanField("note", count.unit().note());
            json.writeNumberField("pieces", count.pieces());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
