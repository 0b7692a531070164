package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.Check;

class ShareTest {
    /**
     * Values of {@code binom.confint} in R's package binom, as statsmodels keeps them in its tests
     * (results_proportion.py); those with 263, 148 and 29 were computed by hand from the formula
     * and equal the table in R. G. Newcombe, Statistics in Medicine 17 (1998), as far as
     * remembered.
     */
    @ParameterizedTest
    @CsvSource({
        "18, 20, 0.6989664, 0.9721335",
        "4, 20, 0.0806577, 0.4160174",
        "4, 200, 0.0078044, 0.0502871",
        "190, 200, 0.9104219, 0.9726174",
        "1, 30, 0.0059086, 0.1667039",
        "29, 30, 0.8332961, 0.9940914",
        "0, 30, 0, 0.1135134",
        "30, 30, 0.8864866, 1",
        "81, 263, 0.2552885, 0.3662096",
        "15, 148, 0.0623864, 0.1604872",
        "0, 20, 0, 0.1611252",
        "1, 29, 0.0061132, 0.1717552"
    })
    void hasThePublishedInterval(long some, long all, double low, double high) {
        Share share = new Share(some, all);
        assertEquals(low, share.low(), 1e-7);
        assertEquals(high, share.high(), 1e-7);
    }

    @Test
    void nothingIsUnknownFromNothingToAll() {
        Share nothing = new Share(0, 0);
        assertFalse(nothing.isKnown());
        assertEquals(0, nothing.value());
        assertEquals(0, nothing.low());
        assertEquals(1, nothing.high());
    }

    @Test
    void someIsNeverMoreThanAll() {
        assertThrows(Check.Broken.class, () -> new Share(3, 2));
        assertThrows(Check.Broken.class, () -> new Share(-1, 2));
    }

    /** The mean coverage of the interval is what it says; of 2,000 the share may be 1.5 % off. */
    @Test
    void holdsTheTruthNineteenTimesInTwenty() {
        SplittableRandom random = new SplittableRandom(95);
        int held = 0;
        int times = 2_000;
        for (int i = 0; i < times; i++) {
            double truth = 0.05 + 0.9 * random.nextDouble();
            int all = 20 + random.nextInt(200);
            long some = random.doubles(all).filter(u -> u < truth).count();
            Share share = new Share(some, all);
            assertTrue(share.low() <= share.value() && share.value() <= share.high());
            held += share.low() <= truth && truth <= share.high() ? 1 : 0;
        }
        assertEquals(0.95, (double) held / times, 0.015);
    }
}
