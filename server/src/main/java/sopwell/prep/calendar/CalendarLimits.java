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

    /** How far ahead the stand's first day may be set, in days: the plan sees no further. */
    public static final int OPENING_DAYS_AHEAD_MAX = 60;

    /** Pairs of hands that may prepare at the same time. */
    public static final int HANDS_MAX = 50;

    /** Dates on which nobody is in the kitchen. */
    public static final int AWAY_DATES_MAX = 60;

    /** Times during which something can't be used. */
    public static final int OUT_OF_USE_MAX = 20;

    /** For how many open days one batch may be made: as many as are planned for. */
    public static final int REVIEW_DAYS_MAX = 12;
}
