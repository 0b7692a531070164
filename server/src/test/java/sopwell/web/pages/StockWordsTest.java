package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.menu.Lang;
import sopwell.menu.LocalText;
import sopwell.orders.Safety;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Unit;
import sopwell.web.T;
import sopwell.web.Texts;

/** Amounts and chances in words. */
class StockWordsTest {
    private static final T EN = Texts.load().in(Lang.EN);

    @ParameterizedTest
    @CsvSource({
        "KG, 20000, 0.02 kg",
        "KG, 49999, 0.05 kg",
        "KG, 50000, 0.1 kg",
        "KG, 1, 0.000001 kg",
        "LB, -9072, -0.02 lb",
        "KG, 0, 0 kg",
        "G, 4, 0.004 g",
        "KG, 12340000, 12.3 kg"
    })
    void whatIsThereIsNeverShownAsNothing(Unit unit, long thousandths, String shown) {
        Ingredient one =
                new Ingredient(
                        "beef",
                        new LocalText("beef", "res"),
                        unit,
                        List.of(),
                        Optional.empty(),
                        0,
                        List.of(),
                        Ingredient.Place.ANYWHERE,
                        List.of());
        StockWords words = new StockWords(EN, ZoneId.of("UTC"), Safety.USUAL);
        assertEquals(shown, words.amount(one, thousandths));
    }

    @Test
    void aChanceIsNeverCalledCertainWhenItIsNot() {
        assertEquals("83 %", EN.chance(0.83));
        assertEquals("99.7 %", EN.chance(0.9968));
        assertEquals("99.9 %", EN.chance(0.99999));
        assertEquals("0.1 %", EN.chance(0.00001));
        assertEquals("100 %", EN.chance(1));
        assertEquals("0 %", EN.chance(0));
    }
}
