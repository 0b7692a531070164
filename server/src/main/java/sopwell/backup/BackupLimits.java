package sopwell.backup;

/** Limits of backups, each with its unit last in its name. */
public final class BackupLimits {
    private BackupLimits() {}

    /** How often it looks whether a backup is due, in seconds. */
    public static final long BACKUP_LOOK_SECONDS = 30;

    /** After a backup that failed it tries again, after so many minutes. */
    public static final long BACKUP_AGAIN_MINUTES = 10;

    /** Between two backups to another disk, in minutes, where they are quick. */
    public static final long BACKUP_OFTEN_MINUTES = 5;

    /** A backup that took longer is not made that often, in milliseconds. */
    public static final long BACKUP_QUICK_MILLIS = 2_000;

    /** A last good backup that is older than this is warned of, in hours. */
    public static final long BACKUP_OLD_HOURS = 48;

    /** What must be free on the disk beyond the backup's own size, in bytes. */
    public static final long BACKUP_RESERVE_BYTES = 50L * 1_024 * 1_024;

    /** A screen is believed that it saw so many events more than a restored stand knows of. */
    public static final long SEEN_BEYOND_EVENTS_MAX = 1_000_000;

    /** How long a press waits for the backup that it asked for, in milliseconds. */
    public static final long BACKUP_WAIT_MILLIS = 5_000;
}
