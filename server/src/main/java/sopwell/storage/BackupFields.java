package sopwell.storage;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import sopwell.Limits;

/** The field {@code backup} of a stand's settings. Stateless. */
final class BackupFields {
    private static final int HOUR_MAX = 23;

    private BackupFields() {}

    /** What the file says, or the usual where it says nothing. */
    static BackupRule read(Fields fields) {
        BackupRule usual = BackupRule.USUAL;
        if (!fields.has("backup")) {
            return usual;
        }
        Fields backup = fields.inner("backup");
        BackupRule read =
                new BackupRule(
                        folder(backup),
                        whole(backup, "hour", new Bounds(0, HOUR_MAX), usual.hour()),
                        whole(backup, "days", new Bounds(1, Limits.BACKUPS_MAX), usual.days()),
                        whole(backup, "weeks", new Bounds(0, Limits.BACKUPS_MAX), usual.weeks()));
        backup.close();
        return read;
    }

    private record Bounds(int min, int max) {}

    private static int whole(Fields fields, String field, Bounds bounds, int usual) {
        return fields.has(field)
                ? StandFile.within(fields, field, bounds.min(), bounds.max())
                : usual;
    }

    /** A folder that depends on where the server was started from would be another one some day. */
    private static String folder(Fields fields) {
        String folder = fields.has("folder") ? fields.text("folder") : "";
        if (!folder.isEmpty() && !isWhole(folder)) {
            fields.faults()
                    .add(
                            fields.at("folder"),
                            "\"" + folder + "\" is not a whole path.",
                            "Write it from the top, such as /media/stick/sopwell.");
        }
        return folder;
    }

    private static boolean isWhole(String folder) {
        try {
            return Path.of(folder).isAbsolute();
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
