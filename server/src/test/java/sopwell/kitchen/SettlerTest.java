package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** What was shown stays until there is news. */
class SettlerTest {
    private static final PartId FRIES = new PartId("20260114-0001", 1, "fryer");

    private final Settler settler = new Settler();

    @Test
    void aFewSecondsAreNoNews() {
        assertEquals(100_000, settler.settled(FRIES, 100_000, 0));
        assertEquals(100_000, settler.settled(FRIES, 109_999, 1_000));
        assertEquals(100_000, settler.settled(FRIES, 90_001, 2_000));
        assertEquals(110_000, settler.settled(FRIES, 110_000, 3_000));
        assertEquals(110_000, settler.settled(FRIES, 101_000, 4_000));
    }

    @Test
    void whatIsDueIsDue() {
        settler.settled(FRIES, 20_000, 0);
        assertEquals(12_000, settler.settled(FRIES, 12_000, 12_000));
        settler.settled(FRIES, 20_000, 13_000);
        assertEquals(24_000, settler.settled(FRIES, 24_000, 20_000), "not due after all");
    }

    @Test
    void whatLeftTheBoardIsForgotten() {
        settler.settled(FRIES, 100_000, 0);
        settler.keepOnly(Set.of());
        assertEquals(104_000, settler.settled(FRIES, 104_000, 1_000));
    }
}
