package sopwell.stock.recipes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTextTest {
    private static final List<Unit> UNITS = List.of(Unit.values());

    @ParameterizedTest
    @CsvSource({
        "6 oz, 170.09713875",
        "6oz, 170.09713875",
        "2 lb 3 oz, 992.233309375",
        "1/2 gal, 1892.705892",
        "1 1/2 lb, 680.388555",
        "½ gal, 1892.705892",
        "1½ lb, 680.388555",
        "2 FL OZ, 59.147059125",
        "2 fl. oz., 59.147059125",
        ".25 kg, 250",
        "2 libras 3 onzas, 992.233309375",
        "1 galón, 3785.411784",
        "12, 12",
        "12 piezas, 12",
        "1/3 lb, 151.197457",
        "1/3 gal, 1261.803928"
    })
    void anAmountIsUnderstoodAsOwnersWriteIt(String text, BigDecimal base) {
        AmountText.Read read = AmountText.read(text, Optional.empty());
        assertEquals(Optional.empty(), read.fault());
        assertEquals(base, read.amount().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "some | MASS | AMOUNT_NO_NUMBER",
                "1/0 lb | MASS | AMOUNT_NO_NUMBER",
                "-2 lb | MASS | AMOUNT_NO_NUMBER",
                "1,5 kg | MASS | AMOUNT_COMMA",
                "1,500 g | MASS | AMOUNT_COMMA",
                "150 | MASS | AMOUNT_NO_UNIT",
                "6 oz | VOLUME | AMOUNT_OTHER_KIND",
                "6 each | MASS | AMOUNT_OTHER_KIND",
                "2 lb 3 ml | MASS | AMOUNT_OTHER_KIND",
                "3 cups | VOLUME | AMOUNT_UNKNOWN_UNIT",
                "3 lb and more | MASS | AMOUNT_NO_NUMBER",
                "3 ! | MASS | AMOUNT_UNKNOWN_UNIT"
            })
    void whatIsNotUnderstoodIsRefusedWithItsReason(
            String text, Dimension dimension, RecipeFault.Kind kind) {
        AmountText.Read read = AmountText.read(text, Optional.of(dimension));
        assertEquals(Optional.empty(), read.amount());
        assertEquals(kind, read.fault().orElseThrow().kind());
    }

    /** Print, then read: the same amount, whatever unit people count in. */
    @Test
    void whatIsWrittenReadsBackAsItself() {
        SplittableRandom random = new SplittableRandom(41);
        for (int n = 0; n < 4_000; n++) {
            Unit unit = UNITS.get(random.nextInt(UNITS.size()));
            BigDecimal some =
                    BigDecimal.valueOf(random.nextLong(1, 9_000_000), random.nextInt(0, 5));
            BigDecimal base = random.nextBoolean() ? unit.toBase(some) : some;
            String text = AmountText.written(base, unit);
            AmountText.Read read = AmountText.read(text, Optional.of(unit.dimension()));
            assertTrue(read.amount().isPresent(), text);
            assertEquals(0, base.compareTo(read.amount().get()), text);
        }
    }

    @Test
    void peopleAreShownTwoDecimalsOfTheirOwnUnit() {
        assertEquals("6 oz", AmountText.shown(Unit.OZ.toBase(new BigDecimal(6)), Unit.LB));
        assertEquals("1.19 lb", AmountText.shown(Unit.OZ.toBase(new BigDecimal(19)), Unit.LB));
        assertEquals("150 g", AmountText.shown(new BigDecimal(150), Unit.KG));
        assertEquals("5.5 kg", AmountText.shown(new BigDecimal(5500), Unit.KG));
        assertEquals("12", AmountText.shown(new BigDecimal(12), Unit.EACH));
    }
}
