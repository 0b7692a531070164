package sopwell.storage;

/** Opens a log as no stand does: without waiting for the disk at every commit. Stateless. */
public final class LooseLog {
    /** SQLite's number for NORMAL. */
    private static final int NORMAL = 1;

    private LooseLog() {}

    /** The log of a folder; its commits survive the program, but not the power. */
    public static SqliteLog open(DataFolder folder, String stand) {
        return folder.openLog(stand, new SqliteFile.Options(0, NORMAL));
    }
}
