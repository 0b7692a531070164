package sopwell.stock.recipes;

/** What a unit measures. Units of one dimension convert into each other, others don't. */
public enum Dimension {
    /** In grams. */
    MASS,
    /** In millilitres. */
    VOLUME,
    /** In pieces. */
    COUNT;

    /** The unit that amounts of this dimension are kept in. */
    public Unit base() {
        return switch (this) {
            case MASS -> Unit.G;
            case VOLUME -> Unit.ML;
            case COUNT -> Unit.EACH;
        };
    }
}
