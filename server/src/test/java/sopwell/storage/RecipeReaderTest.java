package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.menu.Selection;
import sopwell.stock.recipes.Explosion;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeFault;
import sopwell.stock.recipes.RecipeReading;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Usage;

class RecipeReaderTest {
    private static final String SMALL =
            new String(Samples.resource("/recipes/small.json"), StandardCharsets.UTF_8);

    @Test
    void whatIsWrittenReadsBackAsItself() {
        for (RecipeBook book : List.of(Samples.smallBook(), demo())) {
            ObjectNode written = RecipeWriter.tree(book.parts());
            byte[] bytes = written.toString().getBytes(StandardCharsets.UTF_8);
            boolean small = book.hasIngredient("raw");
            RecipeReading again =
                    RecipeReader.read(bytes, small ? Samples.smallMenu() : Samples.demoMenu());
            RecipeBook read = again.book().orElseThrow();
            assertEquals(book.parts(), read.parts());
            assertEquals(book.revision(), read.revision());
            assertEquals(written, RecipeWriter.tree(read.parts()));
        }
        assertNotEquals(demo().revision(), Samples.smallBook().revision());
    }

    @Test
    void everyOwnersUnitIsKeptExactly() {
        RecipeBook book = Samples.smallBook();
        BigDecimal raw = book.recipe("sliced").orElseThrow().inputs().get(0).amount();
        assertEquals(Unit.OZ.toBase(new BigDecimal(196)), raw);
        BigDecimal water = book.recipe("jus").orElseThrow().inputs().get(0).amount();
        assertEquals(new BigDecimal("1892.705892"), water);
        assertEquals(new BigDecimal("0.725"), book.recipe("sliced").orElseThrow().left());
    }

    @Test
    void theDemosBookHasNothingWorthALook() {
        RecipeReading reading = RecipeReader.read(Samples.demoRecipesBytes(), Samples.demoMenu());
        assertEquals(List.of(), reading.form());
        assertEquals(List.of(), reading.faults());
        assertEquals(List.of(), reading.notices());
    }

    @Test
    void theDemosBeefTakesWhatItsPanSaysAndComesDownToRawPieces() {
        Map<String, BigDecimal> large =
                Usage.of(
                        demo(),
                        new Selection("beef", "large", List.of("dipped", "extra"), List.of()));
        assertEquals(new BigDecimal("300"), large.get("beef-sliced"));
        assertEquals(new BigDecimal("70"), large.get("jus"));
        assertEquals(BigDecimal.ONE, large.get("long-roll"));
        BigDecimal raw =
                Explosion.gross(demo(), Map.of("beef-sliced", new BigDecimal("3649.14")))
                        .get("beef-raw");
        assertEquals(new BigDecimal("5500"), raw);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"left\": 0.725 | \"left\": 1.2 | /recipes/0/yields/0/left | YIELD_RANGE",
                "\"left\": 0.725 | \"left\": 0 | /recipes/0/yields/0/left | YIELD_RANGE",
                "\"perRunMax\": 4 | \"perRunMax\": 0 | /recipes/0/lot/perRunMax | OUT_OF_RANGE",
                "\"slots\": 1, | | /recipes/0/steps/0/slots | NO_SLOTS",
                "\"slots\": 1, | \"slots\": 9, | /recipes/0/steps/0/slots | TOO_FEW_SLOTS",
                "\"resource\": \"oven\", | | /recipes/0/steps/0/resource | NO_RESOURCE_FOR_SLOTS",
                "\"resource\": \"oven\" | \"resource\": \"ovn\" | /recipes/0/steps/0/resource"
                        + " | UNKNOWN_RESOURCE",
                "[\"tuesday\", \"friday\"] | [] | /ingredients/0/supply/days | NO_DELIVERY_DAY",
                "\"leadDays\": 2 | \"leadDays\": -1 | /ingredients/0/supply/leadDays"
                        + " | OUT_OF_RANGE",
                "\"waitAtMost\": 4000 | \"waitAtMost\": 60 | /recipes/0/steps/0/waitAtMost"
                        + " | WAITS_CROSSED",
                "\"gives\": \"58 fl oz\", | | /recipes/1 | NEITHER_YIELDS_NOR_OUT",
                "\"gives\": \"58 fl oz\" | \"gives\": \"0 ml\" | /recipes/1/gives"
                        + " | NOT_ABOVE_ZERO",
                "\"gives\": \"58 fl oz\" | \"gives\": \"58 oz\" | /recipes/1/gives"
                        + " | AMOUNT_OTHER_KIND",
                "\"7 oz\" | \"7\" | /uses/0/amount | AMOUNT_NO_UNIT",
                "\"7 oz\" | \"7,5 oz\" | /uses/0/amount | AMOUNT_COMMA",
                "\"7 oz\" | \"7 cups\" | /uses/0/amount | AMOUNT_UNKNOWN_UNIT",
                "\"size\": \"large\" | \"size\": \"huge\" | /uses/0/size | UNKNOWN_SIZE",
                "\"option\": \"hot\" | \"option\": \"hott\" | /uses/2/option | UNKNOWN_OPTION",
                "\"percent\": 120 | \"percent\": 0 | /uses/2 | USE_HOW_MUCH",
                "\"to\": \"15:30\" | \"to\": \"06:00\" | /hours/tuesday | HOURS_CROSSED",
                "[\"celery\"] | [\"cellery\"] | /ingredients/3/allergens/0 | UNKNOWN_ALLERGEN",
                "\"datedFrom\": \"roast\" | \"datedFrom\": \"bake\" | /recipes/0/datedFrom"
                        + " | UNKNOWN_STEP",
                "\"ingredient\": \"raw\", \"amount\": \"3 oz\" |"
                        + " \"ingredient\": \"rwa\", \"amount\": \"3 oz\" |"
                        + " /recipes/1/inputs/1/ingredient | UNKNOWN_INGREDIENT",
                "\"ingredient\": \"raw\", \"amount\": \"3 oz\" |"
                        + " \"ingredient\": \"jus\", \"amount\": \"3 fl oz\" | /recipes | CIRCLE",
            })
    void aFaultIsNamedWhereItStands(String from, String to, String place, RecipeFault.Kind kind) {
        assertTrue(SMALL.contains(from), from);
        RecipeReading reading = read(SMALL.replace(from, to == null ? "" : to));
        assertTrue(reading.book().isEmpty());
        assertTrue(
                reading.faults().stream()
                        .anyMatch(f -> f.place().equals(place) && f.kind() == kind),
                () -> reading.form() + " " + reading.faults());
    }

    @Test
    void aCircleIsNamedInFull() {
        String round =
                SMALL.replace(
                                "\"ingredient\": \"raw\", \"amount\": \"3 oz\"",
                                "\"ingredient\": \"sliced\", \"amount\": \"3 oz\"")
                        .replace(
                                "[{\"ingredient\": \"raw\", \"amount\": \"12 lb 4 oz\"}]",
                                "[{\"ingredient\": \"raw\", \"amount\": \"12 lb\"},"
                                        + " {\"ingredient\": \"jus\", \"amount\": \"1 gal\"}]");
        RecipeFault circle =
                read(round).faults().stream()
                        .filter(fault -> fault.kind() == RecipeFault.Kind.CIRCLE)
                        .findFirst()
                        .orElseThrow();
        assertEquals(List.of("sliced → jus → sliced"), circle.args());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"walk\": 10 | \"wlak\": 10 | /ingredients/0/wlak",
                "\"unit\": \"gal\" | \"unit\": \"firkin\" | /ingredients/2/unit",
                "\"orderBy\": \"14:00\" | \"orderBy\": \"2 pm\" | /ingredients/0/supply/orderBy",
                "\"watch\": \"cook-roast\" | \"watch\": \"stare\" | /recipes/0/steps/0/watch",
                "\"left\": 0.725 | \"left\": \"0.725\" | /recipes/0/yields/0/left",
                "\"attended\": [\"start\"] | \"attended\": [\"middle\"] |"
                        + " /recipes/0/steps/1/attended/0",
                "\"en\": \"raw beef\" | \"en\": \"raw\\u202ebeef\" | /ingredients/0/name/en",
            })
    void whatCanNotBeReadIsNamedWhereItStands(String from, String to, String place) {
        assertTrue(SMALL.contains(from), from);
        RecipeReading reading = read(SMALL.replace(from, to));
        assertTrue(
                reading.form().stream().anyMatch(fault -> fault.place().equals(place)),
                () -> reading.form().toString());
    }

    @Test
    void whatMayBeMeantIsANoticeAndNoFault() {
        String unused =
                SMALL.replace(
                        "\"ingredient\": \"jus\", \"item\": \"beef\"",
                        "\"ingredient\": \"water\", \"item\": \"beef\"");
        RecipeReading late = read(SMALL.replace("\"leadDays\": 2", "\"leadDays\": 15"));
        assertTrue(late.book().isPresent());
        assertTrue(late.notices().toString().contains("LONG_LEAD"), late.notices().toString());
        String without =
                unused.replace(
                        "\"ingredient\": \"jus\", \"option\"",
                        "\"ingredient\": \"water\", \"option\"");
        assertTrue(read(without).notices().toString().contains("UNUSED, args=[jus]"));
        assertFalse(read(SMALL).notices().toString().contains("UNUSED"));
        assertTrue(read(SMALL).notices().toString().contains("ITEM_TAKES_NOTHING, args=[roll]"));
        assertTrue(read(SMALL).notices().toString().contains("args=[beef, celery, jus]"));
    }

    private static RecipeReading read(String json) {
        return RecipeReader.read(json.getBytes(StandardCharsets.UTF_8), Samples.smallMenu());
    }

    private static RecipeBook demo() {
        return RecipeReader.read(Samples.demoRecipesBytes(), Samples.demoMenu())
                .book()
                .orElseThrow();
    }
}
