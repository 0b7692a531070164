package sopwell.storage;

/**
 * How the log is noted and checked; everything else that is limited is in {@link sopwell.Limits}.
 */
public final class LogLimits {
    /** Notes of how far the log has come, of which one is forced to the disk. */
    public static final int MARK_FORCED_NOTES = 256;

    /** Events at the log's end that are checked before a stand serves: some days' worth. */
    public static final int START_CHECK_EVENTS = 10_000;

    /** Events of the log that are checked in one go while a stand runs. */
    public static final int CHECK_EVENTS = 2_000;

    /** The rest between two such goes, in milliseconds. */
    public static final long CHECK_PAUSE_MILLIS = 100;

    /** How long after a start the whole log is checked, in seconds. */
    public static final long CHECK_FIRST_SECONDS = 5;

    /** How often the whole log is checked again, in seconds: a day. */
    public static final long CHECK_SECONDS = 86_400;

    private LogLimits() {}
}
