package sopwell.web.pages;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.menu.LocalText;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Watch;

/**
 * How an ingredient is made, as it was typed. Not thread-safe: for one request.
 *
 * @param unit what the made ingredient is counted in
 */
record EntryRecipe(RecipeBook book, RecipeTyped read, Map<String, String> typed, Unit unit) {
    /** The recipe; places of the book are put to their fields. */
    Recipe recipe(String makes, String place) {
        List<Recipe.StageYield> yields = yields(place + "/yields");
        read.at(place, "gives");
        boolean gives = read.isOn("gives");
        Optional<BigDecimal> out =
                gives ? read.amount("gives", place + "/gives", unit) : Optional.empty();
        List<PrepStep> steps = new ArrayList<>();
        String dated = steps(steps, place + "/steps");
        read.at(place + "/datedFrom", EntryRows.STEPS.at(0) + ".en");
        return new Recipe(
                makes,
                inputs(place + "/inputs"),
                yields,
                gives && out.isEmpty() ? Optional.of(BigDecimal.ONE) : out,
                new Recipe.Lot(
                        read.name("lot"),
                        read.wholeOrBlank("per-pan", place + "/lot/perPan", 1),
                        read.wholeOrBlank("per-run", place + "/lot/perRunMax", 1)),
                steps,
                dated);
    }

    private List<Recipe.Input> inputs(String place) {
        read.at(place, EntryRows.INPUTS.at(0) + ".what");
        List<Recipe.Input> inputs = new ArrayList<>();
        for (int row : EntryRows.INPUTS.filled(typed)) {
            String field = EntryRows.INPUTS.at(row);
            String here = place + "/" + inputs.size();
            read.at(here, field + ".what");
            read.at(here + "/ingredient", field + ".what");
            String what = read.text(field + ".what");
            Unit measured = book.hasIngredient(what) ? book.ingredient(what).unit() : unit;
            Optional<BigDecimal> amount =
                    read.amount(field + ".amount", here + "/amount", measured);
            inputs.add(new Recipe.Input(what, amount.orElse(BigDecimal.ONE)));
        }
        return inputs;
    }

    private List<Recipe.StageYield> yields(String place) {
        EntryIds ids = new EntryIds();
        List<Recipe.StageYield> yields = new ArrayList<>();
        for (int row : EntryRows.YIELDS.filled(typed)) {
            String field = EntryRows.YIELDS.at(row);
            String here = place + "/" + yields.size();
            if (yields.isEmpty()) {
                read.at(place, field + ".left");
            }
            read.at(here + "/id", field + ".en");
            LocalText name = read.name(field);
            BigDecimal left = read.share(field + ".left", here + "/left", BigDecimal.ONE);
            String id = ids.of(read.text(field + ".id"), name.en());
            yields.add(new Recipe.StageYield(id, name, left));
        }
        return yields;
    }

    /** Reads the steps; answers the one whose end is day 1 of the shelf life. */
    private String steps(List<PrepStep> steps, String place) {
        read.at(place, EntryRows.STEPS.at(0) + ".en");
        EntryIds ids = new EntryIds();
        String dated = "";
        for (int row : EntryRows.STEPS.filled(typed)) {
            String field = EntryRows.STEPS.at(row);
            String here = place + "/" + steps.size();
            read.at(here + "/id", field + ".en");
            LocalText name = read.name(field);
            String id = ids.of(read.text(field + ".id"), name.en());
            steps.add(step(id, name, field, here));
            if (read.text("dated").equals(Integer.toString(row))) {
                dated = id;
            }
        }
        boolean last = dated.isEmpty() && !steps.isEmpty();
        return last ? steps.get(steps.size() - 1).id() : dated;
    }

    private PrepStep step(String id, LocalText name, String field, String place) {
        String resource = read.text(field + ".resource");
        read.at(place + "/resource", field + ".resource");
        int slots = read.wholeOrBlank(field + ".slots", place + "/slots", 0);
        return new PrepStep(
                id,
                name,
                read.minutes(field + ".minutes", place + "/minutes"),
                read.minutes(field + ".least", place + "/waitAtLeast"),
                read.minutes(field + ".most", place + "/waitAtMost"),
                Optional.of(resource).filter(one -> !one.isEmpty()),
                slots,
                read.isOn(field + ".start"),
                read.isOn(field + ".end"),
                read.minutes(field + ".hands", place + "/handsMinutes"),
                Stream.of(Watch.values())
                        .filter(one -> one.name().equals(read.text(field + ".watch")))
                        .findFirst()
                        .orElse(Watch.NONE));
    }
}
