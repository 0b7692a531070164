package sopwell.call;

import java.util.function.LongPredicate;

/** Runs a law over many seeds: half of them the same every time, half fresh every time. */
final class Seeds {
    private Seeds() {}

    /**
     * Tries a law.
     *
     * @param law throws when it is broken by a seed; false when the seed says nothing about it
     * @throws AssertionError with the seed that broke it, or when too few seeds said anything
     */
    static void each(int tries, LongPredicate law) {
        long fresh = System.nanoTime();
        int told = 0;
        for (int i = 0; i < tries; i++) {
            long seed = i % 2 == 0 ? i : fresh + i;
            try {
                told += law.test(seed) ? 1 : 0;
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError("seed " + seed + ": " + broken.getMessage(), broken);
            }
        }
        if (told < tries / 5) {
            throw new AssertionError("only " + told + " of " + tries + " seeds said anything");
        }
    }
}
