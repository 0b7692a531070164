package sopwell.stock.recipes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ExplosionTest {
    /** J. Heizer, B. Render, Operations Management, problems 14.1 to 14.6: the bracket. */
    private static final RecipeBook BRACKET =
            Parts.book(
                    Stream.of(
                                    "shaft", "casting", "clamp", "bearing", "bracket", "handle",
                                    "spring", "base", "housing")
                            .map(id -> Parts.ingredient(id, Unit.EACH))
                            .toList(),
                    List.of(
                            Parts.recipe("clamp", "1", "handle", "1", "casting", "1"),
                            Parts.recipe("bracket", "1", "base", "1", "spring", "2", "clamp", "4"),
                            Parts.recipe("housing", "1", "bearing", "2", "shaft", "1"),
                            Parts.recipe("base", "1", "clamp", "1", "housing", "2")));

    @Test
    void fiftyBracketsNeedWhatThePublishedExampleSays() {
        Map<String, BigDecimal> expected = new LinkedHashMap<>();
        expected.put("bracket", new BigDecimal(50));
        expected.put("base", new BigDecimal(50));
        expected.put("spring", new BigDecimal(100));
        expected.put("clamp", new BigDecimal(250));
        expected.put("housing", new BigDecimal(100));
        expected.put("handle", new BigDecimal(250));
        expected.put("casting", new BigDecimal(250));
        expected.put("bearing", new BigDecimal(200));
        expected.put("shaft", new BigDecimal(100));
        assertEquals(expected, Explosion.gross(BRACKET, Map.of("bracket", new BigDecimal(50))));
    }

    @Test
    void whateverIsMadeComesBeforeAllThatItIsMadeOf() {
        List<String> order = BRACKET.downward().stream().map(Ingredient::id).toList();
        for (Recipe recipe : BRACKET.recipes()) {
            for (Recipe.Input input : recipe.inputs()) {
                assertTrue(
                        order.indexOf(recipe.makes()) < order.indexOf(input.ingredient()),
                        recipe.makes() + " before " + input.ingredient() + " in " + order);
            }
        }
        assertEquals(BRACKET.ingredients().size(), order.size());
    }

    @Test
    void askingForTwoThingsNeedsWhatEachOfThemNeedsTogether() {
        for (int n = 1; n <= 40; n++) {
            BigDecimal brackets = new BigDecimal(n * 7);
            BigDecimal bases = new BigDecimal(n).movePointLeft(2);
            Map<String, BigDecimal> sum = Explosion.gross(BRACKET, Map.of("bracket", brackets));
            Explosion.gross(BRACKET, Map.of("base", bases))
                    .forEach((id, more) -> sum.merge(id, more, BigDecimal::add));
            assertEquals(sum, Explosion.gross(BRACKET, Map.of("bracket", brackets, "base", bases)));
        }
    }

    /** Three stages of a roast: what is left of what came in is the product of their shares. */
    @Test
    void aMainThingLosesItsShareAtEveryStage() {
        Recipe sliced =
                Parts.losing(Parts.recipe("sliced", "1", "raw", "5500"), ".95", ".72", ".97");
        assertEquals(new BigDecimal("0.66348"), sliced.left());
        assertEquals(new BigDecimal("3649.14"), sliced.out());
        BigDecimal raw = Explosion.inputs(sliced, new BigDecimal("22627")).get("raw");
        assertEquals(new BigDecimal("34103.51"), raw.setScale(2, RoundingMode.HALF_UP));
    }

    /** W. Gisslen, Professional Cooking (2014), chapter 5: eighty percent of ten pounds. */
    @Test
    void tenPoundsAtEightyPercentAreEightAndNeedTwelveAndAHalf() {
        Recipe recipe = Parts.losing(Parts.recipe("trimmed", "1", "whole", "10"), ".80");
        assertEquals(new BigDecimal("8"), recipe.out());
        BigDecimal needed = Explosion.inputs(recipe, BigDecimal.TEN).get("whole");
        assertEquals(new BigDecimal("12.5"), needed);
    }

    /** A food-service supplement of 2025, page 608: 5 lb at .81; 36 lb at .47. */
    @Test
    void needsAndYieldsAreThoseOfThePublishedExamples() {
        Recipe potatoes = Parts.losing(Parts.recipe("peeled", "1", "whole", "1"), ".81");
        BigDecimal needed = Explosion.inputs(potatoes, new BigDecimal(5)).get("whole");
        assertEquals(new BigDecimal("6.17"), needed.setScale(2, RoundingMode.HALF_UP));
        Recipe meat = Parts.losing(Parts.recipe("cooked", "1", "raw", "36"), ".47");
        BigDecimal cooked = Unit.LB.toBase(meat.out());
        assertEquals(new BigDecimal("270.72"), Unit.OZ.fromBase(cooked));
    }
}
