package sopwell.stock.larder;

/**
 * What the books have of one ingredient since it was last counted, in thousandths of its base unit.
 * Immutable.
 *
 * @param countedAtMs when, milliseconds since 1970-01-01 UTC
 * @param counted what was there
 * @param in what came in since: delivered, or made in batches
 * @param used what the orders took since, by the recipes; below 0 when orders were taken back that
 *     were placed before
 * @param out what batches and the bin took since
 */
public record Held(
        String ingredient, long countedAtMs, long counted, long in, long used, long out) {
    /** What should be there now; below 0 when more was taken than was known of. */
    public long expected() {
        return counted + in - used - out;
    }

    Held withIn(long more) {
        return new Held(ingredient, countedAtMs, counted, in + more, used, out);
    }

    Held withUsed(long more) {
        return new Held(ingredient, countedAtMs, counted, in, used + more, out);
    }

    Held withOut(long more) {
        return new Held(ingredient, countedAtMs, counted, in, used, out + more);
    }
}
