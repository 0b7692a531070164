package sopwell.till;

/** How money changes hands. */
public enum Means {
    /** Notes and coins, from or into a drawer. */
    CASH,
    /** A card, on a terminal of its own: only the amount is known here. */
    CARD
}
