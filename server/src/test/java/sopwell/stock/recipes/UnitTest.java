package sopwell.stock.recipes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    /** NIST Handbook 44, Appendix C (bold figures are exact); NIST SP 811, B.8: from memory. */
    @ParameterizedTest
    @CsvSource({
        "LB, 453.59237",
        "OZ, 28.349523125",
        "GAL, 3785.411784",
        "QT, 946.352946",
        "FL_OZ, 29.5735295625"
    })
    void aUnitIsWhatTheStandardsOfficeSaysItIs(Unit unit, BigDecimal inBase) {
        assertEquals(inBase, unit.inBase());
    }

    @Test
    void aPoundIsSixteenOuncesAndAGallonFourQuartsOrAHundredTwentyEightFluidOunces() {
        assertEquals(Unit.LB.inBase(), Unit.OZ.toBase(new BigDecimal(16)));
        assertEquals(Unit.GAL.inBase(), Unit.QT.toBase(new BigDecimal(4)));
        assertEquals(Unit.GAL.inBase(), Unit.FL_OZ.toBase(new BigDecimal(128)));
    }

    /** A gallon is 231 cubic inches, and an inch 2.54 cm: NIST Handbook 44, Appendix C. */
    @Test
    void aGallonIsTwoHundredThirtyOneCubicInches() {
        BigDecimal inch = new BigDecimal("2.54").pow(3);
        assertEquals(Unit.GAL.inBase(), inch.multiply(new BigDecimal(231)).stripTrailingZeros());
    }

    @ParameterizedTest
    @EnumSource
    void everyAmountComesBackAsItWent(Unit unit) {
        for (String text : new String[] {"1", "0.125", "17.3", "12345.6789", "0.001", "3000"}) {
            BigDecimal amount = new BigDecimal(text);
            assertEquals(amount, unit.fromBase(unit.toBase(amount)), text + " " + unit);
        }
    }

    /** Bakery and Business Math, open textbook of the state of Washington: .95 and .78. */
    @Test
    void publishedYieldsOfPoundsAndOuncesComeOutAsPublished() {
        BigDecimal three = Unit.LB.toBase(new BigDecimal("3"));
        BigDecimal left = three.multiply(new BigDecimal(".95"));
        assertEquals(new BigDecimal("2.85"), Unit.LB.fromBase(left));
        BigDecimal wanted = Unit.OZ.toBase(new BigDecimal("32"));
        Recipe losing = Parts.losing(Parts.recipe("a", "1", "b", "1"), ".78");
        BigDecimal needed = Explosion.inputs(losing, wanted).get("b");
        assertEquals(
                new BigDecimal("41.03"),
                Unit.OZ.fromBase(needed).setScale(2, RoundingMode.HALF_UP));
    }
}
