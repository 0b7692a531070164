package sopwell.stock.recipes;

/** What a unit measures. Units of one dimension convert into each other, others don't. */
public enum Dimension {
    /** In grams. */
    MASS,
    /** In millilitres. */
    VOLUME,
    /** In pieces. */
    COUNT
}
