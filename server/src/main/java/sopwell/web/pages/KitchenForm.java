package sopwell.web.pages;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeCheck;
import sopwell.stock.recipes.RecipeFault;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Resource;
import sopwell.web.T;

/** Ovens and other places of the kitchen, and when somebody is in it. For one request. */
final class KitchenForm {
    private final RecipeBook book;
    private final Map<String, String> typed;
    private final RecipeTyped read;
    private final RecipeParts parts;

    KitchenForm(RecipeBook book, Map<String, String> typed) {
        this.book = book;
        this.typed = typed;
        this.read = new RecipeTyped(typed);
        this.parts =
                new RecipeParts(book.ingredients(), book.recipes(), book.uses(), places(), hours());
    }

    /** What would have been typed to make it as it stands in a book. */
    static Map<String, String> of(RecipeBook book) {
        Map<String, String> fields = new LinkedHashMap<>();
        int row = 0;
        for (Resource place : book.resources()) {
            String at = EntryRows.RESOURCES.at(row++);
            fields.put(at + ".id", place.id());
            fields.put(at + ".en", place.name().en());
            fields.put(at + ".es", place.name().es());
            fields.put(at + ".slots", Integer.toString(place.slots()));
            fields.put(at + ".turn", StepTime.written(place.turnaroundMinutes()));
        }
        book.hours()
                .days()
                .forEach(
                        (day, span) -> {
                            fields.put(from(day), span.from().toString());
                            fields.put(to(day), span.to().toString());
                        });
        return fields;
    }

    private static String from(DayOfWeek day) {
        return "from." + day.name().toLowerCase(Locale.ROOT);
    }

    private static String to(DayOfWeek day) {
        return "to." + day.name().toLowerCase(Locale.ROOT);
    }

    /** The edited parts; only good without faults. */
    RecipeParts parts() {
        return parts;
    }

    /** What is wrong, by field. */
    Map<String, RecipeFault> faults(Menu menu) {
        if (read.faults().isEmpty()) {
            read.place(RecipeCheck.of(parts, menu).faults());
        }
        return read.faults();
    }

    private List<Resource> places() {
        EntryIds ids = new EntryIds();
        List<Resource> places = new ArrayList<>();
        for (int row : EntryRows.RESOURCES.filled(typed)) {
            String field = EntryRows.RESOURCES.at(row);
            String here = "/resources/" + places.size();
            read.at(here + "/id", field + ".en");
            LocalText name = read.name(field);
            places.add(
                    new Resource(
                            ids.of(read.text(field + ".id"), name.en()),
                            name,
                            read.wholeOrBlank(field + ".slots", here + "/slots", 1),
                            read.minutes(field + ".turn", here + "/turnaroundMinutes")));
        }
        return places;
    }

    private KitchenHours hours() {
        Map<DayOfWeek, KitchenHours.Span> days = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            read.at("/hours/" + day.name().toLowerCase(Locale.ROOT), to(day));
            if (read.isOn(from(day)) || read.isOn(to(day))) {
                LocalTime from = read.time(from(day), LocalTime.MIN);
                days.put(day, new KitchenHours.Span(from, read.time(to(day), LocalTime.MAX)));
            }
        }
        return new KitchenHours(days);
    }

    /** Steps that would lose their place, named by what they make. */
    List<String> orphans(RecipeNames names) {
        List<String> left = parts.resources().stream().map(Resource::id).toList();
        return book.recipes().stream()
                .filter(
                        recipe ->
                                recipe.steps().stream()
                                        .flatMap(step -> step.resource().stream())
                                        .anyMatch(id -> !left.contains(id)))
                .map(recipe -> names.ingredient(recipe.makes()))
                .toList();
    }

    /** The form's groups. */
    static List<EntryGroup> groups(T t, Map<String, String> typed, Map<String, String> faults) {
        List<EntryGroup.Row> places = new ArrayList<>();
        for (int row : EntryRows.RESOURCES.shown(typed, 1)) {
            String at = EntryRows.RESOURCES.at(row);
            List<EntryBox> boxes =
                    EntryRows.RESOURCES.texts().stream()
                            .map(
                                    field ->
                                            box(
                                                    at + "." + field,
                                                    t.get("entry.field.place." + field),
                                                    typed,
                                                    faults))
                            .toList();
            String id = typed.getOrDefault(at + ".id", "");
            String legend = t.of("entry.row.places", row + 1);
            places.add(new EntryGroup.Row(legend, at + ".id", id, boxes));
        }
        List<EntryGroup.Row> hours = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            List<EntryBox> boxes =
                    List.of(
                            box(from(day), t.get("entry.field.from"), typed, faults),
                            box(to(day), t.get("entry.field.to"), typed, faults));
            hours.add(new EntryGroup.Row(RecipeNames.day(day, t), "", "", boxes));
        }
        return List.of(
                group("places", t, places, EntryRows.RESOURCES.count()),
                group("hours", t, hours, ""));
    }

    private static EntryGroup group(String name, T t, List<EntryGroup.Row> rows, String count) {
        return new EntryGroup(
                name, t.get("entry.group." + name), t.get("entry.hint." + name), rows, count);
    }

    private static EntryBox box(
            String name, String label, Map<String, String> typed, Map<String, String> faults) {
        return new EntryBox(
                name,
                EntryBox.Kind.TEXT,
                label,
                typed.getOrDefault(name, ""),
                List.of(),
                faults.getOrDefault(name, ""));
    }
}
