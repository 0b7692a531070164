package sopwell.stock.larder;

/** Limits of the clocks of food that is held by time alone, each with its unit last in its name. */
public final class ClockLimits {
    private ClockLimits() {}

    /** Clocks that run at the same time. */
    public static final int CLOCKS_MAX = 60;

    /** Temperatures that are kept of one clock. */
    public static final int CLOCK_READINGS_MAX = 60;

    /** Characters of what a clock is for. */
    public static final int CLOCK_NAME_CHARS_MAX = 40;
}
