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

    /** How often something is looked at before it is called damaged. */
    public static final int CHECK_LOOKS_MAX = 3;

    /** The rest between two such goes, in milliseconds. */
    public static final long CHECK_PAUSE_MILLIS = 100;

    /** How long after a start the whole log is checked, in seconds. */
    public static final long CHECK_FIRST_SECONDS = 5;

    /** How often the whole log is checked again, in seconds: a day. */
    public static final long CHECK_SECONDS = 86_400;

    /** With less than this free on the log's disk, in bytes, every page warns: 500 MB. */
    public static final long DISK_WARN_BYTES = 500_000_000;

    /** With less than this free, in bytes, no new order is taken: 50 MB. */
    public static final long DISK_RESERVE_BYTES = 50_000_000;

    /** So many writes that fail within a while, and the stand only reads. */
    public static final int WRITE_FAILURES_MAX = 3;

    /** That while, in seconds. */
    public static final long WRITE_FAILURES_SECONDS = 60;

    /** How often the disk is looked at, in seconds, and tried while the stand only reads. */
    public static final long DISK_LOOK_SECONDS = 3;

    private LogLimits() {}
}
