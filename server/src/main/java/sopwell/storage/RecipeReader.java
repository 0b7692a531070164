package sopwell.storage;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Faults;
import sopwell.menu.Menu;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.Dimension;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.RecipeCheck;
import sopwell.stock.recipes.RecipeFault;
import sopwell.stock.recipes.RecipeFindings;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.RecipeReading;
import sopwell.stock.recipes.Resource;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.UnitWords;
import sopwell.stock.recipes.Use;

/**
 * Reads a book of recipes from JSON. Not thread-safe: for one reading.
 *
 * <p>As with a menu, the second round ({@link RecipeCheck}) waits for the first to be clean.
 */
public final class RecipeReader {
    private final Faults faults = new Faults();
    private final List<RecipeFault> amounts = new ArrayList<>();
    private final Map<String, Unit> units = new HashMap<>();

    private RecipeReader() {}

    /** Reads a book and checks it beside the menu in force. */
    public static RecipeReading read(byte[] json, Menu menu) {
        RecipeReader reader = new RecipeReader();
        Optional<JsonNode> tree = JsonTree.read(json, reader.faults);
        Optional<RecipeParts> parts = tree.map(reader::parts);
        if (parts.isEmpty() || !reader.isClean()) {
            return new RecipeReading(
                    Optional.empty(), reader.faults.found(), reader.amounts, List.of());
        }
        RecipeFindings findings = RecipeCheck.of(parts.get(), menu);
        return findings.faults().isEmpty()
                ? new RecipeReading(
                        Optional.of(RecipeWriter.book(parts.get())),
                        List.of(),
                        List.of(),
                        findings.notices())
                : new RecipeReading(Optional.empty(), List.of(), findings.faults(), List.of());
    }

    /**
     * The parts of a book that was checked before it was written; what it means is not checked
     * again, because checks grow stricter and old books stay in the log.
     *
     * @throws BodyReader.Unreadable when it is no book at all
     */
    static RecipeParts trusted(JsonNode tree, Faults read) throws BodyReader.Unreadable {
        RecipeReader reader = new RecipeReader();
        RecipeParts parts = reader.parts(tree);
        if (!read.isEmpty() || !reader.isClean()) {
            throw new BodyReader.Unreadable(
                    "the recipes: " + read.found() + reader.faults.found() + reader.amounts);
        }
        return parts;
    }

    private boolean isClean() {
        return faults.isEmpty() && amounts.isEmpty();
    }

    private RecipeParts parts(JsonNode tree) {
        if (!tree.isObject()) {
            faults.add("", "The file is no JSON object.", "It begins with { and ends with }.");
            return RecipeParts.none();
        }
        Fields root = new Fields(tree, "", faults);
        RecipeParts parts =
                new RecipeParts(
                        root.objects("ingredients", this::ingredient),
                        root.objects("recipes", fields -> RecipeFields.recipe(fields, this)),
                        root.objects("uses", this::use),
                        root.objectsOr("resources", RecipeReader::resource),
                        hours(root));
        root.close();
        return parts;
    }

    private Ingredient ingredient(Fields fields) {
        String id = fields.text("id");
        Unit unit = unit(fields);
        units.putIfAbsent(id, unit);
        return IngredientFields.read(fields, id, unit, this);
    }

    private Unit unit(Fields fields) {
        String written = fields.text("unit");
        Optional<Unit> unit = UnitWords.read(written);
        if (unit.isEmpty() && !written.isEmpty()) {
            faults.unknown(fields.at("unit"), "unit", written, UnitWords.all());
        }
        return unit.orElse(Unit.EACH);
    }

    private Use use(Fields fields) {
        String ingredient = fields.text("ingredient");
        return new Use(
                ingredient,
                fields.textOr("item"),
                fields.textOr("size"),
                fields.textOr("option"),
                fields.has("amount") ? amount(fields, "amount", ingredient) : BigDecimal.ZERO,
                fields.wholeOr("percent", 0));
    }

    private static Resource resource(Fields fields) {
        return new Resource(
                fields.text("id"),
                fields.local("name"),
                fields.whole("slots"),
                fields.wholeOr("turnaroundMinutes", 0));
    }

    private KitchenHours hours(Fields root) {
        Map<DayOfWeek, KitchenHours.Span> days = new EnumMap<>(DayOfWeek.class);
        if (root.has("hours")) {
            Fields hours = root.inner("hours");
            for (DayOfWeek day : DayOfWeek.values()) {
                String name = MenuWriter.lower(day);
                if (hours.mayHave(name)) {
                    Fields span = hours.inner(name);
                    days.put(day, new KitchenHours.Span(time(span, "from"), time(span, "to")));
                    span.close();
                }
            }
            hours.close();
        } else {
            root.mayHave("hours");
        }
        return new KitchenHours(days);
    }

    /** A time of day, such as {@code 07:30}. */
    static LocalTime time(Fields fields, String field) {
        String written = fields.text(field);
        try {
            return LocalTime.parse(written);
        } catch (DateTimeParseException wrong) {
            if (!written.isEmpty()) {
                fields.faults()
                        .add(
                                fields.at(field),
                                "\"" + written + "\" is no time of day.",
                                "Write it like 07:30 or 16:00.");
            }
            return LocalTime.MIN;
        }
    }

    /** An amount of an ingredient; of one that is not there it may be in any unit. */
    BigDecimal amount(Fields fields, String field, String ingredient) {
        Optional<Unit> unit = Optional.ofNullable(units.get(ingredient));
        return amount(fields, field, unit.map(Unit::dimension));
    }

    /** An amount of a dimension. */
    BigDecimal amount(Fields fields, String field, Optional<Dimension> dimension) {
        String written = fields.text(field);
        if (written.isBlank()) {
            return BigDecimal.ZERO;
        }
        AmountText.Read read = AmountText.read(written, dimension);
        read.fault().map(fault -> fault.at(fields.at(field))).ifPresent(amounts::add);
        return read.amount().orElse(BigDecimal.ZERO);
    }
}
