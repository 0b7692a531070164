package sopwell.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Semaphore;
import java.util.stream.Collectors;
import sopwell.log.LogFault;

/**
 * The connections that read. Thread-safe.
 *
 * <p>Two of them, so that a long report does not keep the counter waiting. Rows are fetched some at
 * a time and handed on without a connection in hand: an open read would keep the write-ahead file
 * from being emptied.
 */
final class SqliteReader implements AutoCloseable {
    private static final int CONNECTIONS_MAX = 2;

    private static final String COLUMNS =
            "seq, at_ms, kind, version, key, fingerprint, ordinal, body, hash, ";
    private static final String NAMES =
            "salt, (SELECT x.proof FROM erased x WHERE x.stand = e.stand AND x.seq = e.seq"
                    + " ORDER BY x.by_seq DESC LIMIT 1)";

    /** What an older log, which is only looked at, has instead. */
    private static final String NO_NAMES = "NULL, NULL";

    private static final String RANGE =
            " FROM events e WHERE stand = ? AND seq BETWEEN ? AND ? ORDER BY seq LIMIT ?";
    private static final String BY_KEY = "SELECT seq FROM events WHERE stand = ? AND key = ?";
    private static final String LAST_OF =
            "SELECT seq FROM events WHERE stand = ? AND kind = ? AND seq <= ?"
                    + " ORDER BY seq DESC LIMIT 1";
    private static final String PLACES_OF =
            "SELECT seq FROM events WHERE stand = ? AND kind = ? ORDER BY seq";
    private static final String LAST = "SELECT max(seq) FROM events WHERE stand = ?";
    private static final String EPOCH = "SELECT value FROM meta WHERE name = 'epoch'";

    /** Written as in the index, or SQLite would not use it. */
    private static final String IS_RARE =
            EventName.RARE.stream()
                    .map(name -> "'" + name.written() + "'")
                    .collect(Collectors.joining(", ", " AND kind IN (", ")"));

    private final Path file;
    private final String stand;
    private final Semaphore permits = new Semaphore(CONNECTIONS_MAX, true);
    private final ConcurrentLinkedDeque<Session> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;

    SqliteReader(Path file, String stand) {
        this.file = file;
        this.stand = stand;
    }

    /** Up to so many rows of a range, in order. */
    List<LogRow> rows(long fromSeq, long toSeq, int rowsMax) {
        return with(session -> session.rows(stand, fromSeq, toSeq, rowsMax));
    }

    /** The place of the first event of a key's command. */
    OptionalLong byKey(String key) {
        return with(
                session -> {
                    PreparedStatement query = session.byKey;
                    query.setString(1, stand);
                    query.setString(2, key);
                    return first(query);
                });
    }

    OptionalLong lastOf(EventName name, long atOrBeforeSeq) {
        return with(
                session -> {
                    String sql =
                            EventName.RARE.contains(name)
                                    ? LAST_OF.replace(" ORDER", IS_RARE + " ORDER")
                                    : LAST_OF;
                    try (PreparedStatement query = session.connection.prepareStatement(sql)) {
                        query.setString(1, stand);
                        query.setString(2, name.written());
                        query.setLong(3, atOrBeforeSeq);
                        return first(query);
                    }
                });
    }

    List<Long> placesOf(EventName name) {
        return with(
                session -> {
                    String sql = PLACES_OF.replace(" ORDER", IS_RARE + " ORDER");
                    List<Long> places = new ArrayList<>();
                    try (PreparedStatement query = session.connection.prepareStatement(sql)) {
                        query.setString(1, stand);
                        query.setString(2, name.written());
                        try (ResultSet result = query.executeQuery()) {
                            while (result.next()) {
                                places.add(result.getLong(1));
                            }
                        }
                    }
                    return places;
                });
    }

    /** The last place, or 0 when the log is empty. */
    long lastSeq() {
        return with(
                session -> {
                    try (PreparedStatement query = session.connection.prepareStatement(LAST)) {
                        query.setString(1, stand);
                        return first(query).orElse(0);
                    }
                });
    }

    String epoch() {
        Optional<String> epoch =
                with(
                        session -> {
                            try (PreparedStatement query =
                                            session.connection.prepareStatement(EPOCH);
                                    ResultSet result = query.executeQuery()) {
                                return result.next()
                                        ? Optional.of(result.getString(1))
                                        : Optional.empty();
                            }
                        });
        return epoch.orElseThrow(() -> new LogFault("The log has no epoch: it is damaged."));
    }

    /** Waits until nobody reads; whoever asks later gets a fault. */
    @Override
    public void close() {
        closed = true;
        permits.acquireUninterruptibly(CONNECTIONS_MAX);
        idle.forEach(Session::close);
        idle.clear();
        permits.release(CONNECTIONS_MAX);
    }

    private static OptionalLong first(PreparedStatement query) throws SQLException {
        try (ResultSet result = query.executeQuery()) {
            return result.next() ? OptionalLong.of(result.getLong(1)) : OptionalLong.empty();
        }
    }

    /** Something to ask of a connection. */
    private interface Query<T> {
        T ask(Session session) throws SQLException;
    }

    /** A connection that failed is not used again. */
    private <T> T with(Query<T> query) {
        permits.acquireUninterruptibly();
        Session session = idle.poll();
        boolean sound = false;
        try {
            if (closed) {
                throw new LogFault("The log is closed.");
            }
            if (session == null) {
                session = new Session(SqliteFile.reader(file));
            }
            T answer = query.ask(session);
            sound = true;
            return answer;
        } catch (SQLException e) {
            throw new LogFault("The log can't be read: " + SqliteWords.of(e), e);
        } finally {
            if (sound) {
                idle.push(session);
            } else if (session != null) {
                session.close();
            }
            permits.release();
        }
    }

    /** One connection with its statements. */
    private static final class Session {
        private final Connection connection;
        private final PreparedStatement range;
        private final PreparedStatement byKey;

        Session(Connection connection) throws SQLException {
            this.connection = connection;
            boolean names =
                    SqliteFile.number(connection, "user_version") >= SqliteFile.NAMES_VERSION;
            range =
                    connection.prepareStatement(
                            "SELECT " + COLUMNS + (names ? NAMES : NO_NAMES) + RANGE);
            byKey = connection.prepareStatement(BY_KEY);
        }

        List<LogRow> rows(String stand, long fromSeq, long toSeq, int rowsMax) throws SQLException {
            range.setString(1, stand);
            range.setLong(2, fromSeq);
            range.setLong(3, toSeq);
            range.setInt(4, rowsMax);
            List<LogRow> rows = new ArrayList<>();
            try (ResultSet result = range.executeQuery()) {
                while (result.next()) {
                    rows.add(
                            new LogRow(
                                    result.getLong(1),
                                    result.getLong(2),
                                    result.getString(3),
                                    result.getInt(4),
                                    result.getString(5),
                                    result.getString(6),
                                    ordinal(result),
                                    result.getBytes(8),
                                    result.getBytes(9),
                                    result.getBytes(10),
                                    result.getBytes(11)));
                }
            }
            return rows;
        }

        /** No row is without it; what is missing, or no number, would read as the first. */
        private static int ordinal(ResultSet row) throws SQLException {
            if (row.getObject(7) instanceof Number ordinal) {
                return ordinal.intValue();
            }
            throw SqliteLog.damaged(row.getLong(1), "its place in its command is missing");
        }

        void close() {
            try {
                connection.close();
            } catch (SQLException e) {
                // It read only; whatever went wrong, nothing is lost with it.
            }
        }
    }
}
