package sopwell.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.call.CallLine;
import sopwell.call.CallParser;
import sopwell.call.CallRefusal;
import sopwell.call.ReadBack;
import sopwell.call.Reading;
import sopwell.desk.Stand;
import sopwell.kitchen.WaitQuote;
import sopwell.menu.Menu;
import sopwell.money.Discount;
import sopwell.money.Totals;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.OrderRules;
import sopwell.orders.Quote;
import sopwell.orders.Refusal;
import sopwell.web.T;

/** Reads a call for the counter and prices it. Thread-safe. */
final class CounterReading {
    private final PageContext context;

    CounterReading(PageContext context) {
        this.context = context;
    }

    /** What the guest asked for, of a reading without fault. */
    static List<Asked> asked(Reading reading) {
        return reading.lines().stream()
                .map(line -> new Asked(line.quantity(), line.selection()))
                .toList();
    }

    /**
     * The reading of a text.
     *
     * @param edited the order that is edited, or empty; what it had, it may keep
     * @param pressed whether it is to be placed now, so that what is unfinished is a fault
     */
    ReadingView view(String text, String edited, boolean pressed, T t)
            throws PageHandling.Interrupted {
        CallParser parser = context.parser().get();
        Menu menu = parser.menu();
        Reading reading = parser.read(text);
        List<ReadingView.Line> lines = new ArrayList<>();
        List<OrderLine> priced = new ArrayList<>();
        for (CallLine line : reading.lines()) {
            OrderLine order =
                    OrderLine.priced(
                            menu, priced.size() + 1, new Asked(line.quantity(), line.selection()));
            long each = order.unitCents();
            priced.add(order);
            lines.add(
                    new ReadingView.Line(
                            ReadBack.say(menu, t.lang(), line.quantity(), line.selection()),
                            line.quantity() == 1 ? "" : t.of("counter.each", t.money(each)),
                            t.money(order.cents())));
        }
        Totals totals = OrderRules.totals(priced, Discount.NONE, context.settings().tax());
        boolean none = priced.isEmpty();
        Said said = said(menu, priced, asked(reading), edited);
        return new ReadingView(
                lines,
                none ? "" : t.money(totals.subtotalCents()),
                none ? "" : t.money(totals.taxCents()),
                none ? "" : t.money(totals.totalCents()),
                none ? "" : t.quote(said.quote()),
                reading.refusal()
                        .flatMap(refusal -> fault(text, refusal, pressed, t))
                        .or(
                                () ->
                                        said.shortage()
                                                .map(r -> Shortfall.of(text, reading, r, menu, t))),
                Words.live(reading.live()),
                !reading.live().item().isEmpty());
    }

    /** What the stand says to lines as things are now. */
    private record Said(Quote quote, Optional<Refusal> shortage) {}

    private Said said(Menu menu, List<OrderLine> lines, List<Asked> asked, String order)
            throws PageHandling.Interrupted {
        long nowMs = context.clock().millis();
        return PageHandling.await(
                context.follower()
                        .ask(
                                (Stand s) ->
                                        new Said(
                                                WaitQuote.quote(s.kitchen(), menu, lines),
                                                s.selling()
                                                        .shortage(had(s, order), asked, nowMs))));
    }

    private static List<OrderLine> had(Stand stand, String order) {
        return stand.orders().find(order).map(Order::lines).orElse(List.of());
    }

    private Optional<ReadingView.Fault> fault(
            String text, CallRefusal refusal, boolean pressed, T t) {
        CallParser parser = context.parser().get();
        if (refusal.why() == CallRefusal.Why.EMPTY && !pressed) {
            return Optional.empty();
        }
        boolean quiet = !pressed && isUnfinished(text, refusal);
        return Optional.of(
                new ReadingView.Fault(
                        t.sentence(refusal, parser.menu()),
                        quiet,
                        quiet ? List.of() : Fixes.mirror(text, refusal),
                        Fixes.of(text, refusal, parser, t)));
    }

    /** A word that is being typed, or a line that may still get its item, is no fault yet. */
    private static boolean isUnfinished(String text, CallRefusal refusal) {
        boolean atEnd = refusal.column() - 1 + refusal.length() >= text.length();
        return switch (refusal.why()) {
            case UNKNOWN_WORD -> atEnd;
            case NO_ITEM, NO_WHAT, SIZE_MISSING, TOO_FEW ->
                    text.indexOf(',', Math.max(0, refusal.column() - 1)) < 0;
            case EMPTY,
                    TOO_LONG,
                    TOO_MANY_LINES,
                    TWO_ITEMS,
                    QUANTITY_RANGE,
                    QUANTITY_TWICE,
                    QUANTITY_PLACE,
                    NOT_FOR_ITEM,
                    SIZE_TWICE,
                    WANTED_AND_REFUSED,
                    CLASH,
                    TOO_MANY ->
                    false;
        };
    }
}
