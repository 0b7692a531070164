package sopwell.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.mix.TallyShelf;

/**
 * Tallies in a database file of their own, beside the log: it is made again from the log when it is
 * lost, of another form, or damaged, so it needs no care. Thread-safe.
 */
public final class TallyFile implements TallyShelf, AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(TallyFile.class.getName());

    private static final String CREATE =
            "CREATE TABLE IF NOT EXISTS tallies (stand TEXT NOT NULL, date TEXT NOT NULL,"
                    + " last_seq INTEGER NOT NULL, body TEXT NOT NULL,"
                    + " PRIMARY KEY (stand, date)) STRICT, WITHOUT ROWID";
    private static final String ALL =
            "SELECT date, last_seq, body FROM tallies WHERE stand = ? ORDER BY date";
    private static final String ONE =
            "SELECT date, last_seq, body FROM tallies WHERE stand = ? AND date = ?";
    private static final String PUT =
            "INSERT OR REPLACE INTO tallies (stand, date, last_seq, body) VALUES (?, ?, ?, ?)";
    private static final String CLEAR = "DELETE FROM tallies WHERE stand = ?";

    private final Path file;
    private final String stand;
    private Connection connection;

    TallyFile(Path file, String stand) {
        this.file = file;
        this.stand = stand;
    }

    @Override
    public synchronized List<Shelved> of(Collection<LocalDate> dates) {
        try (PreparedStatement query = open().prepareStatement(ONE)) {
            List<Shelved> found = new ArrayList<>();
            for (LocalDate date : new TreeSet<>(dates)) {
                query.setString(1, stand);
                query.setString(2, date.toString());
                read(query, found);
            }
            return found;
        } catch (SQLException | IOException | DateTimeParseException damaged) {
            return nothing(damaged);
        }
    }

    @Override
    public synchronized List<Shelved> all() {
        try (PreparedStatement query = open().prepareStatement(ALL)) {
            List<Shelved> found = new ArrayList<>();
            query.setString(1, stand);
            read(query, found);
            return found;
        } catch (SQLException | IOException | DateTimeParseException damaged) {
            return nothing(damaged);
        }
    }

    private static void read(PreparedStatement query, List<Shelved> found)
            throws SQLException, IOException {
        try (ResultSet rows = query.executeQuery()) {
            while (rows.next()) {
                LocalDate date = LocalDate.parse(rows.getString(1));
                found.add(new Shelved(TallyCodec.read(date, rows.getString(3)), rows.getLong(2)));
            }
        }
    }

    private List<Shelved> nothing(Exception damaged) {
        LOGGER.log(Level.WARNING, file + " is damaged; its tallies are counted anew", damaged);
        startOver();
        return List.of();
    }

    @Override
    public synchronized void put(List<Shelved> tallies) {
        try (PreparedStatement row = open().prepareStatement(PUT)) {
            connection.setAutoCommit(false);
            for (Shelved kept : tallies) {
                row.setString(1, stand);
                row.setString(2, kept.tally().date().toString());
                row.setLong(3, kept.lastSeq());
                row.setString(4, TallyCodec.write(kept.tally()));
                row.executeUpdate();
            }
            connection.commit();
            connection.setAutoCommit(true);
        } catch (SQLException notKept) {
            LOGGER.log(Level.WARNING, file + " keeps no tallies; they are counted anew", notKept);
            startOver();
        }
    }

    @Override
    public synchronized void clear() {
        try (PreparedStatement all = open().prepareStatement(CLEAR)) {
            all.setString(1, stand);
            all.executeUpdate();
        } catch (SQLException damaged) {
            LOGGER.log(Level.FINE, "cleared by starting over", damaged);
            startOver();
        }
    }

    @Override
    public synchronized void close() {
        if (connection != null) {
            try {
                connection.close();
            } catch (SQLException fault) {
                LOGGER.log(Level.FINE, "closed with a fault", fault);
            }
            connection = null;
        }
    }

    private Connection open() throws SQLException {
        if (connection == null) {
            connection = DriverManager.getConnection("jdbc:sqlite:" + file.toAbsolutePath());
            try (Statement statement = connection.createStatement()) {
                statement.execute("PRAGMA synchronous = OFF");
                if (SqliteFile.number(connection, "user_version") != TallyCodec.FORM) {
                    statement.execute("DROP TABLE IF EXISTS tallies");
                }
                statement.executeUpdate(CREATE);
                statement.execute("PRAGMA user_version = " + TallyCodec.FORM);
            }
        }
        return connection;
    }

    /** Throws the file away; the next call makes a new one. */
    private void startOver() {
        close();
        try {
            Files.deleteIfExists(file);
            Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-journal"));
        } catch (IOException stays) {
            LOGGER.log(Level.WARNING, file + " can't be thrown away", stays);
        }
    }
}
