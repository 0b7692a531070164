package sopwell.storage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import sopwell.Limits;
import sopwell.money.CashRounding;
import sopwell.money.CashRule;
import sopwell.money.CashUnit;
import sopwell.money.CashUnits;
import sopwell.money.Rounding;
import sopwell.money.TaxRule;

/**
 * Reads and writes what {@code stand.json} says of money: the objects {@code tax} and {@code cash}.
 * Stateless.
 */
final class MoneyFields {
    private static final int RATE_MILLI_PERCENT_MAX = 100_000;

    /** How the rate alone was written before there was more to say about tax. */
    private static final String RATE_ALONE = "taxMilliPercent";

    private MoneyFields() {}

    /** The tax; a rate alone is a tax on the order, rounded half up and added to the prices. */
    static TaxRule tax(Fields fields) {
        if (fields.has(RATE_ALONE) && !fields.has("tax")) {
            return new TaxRule(rate(fields, RATE_ALONE));
        }
        Fields tax = fields.inner("tax");
        int rate = rate(tax, "milliPercent");
        TaxRule.Basis basis = word(tax, "basis", TaxRule.Basis.ORDER);
        Rounding rounding = word(tax, "rounding", Rounding.HALF_UP);
        boolean included = tax.has("included") && tax.yes("included");
        tax.close();
        return new TaxRule(rate, basis, rounding, included);
    }

    /** The cash rule; without one, every cent is paid in the usual notes and coins. */
    static CashRule cash(Fields fields) {
        if (!fields.has("cash")) {
            return CashRule.USUAL;
        }
        Fields cash = fields.inner("cash");
        int step =
                cash.has("roundToCents")
                        ? StandFile.within(cash, "roundToCents", 1, CashRounding.STEP_CENTS_MAX)
                        : 1;
        CashRounding.Tie tie = word(cash, "tie", CashRounding.Tie.DOWN);
        List<CashUnit> units = new ArrayList<>();
        units(cash, "notesCents", true, units);
        units(cash, "coinsCents", false, units);
        cash.close();
        if (!cash.faults().isEmpty()) {
            return CashRule.USUAL;
        }
        return fitting(cash, new CashRounding(step, tie), units);
    }

    static void write(ObjectNode node, TaxRule tax, CashRule cash) {
        ObjectNode taxNode = node.putObject("tax");
        taxNode.put("milliPercent", tax.rateMilliPercent());
        taxNode.put("basis", written(tax.basis()));
        taxNode.put("rounding", written(tax.rounding()));
        taxNode.put("included", tax.included());
        ObjectNode cashNode = node.putObject("cash");
        cashNode.put("roundToCents", cash.rounding().stepCents());
        cashNode.put("tie", written(cash.rounding().tie()));
        var notes = cashNode.putArray("notesCents");
        var coins = cashNode.putArray("coinsCents");
        for (CashUnit unit : cash.units().units()) {
            (unit.note() ? notes : coins).add(unit.cents());
        }
    }

    /** A coin that nothing fits is a fault, so that change can always be given. */
    private static CashRule fitting(Fields cash, CashRounding rounding, List<CashUnit> units) {
        if (units.isEmpty()) {
            cash.faults()
                    .add(
                            cash.at("coinsCents"),
                            "There are no notes and no coins.",
                            "Name those that the till holds, or leave \"cash\" out.");
            return CashRule.USUAL;
        }
        long least = units.stream().mapToLong(CashUnit::cents).min().orElseThrow();
        for (CashUnit unit : units) {
            if (unit.cents() % least != 0) {
                cash.faults()
                        .add(
                                cash.at(unit.note() ? "notesCents" : "coinsCents"),
                                unit.cents() + " is no multiple of the smallest, " + least + ".",
                                "Change could not always be given. Leave one of the two out.");
                return CashRule.USUAL;
            }
        }
        if (rounding.stepCents() % least != 0) {
            cash.faults()
                    .add(
                            cash.at("roundToCents"),
                            "Cash rounded to "
                                    + rounding.stepCents()
                                    + " can't be paid when the smallest coin is "
                                    + least
                                    + ".",
                            "Round to a multiple of " + least + ", or name a smaller coin.");
            return CashRule.USUAL;
        }
        return new CashRule(rounding, new CashUnits(units));
    }

    private static void units(Fields cash, String field, boolean note, List<CashUnit> units) {
        int before = cash.faults().found().size();
        List<Long> values = cash.wholesOr(field);
        if (cash.faults().found().size() > before) {
            return;
        }
        if (values.size() > Limits.CASH_UNITS_MAX) {
            cash.faults()
                    .add(
                            cash.at(field),
                            "There are " + values.size() + ".",
                            "The most is " + Limits.CASH_UNITS_MAX + ".");
            return;
        }
        for (int n = 0; n < values.size(); n++) {
            long cents = values.get(n);
            String place = cash.at(field) + "/" + n;
            if (cents < 1 || cents > Limits.PRICE_CENTS_MAX) {
                cash.faults()
                        .add(
                                place,
                                cents + " is out of range.",
                                "The least is 1 and the most is " + Limits.PRICE_CENTS_MAX + ".");
            } else if (units.stream().anyMatch(unit -> unit.cents() == cents)) {
                cash.faults().add(place, cents + " is there twice.", "Keep one of them.");
            } else {
                units.add(new CashUnit(cents, note));
            }
        }
    }

    private static int rate(Fields fields, String field) {
        int rate = StandFile.within(fields, field, 0, RATE_MILLI_PERCENT_MAX);
        return Math.min(Math.max(rate, 0), RATE_MILLI_PERCENT_MAX);
    }

    /** One of the words that an enum's constants are written as; left out, the usual one. */
    static <E extends Enum<E>> E word(Fields fields, String field, E usual) {
        String word = fields.textOr(field);
        if (word.isEmpty()) {
            return usual;
        }
        TreeSet<String> known = new TreeSet<>();
        for (E constant : usual.getDeclaringClass().getEnumConstants()) {
            if (written(constant).equals(word)) {
                return constant;
            }
            known.add(written(constant));
        }
        fields.faults().unknown(fields.at(field), "word here", word, known);
        return usual;
    }

    /** How an enum's constant is written in files. */
    static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
