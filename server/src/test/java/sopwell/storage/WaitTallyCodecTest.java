package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.mix.HalfHours;
import sopwell.mix.WaitTally;
import sopwell.mix.WaitTally.OrderWait;
import sopwell.mix.WaitTally.PartWait;
import sopwell.mix.WaitTally.Quoted;

/** Kept waits come back as they were, and anything else is told apart. */
class WaitTallyCodecTest {
    private static final LocalDate DATE = LocalDate.of(2026, 1, 14);
    private static final int UNKNOWN = WaitTally.UNKNOWN;
    private static final List<Quoted> QUOTED = List.of(Quoted.values());
    private static final List<String> STATIONS = List.of("line", "fryer", "grill");
    private static final List<String> ITEMS = List.of("beef", "fries", "hot-dog", "jus-cup");

    @Test
    void theFormIsFrozen() {
        PartWait beef = new PartWait("line", "beef", 2, 60, 200, 230);
        PartWait fries = new PartWait("fryer", "fries", 1, UNKNOWN, 150, 230);
        WaitTally tally =
                new WaitTally(
                        DATE,
                        List.of(
                                new OrderWait(
                                        24,
                                        false,
                                        Quoted.LATER,
                                        60,
                                        200,
                                        230,
                                        List.of(beef, fries)),
                                new OrderWait(
                                        25,
                                        true,
                                        Quoted.UNJUDGED,
                                        UNKNOWN,
                                        UNKNOWN,
                                        UNKNOWN,
                                        List.of())));
        assertEquals(
                """
                line beef fryer fries
                o,0,l,1o,5k,6e;0,1,2,1o,5k,6e;2,3,1,,46,6e
                p,1,,,,""",
                WaitTallyCodec.write(tally),
                "a form that differs needs another number");
        assertEquals(1, WaitTallyCodec.FORM);
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            WaitTally tally = any(random, random.nextInt(20));
            String text = WaitTallyCodec.write(tally);
            assertEquals(tally, WaitTallyCodec.read(DATE, text), "seed " + seed);
        }
    }

    @Test
    void aBusyDayIsSmall() {
        int bytes = WaitTallyCodec.write(any(new SplittableRandom(1), 500)).length();
        assertTrue(bytes < 25_000, "so many: " + bytes);
    }

    @Test
    void anythingElseIsToldApart() {
        for (String text :
                List.of(
                        "line\no,0,l,1o,5k",
                        "line\no,0,9,1o,5k,6e",
                        "line\no,0,l,5k,1o,6e",
                        "line\no,0,l,1o,5k,6e;0,7,1,,,",
                        "line\no,0,l,1o,5k,6e;",
                        "line\n[1,2]",
                        "line\no,0,l,1o,5k,-5")) {
            assertThrows(IOException.class, () -> WaitTallyCodec.read(DATE, text), text);
        }
    }

    private static WaitTally any(SplittableRandom random, int count) {
        List<OrderWait> orders = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<PartWait> parts = new ArrayList<>();
            for (int part = random.nextInt(4); part > 0; part--) {
                int[] waits = waits(random);
                parts.add(
                        new PartWait(
                                STATIONS.get(random.nextInt(STATIONS.size())),
                                ITEMS.get(random.nextInt(ITEMS.size())),
                                1 + random.nextInt(99),
                                waits[0],
                                waits[1],
                                waits[2]));
            }
            int[] waits = waits(random);
            orders.add(
                    new OrderWait(
                            random.nextInt(HalfHours.END_MAX),
                            random.nextBoolean(),
                            QUOTED.get(random.nextInt(QUOTED.size())),
                            waits[0],
                            waits[1],
                            waits[2],
                            parts));
        }
        return new WaitTally(DATE, orders);
    }

    private static int[] waits(SplittableRandom random) {
        int started = random.nextInt(900);
        int up = started + random.nextInt(900);
        int handed = up + random.nextInt(900);
        return new int[] {
            random.nextInt(3) == 0 ? UNKNOWN : started,
            random.nextInt(3) == 0 ? UNKNOWN : up,
            random.nextInt(3) == 0 ? UNKNOWN : handed
        };
    }
}
