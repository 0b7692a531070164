package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeCheck;
import sopwell.stock.recipes.Supply;
import sopwell.stock.recipes.Use;
import sopwell.web.T;

/** What the page of recipes says. Immutable; local to its request. */
public final class RecipeView {
    private final RecipeBook book;
    private final Menu menu;
    private final T t;
    private final RecipeNames names;

    RecipeView(RecipeBook book, Menu menu, T t) {
        this.book = book;
        this.menu = menu;
        this.t = t;
        this.names = new RecipeNames(book, menu, t);
    }

    public boolean isEmpty() {
        return book.isEmpty();
    }

    /** What is made here, in the book's order. */
    public List<Ingredient> made() {
        return book.ingredients().stream().filter(one -> isMade(one)).toList();
    }

    /** Everything else. */
    public List<Ingredient> bought() {
        return book.ingredients().stream().filter(one -> !isMade(one)).toList();
    }

    private boolean isMade(Ingredient one) {
        return book.recipe(one.id()).isPresent();
    }

    public String name(Ingredient one) {
        return t.local(one.name());
    }

    /** What a lot takes, what is left after each stage, and what it gives. */
    public List<String> about(Ingredient one) {
        List<String> lines = new ArrayList<>();
        Recipe recipe = book.recipe(one.id()).orElseThrow();
        List<String> inputs = new ArrayList<>();
        for (Recipe.Input input : recipe.inputs()) {
            Ingredient taken = book.ingredient(input.ingredient());
            inputs.add(AmountText.shown(input.amount(), taken.unit()) + " " + name(taken));
        }
        lines.add(t.of("recipes.from", t.list(inputs)));
        if (!recipe.yields().isEmpty()) {
            lines.add(
                    String.join(
                            " · ",
                            recipe.yields().stream()
                                    .map(y -> t.local(y.name()) + " " + y.left().toPlainString())
                                    .toList()));
        }
        String lot = t.local(recipe.lot().name());
        List<String> lots = new ArrayList<>();
        lots.add(t.of("recipes.gives", lot, AmountText.shown(recipe.out(), one.unit())));
        if (recipe.lot().perPan() > 1) {
            lots.add(t.of("recipes.pan", recipe.lot().perPan()));
        }
        lots.add(t.of("recipes.run", recipe.lot().perRunMax()));
        if (one.shelfLifeDays() > 0) {
            String days = one.shelfLifeDays() == 1 ? "recipes.life.one" : "recipes.life.several";
            lots.add(t.of(days, one.shelfLifeDays()));
        }
        lines.add(String.join(", ", lots));
        return lines;
    }

    /** The steps with their times. */
    public List<String> steps(Ingredient one) {
        return book.recipe(one.id()).orElseThrow().steps().stream().map(this::step).toList();
    }

    private String step(PrepStep step) {
        List<String> parts = new ArrayList<>();
        parts.add(t.local(step.name()) + " " + names.minutes(step.minutes()));
        step.resource().map(book::resource).map(r -> t.local(r.name())).ifPresent(parts::add);
        String least = names.minutes(step.minWaitMinutes());
        String most = names.minutes(step.maxWaitMinutes());
        if (step.minWaitMinutes() > 0 && step.maxWaitMinutes() > 0) {
            parts.add(t.of("recipes.wait-both", least, most));
        } else if (step.minWaitMinutes() > 0) {
            parts.add(t.of("recipes.wait", least));
        } else if (step.maxWaitMinutes() > 0) {
            parts.add(t.of("recipes.wait-most", most));
        }
        return String.join(", ", parts);
    }

    /** What sells it, and what is made of it. */
    public List<String> into(Ingredient one) {
        List<String> lines = new ArrayList<>();
        List<String> sells =
                book.uses().stream()
                        .filter(use -> use.ingredient().equals(one.id()) && names.isSold(use))
                        .map(this::use)
                        .toList();
        if (!sells.isEmpty()) {
            lines.add(t.of("recipes.sells", String.join(" · ", sells)));
        }
        List<String> recipes =
                book.recipes().stream()
                        .filter(r -> r.inputs().stream().anyMatch(i -> takes(i, one)))
                        .map(r -> names.ingredient(r.makes()))
                        .toList();
        if (!recipes.isEmpty()) {
            lines.add(t.of("recipes.into", t.list(recipes)));
        }
        return lines;
    }

    private static boolean takes(Recipe.Input input, Ingredient one) {
        return input.ingredient().equals(one.id());
    }

    private String use(Use use) {
        String much =
                use.isPercent()
                        ? use.percent() + " %"
                        : AmountText.written(
                                use.amount(), book.ingredient(use.ingredient()).unit());
        return names.subject(use) + " " + much;
    }

    /** Who brings it, how much and when; empty when nobody does. */
    public String supply(Ingredient one) {
        Optional<Supply> supply = one.supply();
        return supply.map(
                        s ->
                                String.join(
                                        " · ",
                                        s.supplier(),
                                        AmountText.shown(s.packInBase(), one.unit())
                                                + " "
                                                + t.money(s.packCents()),
                                        names.days(s.deliveryDays())))
                .orElse("");
    }

    /** What is worth a look, as sentences. */
    public List<String> notices() {
        return RecipeCheck.of(book.parts(), menu).notices().stream().map(names::notice).toList();
    }

    /** What is worth a look of one ingredient. */
    List<String> notices(String id) {
        return RecipeCheck.of(book.parts(), menu).notices().stream()
                .filter(notice -> notice.args().contains(id))
                .map(names::notice)
                .toList();
    }

    /** Ingredients that could be added to a recipe, by id. */
    public Map<String, String> others(Ingredient one) {
        Map<String, String> others = new LinkedHashMap<>();
        for (Ingredient other : book.ingredients()) {
            if (!other.id().equals(one.id())) {
                others.put(other.id(), name(other));
            }
        }
        return others;
    }
}
