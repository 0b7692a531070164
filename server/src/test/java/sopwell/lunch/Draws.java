package sopwell.lunch;

import java.util.SplittableRandom;

/** Random draws that depend on what they are for, not on when they are made. Immutable. */
record Draws(long seed) {
    /** The numbers for one thing: the same under every policy. */
    SplittableRandom on(Object... what) {
        long mixed = mix(seed);
        for (Object part : what) {
            mixed = mix(mixed ^ part.hashCode());
        }
        return new SplittableRandom(mixed);
    }

    /** Spreads neighbouring seeds over all numbers (Stafford's variant 13 of MurmurHash3's end). */
    private static long mix(long plain) {
        long z = plain + 0x632BE59BD9B4E019L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** A log-normal draw with this mean and coefficient of variation. */
    static double logNormal(SplittableRandom random, double mean, double cv) {
        double variance = Math.log1p(cv * cv);
        return mean * Math.exp(normal(random) * Math.sqrt(variance) - variance / 2);
    }

    /** A standard normal draw (Box and Muller 1958). */
    static double normal(SplittableRandom random) {
        double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
        return radius * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
