package sopwell.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import sopwell.audit.AuditEvent;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.LogFault;

/**
 * Looks whether a log's file holds what was written: each row against the one before, each key and
 * rare event in its index, the tables as they were made. SQLite's own check finds none of the first
 * and is not asked. Thread-safe: it reads over connections of its own.
 */
public final class LogCheck {
    private static final Logger LOGGER = Logger.getLogger(LogCheck.class.getName());
    private static final String RARE =
            EventName.RARE.stream()
                    .map(name -> "'" + name.written() + "'")
                    .collect(Collectors.joining(", ", "(", ")"));

    /** With a plus, or SQLite would read the index for the rows, too, whatever else is said. */
    private static final String LOST_KEY =
            "SELECT e.seq FROM events e NOT INDEXED LEFT JOIN events k INDEXED BY events_by_key"
                    + " ON k.stand = e.stand AND k.key = e.key"
                    + " WHERE e.stand = ?1 AND e.seq BETWEEN ?2 AND ?3 AND +e.key IS NOT NULL"
                    + " AND k.seq IS NOT e.seq LIMIT 1";

    private static final String RARE_ROWS =
            "SELECT stand, kind, seq FROM events NOT INDEXED"
                    + " WHERE stand = ?1 AND seq BETWEEN ?2 AND ?3 AND +kind IN "
                    + RARE;

    /** Not looked up by what is sought: a record that lost its columns is equal to anything. */
    private static final String RARE_INDEX =
            "SELECT stand, kind, seq FROM events INDEXED BY events_rare WHERE kind IN "
                    + RARE
                    + " AND +seq BETWEEN ?2 AND ?3 AND +stand = ?1";

    private static final String ERASED_ROWS = "SELECT stand, by_seq, seq, proof FROM erased ";
    private static final String ERASED_INDEX_IS_SOUND =
            "SELECT (SELECT count(*) FROM erased INDEXED BY erased_by)"
                    + " = (SELECT count(*) FROM erased NOT INDEXED) AND NOT EXISTS ("
                    + ERASED_ROWS
                    + "NOT INDEXED EXCEPT "
                    + ERASED_ROWS
                    + "INDEXED BY erased_by)";

    private static final String NOT_SAID =
            "SELECT x.seq FROM erased x LEFT JOIN events e ON e.stand = x.stand"
                    + " AND e.seq = x.by_seq AND e.kind = 'names-erased'"
                    + " WHERE x.stand = ?1 AND x.seq BETWEEN ?2 AND ?3 AND e.seq IS NULL LIMIT 1";

    private static final String ERASED =
            "SELECT seq, proof FROM erased WHERE stand = ? AND by_seq = ? ORDER BY seq";

    private static final String TABLES =
            "SELECT type || ' ' || name || ' ' || tbl_name || ' ' || coalesce(sql, '')"
                    + " FROM sqlite_schema";

    private final Path file;
    private final String stand;

    LogCheck(Path file, String stand) {
        this.file = file;
        this.stand = stand;
    }

    /**
     * Checks the tables, and so many rows at the end.
     *
     * @throws LogFault with what is wrong
     */
    public void newest(long last, long rows) {
        try (Connection connection = SqliteFile.reader(file)) {
            tables(connection);
        } catch (SQLException e) {
            throw new LogFault("The log can't be read: " + SqliteWords.of(e), e);
        }
        range(Math.max(1, last - rows + 1), last);
    }

    /**
     * Checks the rows from one place to another, both included, and that the first follows on the
     * one before. What does not look right is looked at again, over new connections: a damage
     * stays, a read that failed once does not.
     *
     * @throws LogFault with the place where something is wrong
     */
    public void range(long from, long to) {
        for (int look = 1; ; look++) {
            try {
                once(from, to);
                return;
            } catch (LogFault fault) {
                if (look == LogLimits.CHECK_LOOKS_MAX) {
                    throw fault;
                }
                Told.of(Happening.READ_AGAIN).fault(fault).to(LOGGER);
            }
        }
    }

    private void once(long from, long to) {
        if (from > to) {
            return;
        }
        try (SqliteReader reader = new SqliteReader(file, stand)) {
            LogRow.Chain chain = new LogRow.Chain(stand);
            byte[] before = LogRow.noHash();
            List<LogRow> said = new ArrayList<>();
            long next = Math.max(1, from - 1);
            while (next <= to) {
                List<LogRow> rows = reader.rows(next, to, SqliteLog.READ_ROWS);
                for (LogRow row : rows) {
                    boolean known = row.seq() >= from;
                    if (row.seq() != next || (known && !row.follows(chain, before))) {
                        throw SqliteLog.damaged(next, "it is not what was written");
                    }
                    if (known && row.kind().equals(EventName.NAMES_ERASED.written())) {
                        said.add(row);
                    }
                    before = row.hash();
                    next++;
                }
                if (rows.isEmpty()) {
                    throw SqliteLog.damaged(next, "it is missing");
                }
            }
            names(said, from, to);
        }
        indexes(from, to);
    }

    /** An event without its name is what is left of it only if the log says that it was taken. */
    private void names(List<LogRow> said, long from, long to) {
        try (Connection connection = SqliteFile.reader(file)) {
            if (SqliteFile.number(connection, "user_version") < SqliteFile.NAMES_VERSION) {
                return;
            }
            OptionalLong unsaid = lost(connection, NOT_SAID, from, to);
            if (unsaid.isPresent()) {
                throw SqliteLog.damaged(
                        unsaid.getAsLong(), "no event says that names were taken out of it");
            }
            for (LogRow row : said) {
                AuditEvent.NamesErased event =
                        (AuditEvent.NamesErased)
                                EventCodec.decode(row.seq(), row.kind(), row.version(), row.body());
                if (!digest(connection, row.seq()).equals(event.digest())) {
                    throw SqliteLog.damaged(
                            row.seq(), "what names were taken out of is not what was left");
                }
            }
        } catch (SQLException e) {
            throw new LogFault(
                    "What names were taken out of can't be read: " + SqliteWords.of(e), e);
        }
    }

    private String digest(Connection connection, long by) throws SQLException {
        Wiping.Digest digest = new Wiping.Digest();
        try (PreparedStatement statement = connection.prepareStatement(ERASED)) {
            statement.setString(1, stand);
            statement.setLong(2, by);
            try (ResultSet result = statement.executeQuery()) {
                while (result.next()) {
                    digest.add(result.getLong(1), result.getBytes(2));
                }
            }
        }
        return digest.hex();
    }

    private void indexes(long from, long to) {
        try (Connection connection = SqliteFile.reader(file)) {
            OptionalLong lost = lost(connection, LOST_KEY, from, to);
            if (lost.isEmpty()) {
                Set<Place> rare = places(connection, RARE_ROWS, from, to);
                rare.removeAll(places(connection, RARE_INDEX, from, to));
                lost = rare.stream().mapToLong(Place::seq).min();
            }
            if (lost.isPresent()) {
                throw SqliteLog.damaged(lost.getAsLong(), "an index does not lead to it");
            }
        } catch (SQLException e) {
            throw new LogFault("The log's indexes can't be read: " + SqliteWords.of(e), e);
        }
    }

    /** Where a row or an index says that an event is. */
    private record Place(String stand, String kind, long seq) {}

    private Set<Place> places(Connection connection, String query, long from, long to)
            throws SQLException {
        Set<Place> places = new HashSet<>();
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setString(1, stand);
            statement.setLong(2, from);
            statement.setLong(3, to);
            try (ResultSet result = statement.executeQuery()) {
                while (result.next()) {
                    places.add(
                            new Place(result.getString(1), result.getString(2), result.getLong(3)));
                }
            }
        }
        return places;
    }

    private OptionalLong lost(Connection connection, String query, long from, long to)
            throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setString(1, stand);
            statement.setLong(2, from);
            statement.setLong(3, to);
            try (ResultSet result = statement.executeQuery()) {
                return result.next() ? OptionalLong.of(result.getLong(1)) : OptionalLong.empty();
            }
        }
    }

    /** They are compared with freshly made ones. */
    private static void tables(Connection connection) throws SQLException {
        try (Connection fresh = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            SqliteFile.make(fresh);
            if (!tablesOf(connection).equals(tablesOf(fresh))) {
                throw new LogFault("The log is damaged: its tables are not as they were made.");
            }
            try (Statement statement = connection.createStatement();
                    ResultSet sound = statement.executeQuery(ERASED_INDEX_IS_SOUND)) {
                if (!sound.next() || !sound.getBoolean(1)) {
                    throw new LogFault(
                            "The log is damaged: an index does not lead to what names were taken"
                                    + " out of.");
                }
            }
        }
    }

    private static Set<String> tablesOf(Connection connection) throws SQLException {
        Set<String> tables = new TreeSet<>();
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(TABLES)) {
            while (result.next()) {
                tables.add(result.getString(1));
            }
        }
        return tables;
    }
}
