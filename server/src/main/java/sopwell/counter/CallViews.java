package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.call.CallLine;
import sopwell.call.CallParser;
import sopwell.call.CallRefusal;
import sopwell.call.ReadBack;
import sopwell.call.Reading;
import sopwell.menu.Menu;
import sopwell.menu.Pricing;
import sopwell.money.TaxRule;
import sopwell.money.Totals;

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
     * What is shown of a text; the wait is not known here.
     *
     * @param pressed whether it is to be placed now, so that what is unfinished is a fault
     */
    public CallView of(String text, boolean pressed) {
        return of(text, parser.read(text), pressed);
    }

    /** What is shown of a text that was read already. */
    public CallView of(String text, Reading reading, boolean pressed) {
        Menu menu = parser.menu();
        List<CallView.Line> lines = new ArrayList<>();
        long subtotalCents = 0;
        for (CallLine line : reading.lines()) {
            long eachCents = Pricing.unitCents(menu, line.selection());
            long cents = Math.multiplyExact(line.quantity(), eachCents);
            subtotalCents = Math.addExact(subtotalCents, cents);
            String each = phrases.of("counter.each", phrases.money(eachCents));
            lines.add(
                    new CallView.Line(
                            ReadBack.say(menu, phrases.lang(), line.quantity(), line.selection()),
                            line.quantity() == 1 ? "" : each,
                            phrases.money(cents)));
        }
        Totals totals = Totals.of(subtotalCents, tax);
        boolean none = lines.isEmpty();
        return new CallView(
                lines,
                none ? "" : phrases.money(totals.subtotalCents()),
                none ? "" : phrases.money(totals.taxCents()),
                none ? "" : phrases.money(totals.totalCents()),
                totals.totalCents(),
                "",
                reading.refusal().flatMap(refusal -> fault(text, refusal, pressed)),
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
