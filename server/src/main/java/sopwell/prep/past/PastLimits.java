package sopwell.prep.past;

/** Limits of looking back, each with its unit last in its name. */
public final class PastLimits {
    private PastLimits() {}

    /** So long a look at past days is waited for; after that it is said that they are counted. */
    public static final long LOOK_MILLIS_MAX = 800;

    /** So long after it was asked for, a finished look waits for the page that asked. */
    public static final long FOUND_MILLIS_MAX = 120_000;
}
