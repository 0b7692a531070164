package sopwell.storage;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.List;
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
                    + " hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final String LAST =
            "SELECT seq, at_ms, hash FROM events WHERE stand = ? ORDER BY seq DESC LIMIT 1";
    private static final String BY_KEY = "SELECT seq FROM events WHERE stand = ? AND key = ?";

    private final String stand;
    private final Connection connection;
    private final PreparedStatement begin;
    private final PreparedStatement commit;
    private final PreparedStatement rollback;
    private final PreparedStatement insert;
    private final PreparedStatement byKey;

    SqliteWriter(Path file, String stand, SqliteFile.Options options) throws SQLException {
        this.stand = stand;
        connection = SqliteFile.writer(file, options);
        try {
            begin = connection.prepareStatement("BEGIN IMMEDIATE");
            commit = connection.prepareStatement("COMMIT");
            rollback = connection.prepareStatement("ROLLBACK");
            insert = connection.prepareStatement(INSERT);
            byKey = connection.prepareStatement(BY_KEY);
            insert.setString(1, stand);
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
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
     * Writes the rows, all or none.
     *
     * @return whether they were written; otherwise a key among them is taken and the log is as
     *     before
     */
    boolean write(List<LogRow> rows) throws SQLException {
        begin.executeUpdate();
        try {
            for (LogRow row : rows) {
                bind(row);
                insert.executeUpdate();
            }
        } catch (SQLiteException e) {
            if (e.getResultCode() != SQLiteErrorCode.SQLITE_CONSTRAINT_UNIQUE) {
                throw e;
            }
            rollback.executeUpdate();
            return false;
        }
        commit.executeUpdate();
        return true;
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

    private void bind(LogRow row) throws SQLException {
        insert.setLong(2, row.seq());
        insert.setLong(3, row.atMs());
        insert.setString(4, row.kind());
        insert.setInt(5, row.version());
        textOrNull(6, row.key());
        textOrNull(7, row.fingerprint());
        insert.setInt(8, row.ordinal());
        insert.setString(9, new String(row.body(), StandardCharsets.UTF_8));
        insert.setBytes(10, row.hash());
    }

    private void textOrNull(int index, String text) throws SQLException {
        if (text == null) {
            insert.setNull(index, Types.VARCHAR);
        } else {
            insert.setString(index, text);
        }
    }
}
