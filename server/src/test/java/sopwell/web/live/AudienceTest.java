package sopwell.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Who looks at what, while screens come and go. */
class AudienceTest {
    private static final List<String> BOARDS = List.of("line", "drinks", "pass", "counter");

    @Test
    void everyScreenIsOnTheListOfItsBoardWhileItIsThereAndHasOneTurnARound() {
        SplittableRandom random = new SplittableRandom(5);
        Audience audience = new Audience();
        List<Screen> there = new ArrayList<>();
        for (int i = 0; i < 2_000; i++) {
            if (there.isEmpty() || random.nextInt(3) > 0) {
                Screen screen = screen(i);
                audience.add(screen);
                there.add(screen);
            } else {
                Screen gone = there.remove(random.nextInt(there.size()));
                audience.remove(gone.outlet());
                audience.remove(gone.outlet());
            }
            Screen any = there.isEmpty() ? screen(-1) : there.get(random.nextInt(there.size()));
            assertEquals(there.contains(any), audience.of(any.board()).contains(any));
        }
        int listed = 0;
        for (String board : audience.boards()) {
            assertTrue(there.containsAll(audience.of(board)), board);
            listed += audience.of(board).size();
        }
        int turns = 0;
        for (int turn = 0; turn < Audience.TURNS; turn++) {
            assertTrue(there.containsAll(audience.turn(turn)), "turn " + turn);
            turns += audience.turn(turn).size();
        }
        assertEquals(List.of(there.size(), there.size()), List.of(listed, turns));
        assertEquals(there.size(), audience.size());
    }

    private static Screen screen(int place) {
        return new Screen(
                new HeldOutlet("screen " + place),
                BOARDS.get(Math.floorMod(place, BOARDS.size())),
                frame -> "",
                new Screen.Ear(behind -> {}, new FrameCounts()),
                0);
    }
}
