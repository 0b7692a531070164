package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import sopwell.menu.Selection;
import sopwell.money.Discount;
import sopwell.money.Totals;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.orders.Quote;

/** The written form of order events, version 1. Stateless. */
final class OrderBodies {
    private OrderBodies() {}

    static void write(BodyWriter body, OrderEvent event) throws IOException {
        switch (event.kind()) {
            case DAY_OPENED -> {
                OrderEvent.DayOpened opened = (OrderEvent.DayOpened) event;
                body.text("date", opened.date().toString());
                body.text("zone", opened.zone());
                body.number("cutAtMs", opened.cutAtMs());
                body.number("firstNumber", opened.firstNumber());
                body.number("firstOrdinal", opened.firstOrdinal());
            }
            case DAY_CLOSED -> {
                OrderEvent.DayClosed closed = (OrderEvent.DayClosed) event;
                body.text("date", closed.date().toString());
                body.flag("byCut", closed.byCut());
                body.texts("leftOpen", closed.leftOpen());
            }
            case DAY_REOPENED -> {
                OrderEvent.DayReopened again = (OrderEvent.DayReopened) event;
                body.text("date", again.date().toString());
                body.text("reason", again.reason());
            }
            case PLACED -> placed(body, (OrderEvent.OrderPlaced) event);
            case TOLD -> {
                OrderEvent.OrderTold told = (OrderEvent.OrderTold) event;
                body.text("order", told.order());
                body.textIfAny("menu", told.menuRevision());
                body.number("takenAtMs", told.takenAtMs());
            }
            case CHANGED -> changed(body, (OrderEvent.OrderChanged) event);
            case DISCOUNTED -> discounted(body, (OrderEvent.OrderDiscounted) event);
            case VOIDED -> {
                OrderEvent.OrderVoided voided = (OrderEvent.OrderVoided) event;
                body.text("order", voided.order());
                body.number("version", voided.version());
                body.text("reason", voided.reason());
            }
            case HANDED -> body.text("order", ((OrderEvent.OrderHanded) event).order());
            case BROUGHT_BACK -> body.text("order", ((OrderEvent.OrderBroughtBack) event).order());
        }
    }

    static OrderEvent read(BodyReader body, OrderEvent.Kind kind) throws IOException {
        return switch (kind) {
            case DAY_OPENED ->
                    new OrderEvent.DayOpened(
                            LocalDate.parse(body.text("date")),
                            body.text("zone"),
                            body.number("cutAtMs"),
                            body.whole("firstNumber"),
                            body.whole("firstOrdinal"));
            case DAY_CLOSED ->
                    new OrderEvent.DayClosed(
                            LocalDate.parse(body.text("date")),
                            body.flag("byCut"),
                            body.texts("leftOpen"));
            case DAY_REOPENED ->
                    new OrderEvent.DayReopened(
                            LocalDate.parse(body.text("date")), body.text("reason"));
            case PLACED -> placed(body);
            case TOLD ->
                    new OrderEvent.OrderTold(
                            body.text("order"), body.textOr("menu"), body.number("takenAtMs"));
            case CHANGED -> changed(body);
            case DISCOUNTED -> discounted(body);
            case VOIDED ->
                    new OrderEvent.OrderVoided(
                            body.text("order"), body.whole("version"), body.text("reason"));
            case HANDED -> new OrderEvent.OrderHanded(body.text("order"));
            case BROUGHT_BACK -> new OrderEvent.OrderBroughtBack(body.text("order"));
        };
    }

    private static void placed(BodyWriter body, OrderEvent.OrderPlaced placed) throws IOException {
        body.text("order", placed.order());
        body.number("number", placed.number());
        body.textIfAny("name", placed.name());
        body.flag("toGo", placed.toGo());
        body.objects("lines", placed.lines(), OrderBodies::line);
        totals(body, placed.totals());
        body.number("fromSeconds", placed.quote().fromSeconds());
        body.number("toSeconds", placed.quote().toSeconds());
        body.text("menu", placed.menuRevision());
    }

    private static OrderEvent.OrderPlaced placed(BodyReader body) throws IOException {
        return new OrderEvent.OrderPlaced(
                body.text("order"),
                body.whole("number"),
                body.textOr("name"),
                body.flag("toGo"),
                body.objects("lines", OrderBodies::line),
                totals(body),
                new Quote(body.whole("fromSeconds"), body.whole("toSeconds")),
                body.text("menu"));
    }

    private static void changed(BodyWriter body, OrderEvent.OrderChanged changed)
            throws IOException {
        body.text("order", changed.order());
        body.number("version", changed.version());
        body.textIfAny("name", changed.name());
        body.flag("toGo", changed.toGo());
        body.objects("lines", changed.lines(), OrderBodies::line);
        totals(body, changed.totals());
        body.textIfAny("reason", changed.reason());
        body.text("menu", changed.menuRevision());
    }

    private static OrderEvent.OrderChanged changed(BodyReader body) throws IOException {
        return new OrderEvent.OrderChanged(
                body.text("order"),
                body.whole("version"),
                body.textOr("name"),
                body.flag("toGo"),
                body.objects("lines", OrderBodies::line),
                totals(body),
                body.textOr("reason"),
                body.text("menu"));
    }

    private static void discounted(BodyWriter body, OrderEvent.OrderDiscounted discounted)
            throws IOException {
        Discount discount = discounted.discount();
        body.text("order", discounted.order());
        body.number("version", discounted.version());
        body.text("for", discount.kind() == Discount.Kind.GUEST ? "guest" : "staff-meal");
        body.numberIfAny("offCents", discount.cents());
        body.numberIfAny("offMilliPercent", discount.milliPercent());
        body.textIfAny("reason", discount.reason());
        totals(body, discounted.totals());
    }

    private static OrderEvent.OrderDiscounted discounted(BodyReader body) throws IOException {
        String order = body.text("order");
        int version = body.whole("version");
        String written = body.text("for");
        Discount.Kind kind =
                switch (written) {
                    case "guest" -> Discount.Kind.GUEST;
                    case "staff-meal" -> Discount.Kind.STAFF_MEAL;
                    default -> throw new BodyReader.Unreadable(written + " is no discount");
                };
        Discount discount =
                new Discount(
                        kind,
                        body.numberOr("offCents"),
                        (int) body.numberOr("offMilliPercent"),
                        body.textOr("reason"));
        return new OrderEvent.OrderDiscounted(order, version, discount, totals(body));
    }

    private static void line(BodyWriter body, OrderLine line) throws IOException {
        Selection selection = line.selection();
        body.number("line", line.line());
        body.number("quantity", line.quantity());
        body.text("item", selection.item());
        body.textIfAny("size", selection.size());
        body.texts("options", selection.options());
        body.texts("refused", selection.refused());
        body.number("unitCents", line.unitCents());
        body.flag("untaxed", !line.taxed());
    }

    private static OrderLine line(BodyReader body) throws IOException {
        int line = body.whole("line");
        int quantity = body.whole("quantity");
        String item = body.text("item");
        String size = body.textOr("size");
        List<String> options = body.texts("options");
        List<String> refused = body.texts("refused");
        Selection selection = new Selection(item, size, options, refused);
        long unitCents = body.number("unitCents");
        return new OrderLine(line, quantity, selection, unitCents, !body.flag("untaxed"));
    }

    private static void totals(BodyWriter body, Totals totals) throws IOException {
        body.number("subtotalCents", totals.subtotalCents());
        body.number("taxCents", totals.taxCents());
        body.number("totalCents", totals.totalCents());
        body.numberIfAny("discountCents", totals.discountCents());
        body.flag("taxIncluded", totals.taxIncluded());
    }

    private static Totals totals(BodyReader body) throws IOException {
        long subtotalCents = body.number("subtotalCents");
        long taxCents = body.number("taxCents");
        long totalCents = body.number("totalCents");
        long discountCents = body.numberOr("discountCents");
        boolean included = body.flag("taxIncluded");
        return new Totals(subtotalCents, discountCents, taxCents, included, totalCents);
    }
}
