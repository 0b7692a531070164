package sopwell.storage;

/** How long names are kept and how they are taken out, with its unit in each name. */
public final class PrivacyLimits {
    /** How long guests' names are kept where nothing is said, in days. */
    public static final int GUEST_NAMES_DAYS = 30;

    /** How long staff's names are kept after they left where nothing is said, in days. */
    public static final int STAFF_NAMES_DAYS = 90;

    /** The most of either, in days: ten years. */
    public static final int NAMES_DAYS_MAX = 3_650;

    /** How long after a start names are looked for that are due, in seconds. */
    public static final long ERASE_FIRST_SECONDS = 60;

    /** How often they are looked for again, in seconds: a day. */
    public static final long ERASE_SECONDS = 86_400;

    /** The rest between two business days of which names are taken out, in milliseconds. */
    public static final long ERASE_PAUSE_MILLIS = 100;

    private PrivacyLimits() {}
}
