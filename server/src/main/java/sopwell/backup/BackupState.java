package sopwell.backup;

import java.util.Optional;
import sopwell.storage.BackupRule;
import sopwell.storage.Restored;

/**
 * How a stand's backups are. Immutable.
 *
 * @param folder where they go
 * @param folderThere whether that folder is there now
 * @param sameDisk whether it is on the log's own disk, so that both can be lost at once
 * @param rule when they are made and which are kept
 * @param last the newest good one
 * @param kept how many good ones there are
 * @param failure why the newest try came to nothing, or empty when it came to something
 * @param nextAtMs when the next one is due, milliseconds since 1970-01-01 UTC
 * @param making whether one is being made now
 * @param warning what is wrong with it all
 * @param origin what is remembered of the restore that this stand came from
 */
public record BackupState(
        String folder,
        boolean folderThere,
        boolean sameDisk,
        BackupRule rule,
        Optional<Good> last,
        int kept,
        Optional<Failure> failure,
        long nextAtMs,
        boolean making,
        Warning warning,
        Optional<Origin> origin) {

    /** What is wrong. */
    public enum Warning {
        /** Nothing is. */
        NONE,
        /** The folder that the owner chose is not there. */
        FOLDER_MISSING,
        /** The newest try came to nothing. */
        FAILED,
        /** There is no good one yet. */
        NEVER,
        /** The newest good one is too old. */
        OLD
    }

    /**
     * A backup that was opened and replayed.
     *
     * @param name its file's name
     * @param atMs when it was made
     * @param lastSeq the last event in it
     * @param bytes its size
     */
    public record Good(String name, long atMs, long lastSeq, long bytes) {}

    /**
     * The restore that a stand came from.
     *
     * @param atMs when it was restored
     * @param madeAtMs when the backup was made
     * @param lastSeq the last event of the backup
     * @param knownSeq the last event that is known to have been
     */
    public record Origin(long atMs, long madeAtMs, long lastSeq, long knownSeq) {
        static Origin of(Restored note) {
            return new Origin(note.atMs(), note.madeAtMs(), note.lastSeq(), note.knownSeq());
        }

        /** Whether events are known to be missing, from the one after the backup's last. */
        public boolean isMissingSome() {
            return knownSeq > lastSeq;
        }
    }

    /**
     * A try that came to nothing.
     *
     * @param atMs when
     * @param why what the disk or the check said, in English
     */
    public record Failure(long atMs, String why) {}
}
