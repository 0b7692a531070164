package sopwell.stock.recipes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sopwell.menu.Selection;

class UsageTest {
    private static final RecipeBook BOOK =
            Parts.book(
                    List.of(
                            Parts.ingredient("beef", Unit.G),
                            Parts.ingredient("jus", Unit.ML),
                            Parts.ingredient("relish", Unit.G)),
                    List.of(),
                    Parts.use("beef", "roast", "", "", "140"),
                    Parts.use("beef", "roast", "large", "", "210"),
                    Parts.percent("beef", "", "extra", 150),
                    Parts.percent("beef", "combo", "extra", 130),
                    Parts.use("beef", "combo", "", "", "90"),
                    Parts.use("jus", "", "", "dipped", "70"),
                    Parts.use("jus", "roast", "large", "dipped", "95"),
                    Parts.use("jus", "roast", "", "wet", "35"),
                    Parts.use("relish", "", "", "hot", "22.5"));

    @Test
    void anItemTakesItsSizesAmountOrThatOfAnySize() {
        assertEquals(amounts("beef", "140"), of("roast", "regular"));
        assertEquals(amounts("beef", "210"), of("roast", "large"));
    }

    @Test
    void anOptionAddsItsAmountOrScalesTheItemsOwn() {
        assertEquals(
                amounts("beef", "210", "jus", "70"), of("roast", "regular", "dipped", "extra"));
        assertEquals(amounts("beef", "140", "jus", "35"), of("roast", "regular", "wet"));
        assertEquals(amounts("beef", "90", "relish", "22.5"), of("combo", "", "hot"));
    }

    @Test
    void theUseThatSaysMostAboutThePieceComesFirst() {
        assertEquals(amounts("beef", "117"), of("combo", "", "extra"));
        assertEquals(amounts("beef", "315", "jus", "95"), of("roast", "large", "dipped", "extra"));
    }

    @Test
    void whatAnItemDoesNotTakeIsNotMadeSomethingByAPercentage() {
        assertEquals(Map.of(), of("fries", "", "extra"));
    }

    @Test
    void theOrderOfTheOptionsDoesNotMatter() {
        assertEquals(
                of("roast", "large", "dipped", "extra", "hot"),
                of("roast", "large", "hot", "extra", "dipped"));
    }

    private static Map<String, BigDecimal> of(String item, String size, String... options) {
        return Usage.of(BOOK, new Selection(item, size, List.of(options), List.of()));
    }

    private static Map<String, BigDecimal> amounts(String... pairs) {
        Map<String, BigDecimal> amounts = new HashMap<>();
        for (int n = 0; n < pairs.length; n += 2) {
            amounts.put(pairs[n], new BigDecimal(pairs[n + 1]));
        }
        return amounts;
    }
}
