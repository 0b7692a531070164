package sopwell.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.mix.TallyShelves;

/**
 * Tallies in a database file of their own, beside the log: it is made again from the log when it is
 * lost, of another form, or damaged, so it needs no care. Thread-safe.
 */
public final class TallyFile implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(TallyFile.class.getName());

    private static final String CREATE =
            "CREATE TABLE IF NOT EXISTS tallies (stand TEXT NOT NULL, what TEXT NOT NULL,"
                    + " date TEXT NOT NULL, last_seq INTEGER NOT NULL, body TEXT NOT NULL,"
                    + " PRIMARY KEY (stand, what, date)) STRICT, WITHOUT ROWID";

    /** One number for the forms of all that is kept. */
    private static final int FORM =
            10_000 * ExceptionTallyCodec.FORM + 100 * TallyCodec.FORM + WaitTallyCodec.FORM;

    /** Mapped rather than copied: a year is read in half the time. */
    private static final long MAPPED_BYTES_MAX = 268_435_456;

    private final Path file;
    private final TallyShelves shelves;
    private Connection connection;

    /** Does something with the file. */
    interface Work<A> {
        A on(Connection connection) throws SQLException;
    }

    TallyFile(Path file, String stand) {
        this.file = file;
        TableShelf.Place place = new TableShelf.Place(this, stand);
        this.shelves =
                new TallyShelves(
                        new TableShelf<>(
                                place, "mix", TallyCodec::write, () -> new TallyCodec()::read),
                        new TableShelf<>(
                                place, "waits", WaitTallyCodec::write, () -> WaitTallyCodec::read),
                        new TableShelf<>(
                                place,
                                "exceptions",
                                ExceptionTallyCodec::write,
                                () -> ExceptionTallyCodec::read));
    }

    /** What is kept in it. */
    public TallyShelves shelves() {
        return shelves;
    }

    /** One at a time. */
    synchronized <A> A with(Work<A> work) throws SQLException {
        return work.on(open());
    }

    /** The same, and what was done is on the disk before this returns. */
    synchronized <A> A surely(Work<A> work) throws SQLException {
        Connection open = open();
        try (Statement statement = open.createStatement()) {
            statement.execute("PRAGMA synchronous = EXTRA");
            try {
                return work.on(open);
            } finally {
                statement.execute("PRAGMA synchronous = OFF");
            }
        }
    }

    /** Throws the file away; the next call makes a new one. */
    synchronized void startOver(Exception damaged) {
        Told.of(Happening.TALLIES_DAMAGED).own("file", file.toString()).fault(damaged).to(LOGGER);
        close();
        try {
            Files.deleteIfExists(file);
            Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-journal"));
        } catch (IOException stays) {
            Told.of(Happening.TALLIES_DAMAGED)
                    .own("staysThere", file.toString())
                    .fault(stays)
                    .to(LOGGER);
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
                statement.execute("PRAGMA secure_delete = 1");
                statement.execute("PRAGMA mmap_size = " + MAPPED_BYTES_MAX);
                if (SqliteFile.number(connection, "user_version") != FORM) {
                    statement.execute("DROP TABLE IF EXISTS tallies");
                    statement.execute("VACUUM");
                }
                statement.executeUpdate(CREATE);
                statement.execute("PRAGMA user_version = " + FORM);
            }
        }
        return connection;
    }
}
