package sopwell.storage;

import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What to say when SQLite fails. Stateless. */
final class SqliteWords {
    private SqliteWords() {}

    /**
     * SQLite calls a file malformed when the disk fails to read it, too (EIO becomes
     * SQLITE_IOERR_CORRUPTFS, and that becomes SQLITE_CORRUPT); whoever reads this should not throw
     * a whole log away.
     */
    static String of(SQLException fault) {
        boolean perhapsWhole =
                fault instanceof SQLiteException one
                        && (one.getResultCode() == SQLiteErrorCode.SQLITE_CORRUPT
                                || one.getResultCode() == SQLiteErrorCode.SQLITE_IOERR_CORRUPTFS);
        return perhapsWhole
                ? fault.getMessage()
                        + " - a disk that fails to read looks the same: look at the disk, and start"
                        + " again, before you take the log for damaged"
                : fault.getMessage();
    }
}
