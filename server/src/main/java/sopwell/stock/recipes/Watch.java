package sopwell.stock.recipes;

/**
 * Which temperatures are watched during a step. The limits are the stand's settings, with their
 * source and edition; local codes and the stand's inspector come first.
 */
public enum Watch {
    NONE,
    /** A whole-muscle roast: core temperature and how long it stays there. */
    COOK_ROAST,
    /** Cooling what was hot, against two time limits. */
    COOL,
    /** Chilling what was made of things at room temperature. */
    CHILL,
    /** Reheating what is to be held hot. */
    REHEAT,
    HOT_HOLD,
    COLD_HOLD,
    /** Pickling or ripening in the cold. */
    MATURE
}
