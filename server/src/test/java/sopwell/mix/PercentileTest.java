package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.Check;

/** Percentiles against the published example. */
class PercentileTest {

    @Test
    void agreesWithTheHandbooksExample() {
        // NIST/SEMATECH e-Handbook, 7.2.6.2: twelve gauge readings, the 90th percentile is 95.1981.
        double[] readings = {
            95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065,
            95.0925, 95.1990, 95.1682
        };
        Arrays.sort(readings);
        assertEquals(95.1981, Percentile.of(readings, 0.9), 5e-5);
        assertEquals(95.10975, Percentile.of(readings, 0.25), 1e-9);
    }

    @Test
    void staysInsideTheValues() {
        double[] one = {7};
        assertEquals(7, Percentile.of(one, 0));
        assertEquals(7, Percentile.of(one, 0.5));
        assertEquals(7, Percentile.of(one, 1));
        double[] ten = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
        assertEquals(9.9, Percentile.of(ten, 0.9), 1e-12);
        assertEquals(1, Percentile.of(ten, 0.01));
        assertEquals(10, Percentile.of(ten, 0.99));
    }

    @Test
    void needsAValueAndAShare() {
        assertThrows(Check.Broken.class, () -> Percentile.of(new double[0], 0.5));
        assertThrows(Check.Broken.class, () -> Percentile.of(new double[] {1}, 1.5));
    }

    @Test
    void noWaitsComeToNothing() {
        assertEquals(new WaitSummary(0, 0, 0), WaitSummary.ofMillis(List.of()));
        assertEquals(new WaitSummary(2, 2.0, 3.0), WaitSummary.ofMillis(List.of(3_000L, 1_000L)));
    }
}
