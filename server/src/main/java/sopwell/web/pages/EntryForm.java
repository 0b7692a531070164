package sopwell.web.pages;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sopwell.menu.Allergens;
import sopwell.menu.Caution;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.UnitWords;
import sopwell.stock.recipes.Watch;
import sopwell.web.T;
import sopwell.web.pages.EntryBox.Choice;
import sopwell.web.pages.EntryBox.Kind;
import sopwell.web.pages.EntryGroup.Row;

/** The form of a whole entry, with what stands in it. Local to its request. */
final class EntryForm {
    private final RecipeBook book;
    private final Menu menu;
    private final T t;
    private final Map<String, String> typed;
    private final Map<String, String> faults;

    /**
     * A form.
     *
     * @param typed what stands in the fields
     * @param faults what is wrong, as sentences, by field
     */
    EntryForm(
            RecipeBook book,
            Menu menu,
            T t,
            Map<String, String> typed,
            Map<String, String> faults) {
        this.book = book;
        this.menu = menu;
        this.t = t;
        this.typed = typed;
        this.faults = faults;
    }

    /**
     * All its groups.
     *
     * @param id the ingredient, or empty for a new one
     */
    List<EntryGroup> groups(String id) {
        List<EntryGroup> groups = new ArrayList<>();
        groups.add(plain("what", List.of(text("name.en"), text("name.es"), unit(id))));
        groups.add(plain("how", hows()));
        groups.add(growing("containers", EntryRows.CONTAINERS, 1, this::container));
        groups.add(
                plain(
                        "kept",
                        List.of(text("shelf.en"), text("shelf.es"), text("walk"), text("life"))));
        groups.add(
                plain(
                        "supply",
                        Stream.of("supplier", "pack", "price", "lead", "order-by")
                                .map(this::text)
                                .toList()));
        groups.add(plain("days", days()));
        List<Choice> others = others(id);
        groups.add(growing("inputs", EntryRows.INPUTS, 2, row -> input(row, others)));
        groups.add(growing("yields", EntryRows.YIELDS, 1, this::stage));
        groups.add(
                plain(
                        "lot",
                        Stream.of("gives", "lot.en", "lot.es", "per-pan", "per-run")
                                .map(this::text)
                                .toList()));
        groups.add(growing("steps", EntryRows.STEPS, 1, this::step));
        List<Choice> items = items();
        List<Choice> options = options();
        groups.add(growing("uses", EntryRows.USES, 1, row -> use(row, items, options)));
        groups.add(plain("allergens", allergens()));
        groups.add(plain("cautions", cautions()));
        return groups;
    }

    private EntryGroup plain(String name, List<EntryBox> boxes) {
        return new EntryGroup(name, legend(name), hint(name), List.of(row("", "", boxes)), "");
    }

    /** One row of a group that can grow. */
    @FunctionalInterface
    private interface Fields {
        List<EntryBox> of(String row);
    }

    private EntryGroup growing(String name, EntryRows rows, int least, Fields fields) {
        List<Row> all = new ArrayList<>();
        for (int row : rows.shown(typed, least)) {
            String legend = t.of("entry.row." + name, row + 1);
            all.add(row(legend, rows.at(row) + ".id", fields.of(rows.at(row))));
        }
        return new EntryGroup(name, legend(name), hint(name), all, rows.count());
    }

    private Row row(String legend, String kept, List<EntryBox> boxes) {
        return new Row(legend, kept, typed.getOrDefault(kept, ""), boxes);
    }

    private String legend(String name) {
        return t.get("entry.group." + name);
    }

    private String hint(String name) {
        String key = "entry.hint." + name;
        return t.has(key) ? t.get(key) : "";
    }

    private EntryBox box(String name, Kind kind, String label, List<Choice> choices) {
        String value = typed.getOrDefault(name, "");
        return new EntryBox(name, kind, label, value, choices, faults.getOrDefault(name, ""));
    }

    private EntryBox text(String name) {
        return box(name, Kind.TEXT, t.get("entry.field." + name), List.of());
    }

    /** A field of a row, whose label is the same in all of them. */
    private EntryBox text(String row, String field) {
        return box(row + "." + field, Kind.TEXT, label(row, field), List.of());
    }

    /** What stands in the book and can't be chosen any more stays, so that it is seen as wrong. */
    private EntryBox choice(String row, String field, List<Choice> choices) {
        String value = typed.getOrDefault(row + "." + field, "");
        List<Choice> all = new ArrayList<>(choices);
        if (!value.isEmpty() && choices.stream().noneMatch(one -> one.value().equals(value))) {
            all.add(new Choice(value, value));
        }
        return box(row + "." + field, Kind.CHOICE, label(row, field), all);
    }

    private EntryBox tick(String name, String label) {
        return box(name, Kind.TICK, label, List.of());
    }

    private String label(String row, String field) {
        return t.get("entry.field." + row.substring(0, row.indexOf('.')) + "." + field);
    }

    private EntryBox unit(String id) {
        List<Choice> units = new ArrayList<>();
        if (id.isEmpty()) {
            units.add(new Choice("", t.get("entry.choose")));
        }
        for (Unit unit : Unit.values()) {
            if (id.isEmpty() || unit.dimension() == book.ingredient(id).unit().dimension()) {
                units.add(new Choice(unit.name(), UnitWords.written(unit)));
            }
        }
        return box("unit", Kind.CHOICE, t.get("entry.field.unit"), units);
    }

    private List<EntryBox> hows() {
        String chosen = typed.getOrDefault("how", EntryParts.How.BOUGHT.written());
        List<EntryBox> hows = new ArrayList<>();
        for (EntryParts.How how : EntryParts.How.values()) {
            String name = how.written();
            String on = name.equals(chosen) ? "on" : "";
            String label = t.get("entry.how." + name);
            hows.add(new EntryBox("how." + name, Kind.ONE_OF, label, on, List.of(), ""));
        }
        return hows;
    }

    private List<EntryBox> container(String row) {
        return List.of(text(row, "en"), text(row, "es"), text(row, "holds"));
    }

    private List<EntryBox> days() {
        return Stream.of(DayOfWeek.values())
                .map(day -> tick(RecipeForm.name(day), RecipeNames.day(day, t)))
                .toList();
    }

    private List<EntryBox> input(String row, List<Choice> others) {
        return List.of(choice(row, "what", others), text(row, "amount"));
    }

    private List<EntryBox> stage(String row) {
        return List.of(text(row, "en"), text(row, "es"), text(row, "left"));
    }

    private List<EntryBox> step(String row) {
        List<Choice> places = new ArrayList<>(List.of(new Choice("", t.get("entry.none"))));
        book.resources().forEach(one -> places.add(new Choice(one.id(), t.local(one.name()))));
        List<Choice> watches =
                Stream.of(Watch.values())
                        .map(w -> new Choice(w.name(), t.get("entry.watch." + w.name())))
                        .toList();
        String number = row.substring(row.indexOf('.') + 1);
        String dated = number.equals(typed.get("dated")) ? "on" : "";
        String label = t.get("entry.field.dated");
        return List.of(
                text(row, "en"),
                text(row, "es"),
                text(row, "minutes"),
                text(row, "hands"),
                choice(row, "resource", places),
                text(row, "slots"),
                text(row, "least"),
                text(row, "most"),
                choice(row, "watch", watches),
                tick(row + ".start", label(row, "start")),
                tick(row + ".end", label(row, "end")),
                new EntryBox("dated." + number, Kind.ONE_OF, label, dated, List.of(), ""));
    }

    private List<EntryBox> use(String row, List<Choice> items, List<Choice> options) {
        return List.of(
                choice(row, "item", items), choice(row, "option", options), text(row, "much"));
    }

    private List<Choice> others(String id) {
        List<Choice> others = new ArrayList<>(List.of(new Choice("", t.get("entry.none"))));
        for (Ingredient one : book.ingredients()) {
            if (!one.id().equals(id)) {
                others.add(new Choice(one.id(), t.local(one.name())));
            }
        }
        return others;
    }

    private List<Choice> items() {
        List<Choice> items = new ArrayList<>(List.of(new Choice("", t.get("entry.any-item"))));
        for (Item item : menu.items()) {
            String name = t.local(item.name());
            items.add(new Choice(item.id(), name));
            for (Size size : item.sizes()) {
                String sized = name + ", " + t.local(size.name());
                items.add(new Choice(item.id() + "/" + size.id(), sized));
            }
        }
        return items;
    }

    private List<Choice> options() {
        List<Choice> options = new ArrayList<>(List.of(new Choice("", t.get("entry.no-option"))));
        for (Group group : menu.groups()) {
            for (Option option : group.options()) {
                String name = t.local(group.name()) + ": " + t.local(option.name());
                options.add(new Choice(option.id(), name));
            }
        }
        return options;
    }

    private List<EntryBox> allergens() {
        return Allergens.names().stream()
                .map(one -> tick("allergen." + one, t.get("allergen." + one)))
                .toList();
    }

    private List<EntryBox> cautions() {
        return Stream.of(Caution.values())
                .map(one -> tick("caution." + one.name(), t.get("entry.caution." + one.name())))
                .toList();
    }
}
