package sopwell.mix;

import java.util.Arrays;

/**
 * Waits counted by their whole seconds: any number of them in little room, and their percentiles
 * the same as those of the sorted waits. Not thread-safe: made and read in one go.
 */
final class SecondsCount {
    private static final int FIRST_SIZE = 1_024;

    /** How many waits there are of each length. */
    private int[] waits = new int[0];

    private int size;

    /** Counts a wait, unless it is unknown. */
    void add(int seconds) {
        if (seconds == WaitTally.UNKNOWN) {
            return;
        }
        if (seconds >= waits.length) {
            int twice = Math.max(FIRST_SIZE, 2 * waits.length);
            waits = Arrays.copyOf(waits, Math.max(twice, seconds + 1));
        }
        waits[seconds]++;
        size++;
    }

    /** How many of them took no longer. */
    Share within(int targetSeconds) {
        long within = 0;
        for (int seconds = 0; seconds < waits.length && seconds <= targetSeconds; seconds++) {
            within += waits[seconds];
        }
        return new Share(within, size);
    }

    WaitSummary summary() {
        if (size == 0) {
            return WaitSummary.NONE;
        }
        return new WaitSummary(
                size,
                Percentile.of(size, this::atPlace, 0.5),
                Percentile.of(size, this::atPlace, 0.9));
    }

    /** The wait at a place of the sorted ones, from 0. */
    private double atPlace(int place) {
        int before = 0;
        int seconds = -1;
        while (before <= place) {
            seconds++;
            before += waits[seconds];
        }
        return seconds;
    }
}
