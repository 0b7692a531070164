package sopwell.prep.calendar;

/** Limits of what an owner says of coming days, each with its unit last in its name. */
public final class CalendarLimits {
    private CalendarLimits() {}

    /** How far ahead the owner's calendar reaches, in days. */
    public static final int CALENDAR_DAYS_AHEAD_MAX = 400;

    /** How long what was particular about a day stays known, in days: three years. */
    public static final int CALENDAR_DAYS_KEPT = 1_100;

    /** Occasions of one date. */
    public static final int OCCASIONS_MAX = 5;

    /** How much less an occasion may be guessed to make of a day, in percent. */
    public static final int OCCASION_PERCENT_MIN = -95;

    /** How much more an occasion may be guessed to make of a day, in percent. */
    public static final int OCCASION_PERCENT_MAX = 900;

    /** Pieces of one item that a day may be guessed to sell. */
    public static final int GUESS_PIECES_MAX = 20_000;
}
