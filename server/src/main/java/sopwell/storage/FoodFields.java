package sopwell.storage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import sopwell.orders.FoodLimits;
import sopwell.orders.FoodLimits.Cooling;
import sopwell.orders.FoodLimits.Dating;
import sopwell.orders.FoodLimits.Oven;
import sopwell.orders.FoodLimits.OvenKind;
import sopwell.orders.FoodLimits.TimeControl;
import sopwell.orders.RoastTable;

/** The field {@code food} inside a stand's safety limits. Stateless. */
final class FoodFields {
    private static final int MINUTES_MAX = 1_440;
    private static final int SECONDS_MAX = 86_400;
    private static final int COLD_MIN_F = 28;
    private static final int COLD_MAX_F = 50;
    private static final int HOT_MAX_F = 212;
    private static final int OVEN_MIN_F = 150;
    private static final int OVEN_MAX_F = 600;
    private static final int DAYS_MAX = 30;
    private static final int GRAMS_MAX = 50_000;

    private FoodFields() {}

    /** What the file says, or the usual where it says nothing. */
    static FoodLimits read(Fields safety) {
        if (!safety.has("food")) {
            return FoodLimits.USUAL;
        }
        Fields food = safety.inner("food");
        Fields cooling = food.inner("cooling");
        FoodLimits read =
                new FoodLimits(
                        cooling(cooling),
                        StandFile.within(food, "coldF", COLD_MIN_F, COLD_MAX_F),
                        new Dating(
                                StandFile.within(food, "keepDays", 1, DAYS_MAX),
                                StandFile.within(food, "oilDays", 1, DAYS_MAX),
                                food.text("oilSource")),
                        new TimeControl(
                                StandFile.within(food, "shortMinutes", 1, MINUTES_MAX),
                                StandFile.within(food, "longMinutes", 1, MINUTES_MAX),
                                StandFile.within(food, "longMaxF", COLD_MIN_F, HOT_MAX_F)),
                        roast(food),
                        food.objects("ovens", FoodFields::oven),
                        StandFile.within(food, "largeFromGrams", 1, GRAMS_MAX),
                        StandFile.within(food, "warnMinutes", 1, MINUTES_MAX),
                        isCelsius(food));
        cooling.close();
        food.close();
        order(food, read.cooling());
        return read;
    }

    private static Cooling cooling(Fields cooling) {
        return new Cooling(
                StandFile.within(cooling, "fromF", COLD_MIN_F, HOT_MAX_F),
                StandFile.within(cooling, "middleF", COLD_MIN_F, HOT_MAX_F),
                StandFile.within(cooling, "middleMinutes", 1, MINUTES_MAX),
                StandFile.within(cooling, "toF", COLD_MIN_F, COLD_MAX_F),
                StandFile.within(cooling, "totalMinutes", 1, MINUTES_MAX),
                StandFile.within(cooling, "ambientMinutes", 1, MINUTES_MAX));
    }

    private static boolean isCelsius(Fields food) {
        return MoneyFields.word(food, "temperatures", Unit.F) == Unit.C;
    }

    /** What screens write temperatures in. */
    private enum Unit {
        F,
        C
    }

    /** A published table's name, or a table of the stand's own. */
    private static RoastTable roast(Fields food) {
        if (food.has("roastTable")) {
            String name = food.text("roastTable");
            Optional<RoastTable> table = RoastTable.published(name);
            if (table.isEmpty()) {
                TreeSet<String> known = new TreeSet<>();
                RoastTable.PUBLISHED.forEach(one -> known.add(one.name()));
                food.faults().unknown(food.at("roastTable"), "roast table", name, known);
            }
            return table.orElse(RoastTable.FOOD_CODE);
        }
        Fields own = food.inner("roast");
        RoastTable table =
                new RoastTable(
                        "",
                        own.text("source"),
                        own.objects(
                                "rows",
                                row ->
                                        new RoastTable.Row(
                                                StandFile.within(row, "f", 100, HOT_MAX_F),
                                                StandFile.within(row, "seconds", 0, SECONDS_MAX))));
        own.close();
        rows(own, table.rows());
        return table;
    }

    private static void rows(Fields own, List<RoastTable.Row> rows) {
        if (rows.isEmpty() && own.has("rows")) {
            own.faults().add(own.at("rows"), "The table is empty.", "Write its rows.");
        }
        for (int n = 1; n < rows.size(); n++) {
            RoastTable.Row before = rows.get(n - 1);
            RoastTable.Row row = rows.get(n);
            if (row.f() <= before.f() || row.seconds() > before.seconds()) {
                own.faults()
                        .add(
                                own.at("rows") + "/" + n,
                                "The row does not follow on the one before.",
                                "Each row is hotter than the one before, and not longer.");
            }
        }
    }

    private static Oven oven(Fields oven) {
        return new Oven(
                MoneyFields.word(oven, "kind", OvenKind.DRY),
                StandFile.within(oven, "smallF", OVEN_MIN_F, OVEN_MAX_F),
                StandFile.within(oven, "largeF", OVEN_MIN_F, OVEN_MAX_F));
    }

    /** What must be smaller than what, looked at once every figure is in its range. */
    private static void order(Fields food, Cooling cooling) {
        if (!food.faults().isEmpty()) {
            return;
        }
        String at = food.at("cooling");
        if (cooling.fromF() <= cooling.middleF() || cooling.middleF() <= cooling.toF()) {
            food.faults()
                    .add(
                            JsonTree.under(at, "middleF"),
                            cooling.middleF() + " is not between the two others.",
                            "fromF is above middleF, and middleF above toF.");
        }
        if (cooling.middleMinutes() >= cooling.totalMinutes()) {
            food.faults()
                    .add(
                            JsonTree.under(at, "totalMinutes"),
                            cooling.totalMinutes() + " is too few.",
                            "The first stage's minutes are part of it.");
        }
    }

    static void write(ObjectNode safety, FoodLimits limits) {
        ObjectNode food = safety.putObject("food");
        food.put("temperatures", MoneyFields.written(limits.celsius() ? Unit.C : Unit.F));
        food.put("warnMinutes", limits.warnMinutes());
        ObjectNode cooling = food.putObject("cooling");
        cooling.put("fromF", limits.cooling().fromF());
        cooling.put("middleF", limits.cooling().middleF());
        cooling.put("middleMinutes", limits.cooling().middleMinutes());
        cooling.put("toF", limits.cooling().toF());
        cooling.put("totalMinutes", limits.cooling().totalMinutes());
        cooling.put("ambientMinutes", limits.cooling().ambientMinutes());
        food.put("coldF", limits.coldF());
        food.put("keepDays", limits.dating().keepDays());
        food.put("oilDays", limits.dating().oilDays());
        food.put("oilSource", limits.dating().oilSource());
        food.put("shortMinutes", limits.time().shortMinutes());
        food.put("longMinutes", limits.time().longMinutes());
        food.put("longMaxF", limits.time().longMaxF());
        roast(food, limits.roast());
        ArrayNode ovens = food.putArray("ovens");
        for (Oven oven : limits.ovens()) {
            ObjectNode node = ovens.addObject();
            node.put("kind", MoneyFields.written(oven.kind()));
            node.put("smallF", oven.smallF());
            node.put("largeF", oven.largeF());
        }
        food.put("largeFromGrams", limits.largeFromGrams());
    }

    private static void roast(ObjectNode food, RoastTable table) {
        if (!table.name().isEmpty()) {
            food.put("roastTable", table.name());
            return;
        }
        ObjectNode own = food.putObject("roast");
        own.put("source", table.source());
        ArrayNode rows = own.putArray("rows");
        for (RoastTable.Row row : table.rows()) {
            rows.addObject().put("f", row.f()).put("seconds", row.seconds());
        }
    }
}
