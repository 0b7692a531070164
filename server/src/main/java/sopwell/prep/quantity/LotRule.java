package sopwell.prep.quantity;

import sopwell.Check;

/** How much is made or bought when something is missing. Immutable. */
public sealed interface LotRule {
    /** How much for this shortage, which is above 0. */
    long amount(long missing);

    /** Just what is missing. */
    record AsNeeded() implements LotRule {
        @Override
        public long amount(long missing) {
            return missing;
        }
    }

    /**
     * Whole lots of one size.
     *
     * @param size above 0
     */
    record Whole(long size) implements LotRule {
        public Whole {
            Check.that(size > 0, "a lot has a size");
        }

        @Override
        public long amount(long missing) {
            return Math.multiplyExact(-Math.floorDiv(-missing, size), size);
        }
    }

    /**
     * What is missing, but never less than this.
     *
     * @param least above 0
     */
    record AtLeast(long least) implements LotRule {
        @Override
        public long amount(long missing) {
            return Math.max(missing, least);
        }
    }
}
