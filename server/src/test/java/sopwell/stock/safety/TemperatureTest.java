package sopwell.stock.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TemperatureTest {
    @Test
    void everyTenthOfADegreeComesBackAsItWasEnteredInBothUnits() {
        for (int tenths = -400; tenths <= 5_000; tenths++) {
            assertEquals(tenths, Temperature.tenthsF(tenths).inTenthsF());
            assertEquals(tenths, Temperature.tenthsC(tenths).inTenthsC());
        }
    }

    /**
     * 0 and 100 °C are 32 and 212 °F, and at -40 both are the same: by definition of the scales.
     */
    @Test
    void theTwoScalesMeetWhereTheyShould() {
        assertEquals(Temperature.fahrenheit(32), Temperature.tenthsC(0));
        assertEquals(Temperature.fahrenheit(212), Temperature.tenthsC(1_000));
        assertEquals(Temperature.fahrenheit(-40), Temperature.tenthsC(-400));
        assertEquals(Temperature.fahrenheit(41), Temperature.tenthsC(50));
        assertEquals(572, Temperature.fahrenheit(135).inTenthsC());
    }

    @Test
    void aLimitIsComparedExactlyAndNotAsItIsShown() {
        assertTrue(Temperature.tenthsC(739).isAtLeast(165), "73.9 °C is 165.02 °F");
        assertFalse(Temperature.tenthsC(738).isAtLeast(165), "73.8 °C is 164.84 °F");
        assertFalse(Temperature.tenthsF(411).isAtMost(41));
    }
}
