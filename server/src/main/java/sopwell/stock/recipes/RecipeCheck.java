package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.Limits;
import sopwell.menu.Allergens;
import sopwell.menu.Menu;
import sopwell.stock.recipes.RecipeFault.Kind;

/**
 * What a book of recipes must be before it takes effect. Finds every fault, not only the first. Not
 * thread-safe: for one check.
 *
 * <p>After these checks nothing in the book names what is not there, nothing is made of itself, and
 * every made ingredient says what a lot of it gives.
 */
public final class RecipeCheck {
    private final RecipeParts parts;
    private final FoundFaults faults;
    private final Map<String, Ingredient> ingredients = new LinkedHashMap<>();
    private final Map<String, Resource> resources = new LinkedHashMap<>();

    private RecipeCheck(RecipeParts parts, FoundFaults faults) {
        this.parts = parts;
        this.faults = faults;
        parts.ingredients().forEach(one -> ingredients.putIfAbsent(one.id(), one));
        parts.resources().forEach(one -> resources.putIfAbsent(one.id(), one));
    }

    /** Everything that is wrong or worth a look, beside the menu in force. */
    public static RecipeFindings of(RecipeParts parts, Menu menu) {
        FoundFaults faults = new FoundFaults();
        RecipeCheck check = new RecipeCheck(parts, faults);
        check.counts();
        check.ingredients();
        check.recipes();
        check.resources();
        check.hours();
        new UseCheck(parts, menu, faults).check();
        Optional<List<String>> circle = Levels.circle(parts);
        circle.ifPresent(path -> faults.add("/recipes", Kind.CIRCLE, String.join(" → ", path)));
        List<RecipeNotice> notices =
                faults.all().isEmpty() ? RecipeNotices.of(parts, menu) : List.of();
        return new RecipeFindings(faults.all(), notices);
    }

    /** As many as the log can be read with again. */
    private void counts() {
        faults.number("/ingredients", parts.ingredients().size(), 0, Limits.MENU_ENTRIES_MAX);
        faults.number("/recipes", parts.recipes().size(), 0, Limits.MENU_ENTRIES_MAX);
        faults.number("/uses", parts.uses().size(), 0, Limits.MENU_ENTRIES_MAX);
        faults.number("/resources", parts.resources().size(), 0, Limits.MENU_ENTRIES_MAX);
    }

    private void ingredients() {
        faults.ids("/ingredients", parts.ingredients().stream().map(Ingredient::id).toList());
        Set<String> made = new HashSet<>();
        parts.recipes().forEach(recipe -> made.add(recipe.makes()));
        for (int n = 0; n < parts.ingredients().size(); n++) {
            Ingredient one = parts.ingredients().get(n);
            String place = "/ingredients/" + n;
            faults.number(
                    place + "/shelfLifeDays", one.shelfLifeDays(), 0, Limits.SHELF_LIFE_DAYS_MAX);
            faults.number(place + "/walk", one.place().order(), 0, Limits.WALK_ORDER_MAX);
            containers(place + "/containers", one.containers());
            for (int a = 0; a < one.allergens().size(); a++) {
                faults.known(
                        place + "/allergens/" + a,
                        Kind.UNKNOWN_ALLERGEN,
                        one.allergens().get(a),
                        Allergens.names());
            }
            faults.twice(place + "/allergens", one.allergens());
            faults.twice(place + "/cautions", one.cautions());
            if (one.supply().isPresent()) {
                supply(place + "/supply", one.supply().get());
                if (made.contains(one.id())) {
                    faults.add(place + "/supply", Kind.MADE_AND_BOUGHT, one.id());
                }
            }
        }
    }

    private void containers(String place, List<Container> containers) {
        faults.ids(place, containers.stream().map(Container::id).toList());
        for (int n = 0; n < containers.size(); n++) {
            faults.amount(place + "/" + n + "/holds", containers.get(n).inBase());
        }
    }

    private void supply(String place, Supply supply) {
        if (supply.deliveryDays().isEmpty()) {
            faults.add(place + "/days", Kind.NO_DELIVERY_DAY, supply.supplier());
        }
        faults.twice(place + "/days", supply.deliveryDays());
        faults.number(place + "/leadDays", supply.leadDays(), 0, Limits.LEAD_DAYS_MAX);
        faults.amount(place + "/pack", supply.packInBase());
        faults.number(place + "/packCents", supply.packCents(), 0, Limits.PRICE_CENTS_MAX);
    }

    private void recipes() {
        Set<String> made = new HashSet<>();
        for (int n = 0; n < parts.recipes().size(); n++) {
            Recipe recipe = parts.recipes().get(n);
            String place = "/recipes/" + n;
            faults.known(
                    place + "/makes",
                    Kind.UNKNOWN_INGREDIENT,
                    recipe.makes(),
                    ingredients.keySet());
            if (!made.add(recipe.makes())) {
                faults.add(place + "/makes", Kind.MADE_TWICE, recipe.makes());
            }
            inputs(place + "/inputs", recipe);
            out(place, recipe);
            faults.number(place + "/lot/perPan", recipe.lot().perPan(), 1, Limits.LOTS_MAX);
            faults.number(place + "/lot/perRunMax", recipe.lot().perRunMax(), 1, Limits.LOTS_MAX);
            steps(place, recipe);
        }
    }

    private void inputs(String place, Recipe recipe) {
        if (recipe.inputs().isEmpty()) {
            faults.add(place, Kind.NO_INPUT);
        }
        for (int n = 0; n < recipe.inputs().size(); n++) {
            Recipe.Input input = recipe.inputs().get(n);
            String here = place + "/" + n;
            faults.known(
                    here + "/ingredient",
                    Kind.UNKNOWN_INGREDIENT,
                    input.ingredient(),
                    ingredients.keySet());
            faults.amount(here + "/amount", input.amount());
        }
        faults.twice(place, recipe.inputs().stream().map(Recipe.Input::ingredient).toList());
    }

    private void out(String place, Recipe recipe) {
        boolean yields = !recipe.yields().isEmpty();
        if (yields == recipe.statedOut().isPresent()) {
            faults.add(place, yields ? Kind.YIELDS_AND_OUT : Kind.NEITHER_YIELDS_NOR_OUT);
        }
        recipe.statedOut().ifPresent(out -> faults.amount(place + "/gives", out));
        faults.ids(place + "/yields", recipe.yields().stream().map(Recipe.StageYield::id).toList());
        for (int n = 0; n < recipe.yields().size(); n++) {
            BigDecimal left = recipe.yields().get(n).left();
            if (left.signum() <= 0 || left.compareTo(BigDecimal.ONE) > 0) {
                faults.add(place + "/yields/" + n + "/left", Kind.YIELD_RANGE, left);
            }
        }
        Optional<Ingredient> made = Optional.ofNullable(ingredients.get(recipe.makes()));
        Optional<Ingredient> main =
                recipe.inputs().stream()
                        .findFirst()
                        .map(input -> ingredients.get(input.ingredient()));
        if (yields
                && made.isPresent()
                && main.isPresent()
                && made.get().base() != main.get().base()) {
            faults.add(place + "/yields", Kind.OTHER_DIMENSION, made.get().id(), main.get().id());
        }
    }

    private void steps(String place, Recipe recipe) {
        List<String> ids = recipe.steps().stream().map(PrepStep::id).toList();
        faults.ids(place + "/steps", ids);
        if (ids.isEmpty()) {
            faults.add(place + "/steps", Kind.NO_STEP);
        }
        faults.known(place + "/datedFrom", Kind.UNKNOWN_STEP, recipe.datedFrom(), ids);
        for (int n = 0; n < recipe.steps().size(); n++) {
            step(place + "/steps/" + n, recipe.steps().get(n));
        }
    }

    private void step(String place, PrepStep step) {
        faults.number(place + "/minutes", step.minutes(), 1, Limits.PREP_STEP_MINUTES_MAX);
        faults.number(place + "/handsMinutes", step.handsMinutes(), 0, step.minutes());
        int waitMax = Limits.PREP_WAIT_MINUTES_MAX;
        faults.number(place + "/waitAtLeast", step.minWaitMinutes(), 0, waitMax);
        faults.number(place + "/waitAtMost", step.maxWaitMinutes(), 0, waitMax);
        if (step.maxWaitMinutes() != 0 && step.maxWaitMinutes() < step.minWaitMinutes()) {
            faults.add(
                    place + "/waitAtMost",
                    Kind.WAITS_CROSSED,
                    step.minWaitMinutes(),
                    step.maxWaitMinutes());
        }
        faults.number(place + "/slots", step.slotsPerLot(), 0, Limits.RESOURCE_SLOTS_MAX);
        if (step.resource().isEmpty()) {
            if (step.slotsPerLot() != 0) {
                faults.add(place + "/resource", Kind.NO_RESOURCE_FOR_SLOTS);
            }
            return;
        }
        String id = step.resource().get();
        faults.known(place + "/resource", Kind.UNKNOWN_RESOURCE, id, resources.keySet());
        int slots = resources.containsKey(id) ? resources.get(id).slots() : step.slotsPerLot();
        if (step.slotsPerLot() == 0) {
            faults.add(place + "/slots", Kind.NO_SLOTS);
        } else if (step.slotsPerLot() > slots) {
            faults.add(place + "/slots", Kind.TOO_FEW_SLOTS, step.slotsPerLot(), slots);
        }
    }

    private void resources() {
        faults.ids("/resources", parts.resources().stream().map(Resource::id).toList());
        for (int n = 0; n < parts.resources().size(); n++) {
            Resource resource = parts.resources().get(n);
            String place = "/resources/" + n;
            faults.number(place + "/slots", resource.slots(), 1, Limits.RESOURCE_SLOTS_MAX);
            faults.number(
                    place + "/turnaroundMinutes",
                    resource.turnaroundMinutes(),
                    0,
                    Limits.PREP_STEP_MINUTES_MAX);
        }
    }

    private void hours() {
        parts.hours()
                .days()
                .forEach(
                        (day, span) -> {
                            if (!span.from().isBefore(span.to())) {
                                String place = "/hours/" + day.name().toLowerCase(Locale.ROOT);
                                faults.add(place, Kind.HOURS_CROSSED, span.from(), span.to());
                            }
                        });
    }
}
