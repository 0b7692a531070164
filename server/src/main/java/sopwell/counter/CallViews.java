package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.call.CallParser;
import sopwell.call.CallRefusal;
import sopwell.call.ReadBack;
import sopwell.call.Reading;
import sopwell.menu.Menu;
import sopwell.money.Discount;
import sopwell.money.TaxRule;
import sopwell.money.Totals;
import sopwell.orders.Asked;
import sopwell.orders.OrderLine;
import sopwell.orders.OrderRules;
import sopwell.orders.Outs;
import sopwell.orders.Refusal;
import sopwell.orders.Selling;

/**
 * Reads calls for the counter and prices them, in one language by one menu. Immutable, thread-safe;
 * building one with its parser takes longer than reading many calls.
 */
public final class CallViews {
    private final CallParser parser;
    private final Phrases phrases;
    private final TaxRule tax;

    /** Views by a parser's menu. */
    public CallViews(CallParser parser, Phrases phrases, TaxRule tax) {
        this.parser = parser;
        this.phrases = phrases;
        this.tax = tax;
    }

    /**
     * What is shown of a text by what is known of what is out; the wait is not known here.
     *
     * @param outs what is out, and how many are left of what is counted
     * @param pressed whether it is to be placed now, so that what is unfinished is a fault
     */
    public CallView of(String text, boolean pressed, Outs outs, long nowMs) {
        Reading reading = parser.read(text);
        Selling selling = new Selling(parser.menu(), outs);
        return of(text, reading, pressed, selling.shortage(List.of(), asked(reading), nowMs));
    }

    /** A call with a card's number in it is not read, and the number does not come back. */
    public static CallView withCard(Phrases phrases) {
        String field = phrases.get("field.text");
        String sentence = phrases.of("refusal.CARD_NUMBER", field);
        CallView.Fault fault = new CallView.Fault(sentence, false, List.of(), List.of());
        return new CallView(List.of(), "", "", "", 0, "", Optional.of(fault), List.of(), false);
    }

    /** What the guest asks for, of a reading without fault. */
    public static List<Asked> asked(Reading reading) {
        return reading.lines().stream()
                .map(line -> new Asked(line.quantity(), line.selection()))
                .toList();
    }

    /** The lines that a reading comes to, at the menu's prices. */
    public List<OrderLine> priced(Reading reading) {
        List<OrderLine> lines = new ArrayList<>();
        for (Asked asked : asked(reading)) {
            lines.add(OrderLine.priced(parser.menu(), lines.size() + 1, asked));
        }
        return lines;
    }

    /**
     * What is shown of a text that was read already.
     *
     * @param shortage what the stand says it has too little of, if anything
     */
    public CallView of(String text, Reading reading, boolean pressed, Optional<Refusal> shortage) {
        Menu menu = parser.menu();
        List<OrderLine> priced = priced(reading);
        List<CallView.Line> lines = new ArrayList<>();
        for (OrderLine line : priced) {
            String each = phrases.of("counter.each", phrases.money(line.unitCents()));
            lines.add(
                    new CallView.Line(
                            ReadBack.say(menu, phrases.lang(), line.quantity(), line.selection()),
                            line.quantity() == 1 ? "" : each,
                            phrases.money(line.cents())));
        }
        Totals totals = OrderRules.totals(priced, Discount.NONE, tax);
        boolean none = lines.isEmpty();
        return new CallView(
                lines,
                none ? "" : phrases.money(totals.subtotalCents()),
                none ? "" : phrases.money(totals.taxCents()),
                none ? "" : phrases.money(totals.totalCents()),
                totals.totalCents(),
                "",
                reading.refusal()
                        .flatMap(refusal -> fault(text, refusal, pressed))
                        .or(() -> shortage.map(r -> Shortfall.of(text, reading, r, menu, phrases))),
                LiveIds.of(reading.live()),
                !reading.live().item().isEmpty());
    }

    private Optional<CallView.Fault> fault(String text, CallRefusal refusal, boolean pressed) {
        if (refusal.why() == CallRefusal.Why.EMPTY && !pressed) {
            return Optional.empty();
        }
        boolean quiet = !pressed && isUnfinished(text, refusal);
        return Optional.of(
                new CallView.Fault(
                        CallSentences.of(refusal, parser.menu(), phrases),
                        quiet,
                        quiet ? List.of() : Fixes.mirror(text, refusal),
                        Fixes.of(text, refusal, parser, phrases)));
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
