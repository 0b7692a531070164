package sopwell.prep.plan;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.LocalText;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Resource;
import sopwell.stock.recipes.Supply;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Watch;

/** A book of recipes put together piece by piece. */
final class Kitchen {
    private final List<Ingredient> ingredients = new ArrayList<>();
    private final List<Recipe> recipes = new ArrayList<>();
    private final List<Resource> resources = new ArrayList<>();
    private final Map<DayOfWeek, KitchenHours.Span> hours = new EnumMap<>(DayOfWeek.class);

    Kitchen open(String from, String to, DayOfWeek... days) {
        for (DayOfWeek day : days) {
            hours.put(day, new KitchenHours.Span(LocalTime.parse(from), LocalTime.parse(to)));
        }
        return this;
    }

    Kitchen resource(String id, int slots, int turnaround) {
        resources.add(new Resource(id, text(id), slots, turnaround));
        return this;
    }

    Kitchen keep(String id, int shelfLifeDays, Optional<Supply> supply) {
        ingredients.add(
                new Ingredient(
                        id,
                        text(id),
                        Unit.G,
                        List.of(),
                        supply,
                        shelfLifeDays,
                        List.of(),
                        Ingredient.Place.ANYWHERE,
                        List.of()));
        return this;
    }

    /** Of {@code in} grams of one thing, {@code out} grams of another in a lot. */
    Kitchen make(String makes, String of, long in, long out, Routing routing) {
        recipes.add(
                new Recipe(
                        makes,
                        List.of(new Recipe.Input(of, BigDecimal.valueOf(in))),
                        List.of(),
                        Optional.of(BigDecimal.valueOf(out)),
                        new Recipe.Lot(text("lot"), 1, routing.perRun()),
                        routing.steps(),
                        routing.datedFrom()));
        return this;
    }

    RecipeBook book() {
        return new RecipeBook(
                "test",
                new RecipeParts(
                        ingredients, recipes, List.of(), resources, new KitchenHours(hours)));
    }

    record Routing(int perRun, String datedFrom, List<PrepStep> steps) {}

    static Step step(String id, int minutes) {
        return new Step(id, minutes);
    }

    static Supply supply(List<DayOfWeek> days, int leadDays, long pack, long cents) {
        return new Supply(
                "supplier", days, leadDays, LocalTime.of(14, 0), BigDecimal.valueOf(pack), cents);
    }

    static LocalText text(String word) {
        return new LocalText(word, word);
    }

    /** A step put together piece by piece. */
    static final class Step {
        private final String id;
        private final int minutes;
        private int least;
        private int most;
        private Optional<String> resource = Optional.empty();
        private int slots;
        private boolean start;
        private boolean end;
        private int hands;
        private Watch watch = Watch.NONE;

        private Step(String id, int minutes) {
            this.id = id;
            this.minutes = minutes;
        }

        Step then(int leastMinutes, int mostMinutes) {
            least = leastMinutes;
            most = mostMinutes;
            return this;
        }

        Step on(String id, int slotsPerLot) {
            resource = Optional.of(id);
            slots = slotsPerLot;
            return this;
        }

        Step attended(boolean atStart, boolean atEnd) {
            start = atStart;
            end = atEnd;
            return this;
        }

        Step hands(int minutesPerLot) {
            hands = minutesPerLot;
            return this;
        }

        Step watched(Watch by) {
            watch = by;
            return this;
        }

        PrepStep done() {
            return new PrepStep(
                    id, text(id), minutes, least, most, resource, slots, start, end, hands, watch);
        }
    }
}
