package sopwell.whatif;

/** Limits of trying a day again with other hands, each with its unit last in its name. */
public final class WhatIfLimits {
    private WhatIfLimits() {}

    /** Runs of a day again, to see what is chance. */
    public static final int WHAT_IF_RUNS = 20;

    /** How many fewer guests a day is tried with, in percent. */
    public static final int WHAT_IF_GUESTS_PERCENT_MIN = -50;

    /** How many more guests a day is tried with, in percent. */
    public static final int WHAT_IF_GUESTS_PERCENT_MAX = 100;

    /** How many hands or machines more or fewer a station is tried with. */
    public static final int WHAT_IF_HANDS_MAX = 2;

    /** Orders of a day that is tried again; a longer day is refused. */
    public static final int WHAT_IF_ORDERS_MAX = 3_000;
}
