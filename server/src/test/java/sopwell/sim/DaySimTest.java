package sopwell.sim;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.log.EventLog;
import sopwell.storage.MemoryLog;
import sopwell.storage.Written;

/** Days out of seeds, each looked at after every step. */
class DaySimTest {
    private static final int FIXED = 50;
    private static final int FRESH = 50;

    /** Long enough for a rush; {@link SimMain} plays longer ones. */
    private static final int STEPS = 45;

    /** These seeds run on over several dates: among them everything happens that can. */
    private static final Set<Integer> LONG = Set.of(4, 6, 7, 8, 10, 11);

    private static final int LONG_STEPS = 600;

    /** Old records are taken in by a command while the stand does not run. */
    private static final Set<String> NEVER_ON_A_RUNNING_STAND = Set.of("past-day-kept");

    /** Nothing can happen of which no day is made; whatever is new belongs into {@link Deeds}. */
    @Test
    void daysGoWellAndEverythingHappensInThem() {
        Set<String> missing = new TreeSet<>(Written.names());
        missing.removeAll(NEVER_ON_A_RUNNING_STAND);
        long fresh = new SecureRandom().nextLong() >>> 1;
        long events = 0;
        for (int i = 0; i < FIXED + FRESH; i++) {
            int steps = LONG.contains(i) ? LONG_STEPS : STEPS;
            try (Store store = Store.memory()) {
                EventLog log = new DaySim(i < FIXED ? i : fresh + i, store).play(steps).log();
                missing.removeAll(Written.names(log));
                events += log.lastSeq();
            }
        }
        assertEquals(Set.of(), missing);
        assertTrue(events > (FIXED + FRESH) * STEPS / 4, "too little happened: " + events);
    }

    @Test
    void theSameSeedGivesTheSameLog() {
        byte[] once = written(11);
        assertArrayEquals(once, written(11));
        assertFalse(Arrays.equals(once, written(12)));
    }

    @Test
    void theFileHoldsWhatTheMemoryHolds(@TempDir Path folder) {
        try (Store store = Store.file(folder)) {
            DaySim day = new DaySim(3, store).play(STEPS);
            byte[] memory = written(3);
            assertArrayEquals(memory, Written.bytes(day.log()));
        }
    }

    @Test
    void aDayThatGoesWrongSaysHowToSeeItAgain() {
        SimFailure failure =
                assertThrows(SimFailure.class, () -> new DaySim(5, forgetful()).play(2_000));
        String says = failure.getMessage();
        assertTrue(says.startsWith("seed 5, step "), says);
        assertTrue(says.matches("(?s).*\nagain: java .*SimMain 1 5 [0-9]+\n.*"), says);
        assertTrue(says.lines().count() <= 22, says);
    }

    private static byte[] written(long seed) {
        try (Store store = Store.memory()) {
            return Written.bytes(new DaySim(seed, store).play(STEPS).log());
        }
    }

    /** A disk that is empty after every kill. */
    private static Store forgetful() {
        return new Store() {
            @Override
            public EventLog open(String stand) {
                return new MemoryLog("epoch");
            }

            @Override
            public void close() {
                // Nothing is held but memory.
            }
        };
    }
}
