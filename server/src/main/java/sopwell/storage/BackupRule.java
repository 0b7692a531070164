package sopwell.storage;

/**
 * Where a stand's backups go, when, and which of them are kept. Immutable.
 *
 * @param folder the folder that the owner chose, or empty: then they stand beside the log
 * @param hour the local hour, 0 to 23, at which the day's backup is made
 * @param days of so many of the newest days with a backup, the last one is kept
 * @param weeks of so many of the newest weeks with a backup, the last one is kept
 */
public record BackupRule(String folder, int hour, int days, int weeks) {
    /** Where the owner said nothing: at night, two weeks of days and two months of weeks. */
    public static final BackupRule USUAL = new BackupRule("", 4, 14, 8);
}
