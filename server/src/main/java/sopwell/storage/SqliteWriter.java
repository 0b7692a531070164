package sopwell.storage;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The one connection that writes. Not thread-safe: it belongs to the thread that appends.
 *
 * <p>After an error of the disk, neither the driver nor the connection can be trusted (a row of a
 * rolled back transaction was seen to stay); whoever gets an {@link SQLException} from here throws
 * the writer away.
 */
final class SqliteWriter implements AutoCloseable {
    private static final String INSERT =
            "INSERT INTO events (stand, seq, at_ms, kind, version, key, fingerprint, ordinal, body,"
                    + " hash, salt) VALUES ";

    private static final String WIPE =
            "UPDATE events SET body = ?1, fingerprint = ?2, salt = NULL"
                    + " WHERE stand = ?3 AND seq = ?4 AND hash = ?5";
    private static final String PROVE =
            "INSERT INTO erased (stand, seq, by_seq, proof) VALUES (?1, ?2, ?3, ?4)";

    /** A row's columns besides the stand. */
    private static final int COLUMNS = 10;

    /**
     * Rows that go in with one statement, most first. Half the cost of a row is the way into SQLite
     * and back; 32 at a time take a third of the processor time of single ones, and more gain
     * nothing (LogBench).
     */
    private static final List<Integer> ROWS_AT_ONCE = List.of(32, 8, 1);

    private static final String LAST =
            "SELECT seq, at_ms, hash FROM events WHERE stand = ? ORDER BY seq DESC LIMIT 1";
    private static final String BY_KEY = "SELECT seq FROM events WHERE stand = ? AND key = ?";

    private final String stand;
    private final Connection connection;
    private final PreparedStatement begin;
    private final PreparedStatement commit;
    private final PreparedStatement rollback;
    private final List<Insert> inserts = new ArrayList<>();
    private final PreparedStatement byKey;

    SqliteWriter(Path file, String stand, SqliteFile.Options options) throws SQLException {
        this.stand = stand;
        connection = SqliteFile.writer(file, options);
        try {
            begin = connection.prepareStatement("BEGIN IMMEDIATE");
            commit = connection.prepareStatement("COMMIT");
            rollback = connection.prepareStatement("ROLLBACK");
            byKey = connection.prepareStatement(BY_KEY);
            for (int rows : ROWS_AT_ONCE) {
                inserts.add(new Insert(rows, connection.prepareStatement(insert(rows))));
            }
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    /** A statement that takes so many rows. */
    private record Insert(int rows, PreparedStatement statement) {}

    /** The stand is the first parameter of all rows, then come each row's own. */
    private static String insert(int rows) {
        List<String> all = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            List<String> columns = new ArrayList<>(List.of("?1"));
            for (int column = 0; column < COLUMNS; column++) {
                columns.add("?" + (2 + row * COLUMNS + column));
            }
            all.add("(" + String.join(", ", columns) + ")");
        }
        return INSERT + String.join(", ", all);
    }

    /**
     * Where the log ends.
     *
     * @param seq the last place, or 0
     * @param atMs when it was decided, or 0
     * @param hash the last row's hash
     */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    record End(long seq, long atMs, byte[] hash) {}

    End end() throws SQLException {
        try (PreparedStatement last = connection.prepareStatement(LAST)) {
            last.setString(1, stand);
            try (ResultSet result = last.executeQuery()) {
                if (!result.next()) {
                    return new End(0, 0, LogRow.noHash());
                }
                return new End(result.getLong(1), result.getLong(2), result.getBytes(3));
            }
        }
    }

    /**
     * Writes the rows, all or none, and takes names out of older ones in the same transaction.
     *
     * @param wipes by the place of the event that says so, what older rows are from then on
     * @return whether they were written; otherwise a key among them is taken and the log is as
     *     before
     */
    boolean write(List<LogRow> rows, Map<Long, List<LogRow>> wipes) throws SQLException {
        begin.executeUpdate();
        try {
            int done = 0;
            for (Insert insert : inserts) {
                for (; rows.size() - done >= insert.rows(); done += insert.rows()) {
                    run(insert, rows.subList(done, done + insert.rows()));
                }
            }
        } catch (SQLiteException e) {
            if (e.getResultCode() != SQLiteErrorCode.SQLITE_CONSTRAINT_UNIQUE) {
                throw e;
            }
            rollback.executeUpdate();
            return false;
        }
        for (Map.Entry<Long, List<LogRow>> wipe : wipes.entrySet()) {
            wipe(wipe.getKey(), wipe.getValue());
        }
        commit.executeUpdate();
        return true;
    }

    private void wipe(long by, List<LogRow> wiped) throws SQLException {
        try (PreparedStatement wipe = connection.prepareStatement(WIPE);
                PreparedStatement prove = connection.prepareStatement(PROVE)) {
            for (LogRow row : wiped) {
                wipe.setString(1, new String(row.body(), StandardCharsets.UTF_8));
                wipe.setString(2, row.fingerprint());
                wipe.setString(3, stand);
                wipe.setLong(4, row.seq());
                wipe.setBytes(5, row.hash());
                if (wipe.executeUpdate() != 1) {
                    throw new SQLException("event " + row.seq() + " is not what was prepared");
                }
                prove.setString(1, stand);
                prove.setLong(2, row.seq());
                prove.setLong(3, by);
                prove.setBytes(4, row.proof());
                prove.executeUpdate();
            }
        }
    }

    /**
     * Moves everything into the main file at once, so that older pages are gone too; waits for
     * nobody.
     *
     * @return whether it could be done; otherwise somebody reads just now
     */
    boolean emptySideFile() throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA busy_timeout = 0");
            boolean done = SqliteFile.text(connection, "wal_checkpoint(TRUNCATE)").equals("0");
            statement.execute("PRAGMA busy_timeout = " + SqliteFile.BUSY_MILLIS);
            return done;
        }
    }

    /** The first of these keys that is in the log. */
    Optional<String> taken(List<String> keys) throws SQLException {
        byKey.setString(1, stand);
        for (String key : keys) {
            byKey.setString(2, key);
            try (ResultSet result = byKey.executeQuery()) {
                if (result.next()) {
                    return Optional.of(key);
                }
            }
        }
        return Optional.empty();
    }

    /** Moves everything into the main file and empties the write-ahead file. */
    void checkpoint() throws SQLException {
        String busy = SqliteFile.text(connection, "wal_checkpoint(TRUNCATE)");
        if (!busy.equals("0")) {
            throw new SQLException("the write-ahead file is still in use");
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }

    private void run(Insert insert, List<LogRow> rows) throws SQLException {
        PreparedStatement to = insert.statement();
        to.setString(1, stand);
        int at = 2;
        for (LogRow row : rows) {
            to.setLong(at, row.seq());
            to.setLong(at + 1, row.atMs());
            to.setString(at + 2, row.kind());
            to.setInt(at + 3, row.version());
            // A null text is NULL to this driver.
            to.setString(at + 4, row.key());
            to.setString(at + 5, row.fingerprint());
            to.setInt(at + 6, row.ordinal());
            to.setString(at + 7, new String(row.body(), StandardCharsets.UTF_8));
            to.setBytes(at + 8, row.hash());
            to.setBytes(at + 9, row.salt());
            at += COLUMNS;
        }
        to.executeUpdate();
    }
}
