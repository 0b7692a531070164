package sopwell.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A screen is sent one thing at a time, and no change that does not follow on what it has. */
class ScreenTest {
    private final HeldOutlet outlet = new HeldOutlet("one");
    private int behind;
    private final FrameCounts counts = new FrameCounts();
    private final Screen.Ear ear = new Screen.Ear(s -> behind++, counts);
    private final Screen screen = new Screen(outlet, "line", frame -> "", ear, 0);

    @BeforeEach
    void welcome() {
        screen.sendWhole("whole 1");
        outlet.leaves();
    }

    @Test
    void changesFollowOneAnother() {
        screen.sendChange("change 2");
        outlet.leaves();
        screen.sendChange("change 3");
        outlet.leaves();
        assertEquals(List.of("whole 1", "change 2", "change 3"), outlet.sent());
        assertEquals(0, behind);
    }

    @Test
    void whoMissedAChangeIsSentNoOtherBeforeTheWhole() {
        screen.sendChange("change 2");
        screen.sendChange("change 3");
        assertEquals(0, behind, "it asks when it is through");
        outlet.leaves();
        assertEquals(1, behind);
        screen.sendChange("change 4");
        assertEquals(List.of("whole 1", "change 2"), outlet.sent());
        screen.sendWhole("whole 4");
        outlet.leaves();
        screen.sendChange("change 5");
        assertEquals(List.of("whole 1", "change 2", "whole 4", "change 5"), outlet.sent());
        assertEquals(List.of(4L, 2L), List.of(counts.sent(), counts.missed()));
    }

    @Test
    void whoAsksForTheWholeIsDrawnItOnceAndSentNoChangeMeanwhile() {
        assertTrue(screen.wantsWhole());
        assertFalse(screen.wantsWhole(), "one drawing at a time");
        screen.sendChange("change 2");
        screen.wholeComes();
        screen.sendWhole("whole 2");
        outlet.leaves();
        assertEquals(List.of("whole 1", "whole 2"), outlet.sent());
        assertEquals(0, behind);
    }

    @Test
    void aWholeThatMeetsASignOfLifeComesAfterIt() {
        screen.sendBeat("beat");
        screen.sendWhole("whole 2");
        outlet.leaves();
        assertEquals(List.of("whole 1", "beat"), outlet.sent());
        assertEquals(1, behind, "it asks again");
        assertTrue(screen.wantsWhole());
    }

    @Test
    void aNewScreenHearsNothingBeforeItsBoard() {
        HeldOutlet fresh = new HeldOutlet("two");
        Screen other = new Screen(fresh, "line", frame -> "", ear, 0);
        other.sendBeat("beat");
        other.sendWhole("whole 1");
        assertEquals(List.of("whole 1"), fresh.sent());
    }
}
