package sopwell.whatif;

import java.util.SplittableRandom;

/**
 * Random numbers that depend on what they are for, not on when they are drawn, so that the same
 * guest asks the same work of the day as it was and of the day as it might have been. Immutable.
 */
record Draws(long seed) {
    /** The numbers for one thing. */
    SplittableRandom on(long kind, long which) {
        return new SplittableRandom(mix(mix(mix(seed) ^ kind) ^ which));
    }

    /** Spreads neighbouring seeds over all numbers (Stafford's variant 13 of MurmurHash3's end). */
    private static long mix(long plain) {
        long z = plain + 0x632BE59BD9B4E019L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** A standard normal draw (Box and Muller 1958). */
    static double normal(SplittableRandom random) {
        double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
        return radius * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
