package sopwell.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.Optional;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * Compares where a log ends with what was noted of it, before anything is written: a connection
 * that writes would throw away the rest of a damaged write-ahead file. Not thread-safe: for the
 * thread that starts the server.
 */
final class LogEnd {
    private static final Logger LOGGER = Logger.getLogger(LogEnd.class.getName());
    private static final String HAS_TABLE =
            "SELECT count(*) FROM sqlite_schema WHERE name = 'events'";
    private static final String LAST = "SELECT max(seq) FROM events WHERE stand = ?";
    private static final String HASH = "SELECT hash FROM events WHERE stand = ? AND seq = ?";
    private static final String EPOCH = "SELECT value FROM meta WHERE name = 'epoch'";

    private final Path file;
    private final String stand;

    LogEnd(Path file, String stand) {
        this.file = file;
        this.stand = stand;
    }

    /**
     * Compares.
     *
     * @throws LogLoss when events are missing at the end
     */
    void compare(Optional<LogMark.Note> noted) throws SQLException {
        if (noted.isEmpty() || !noted.get().stand().equals(stand)) {
            return;
        }
        LogMark.Note note = noted.get();
        try (Connection connection = SqliteFile.reader(file)) {
            boolean made = !text(connection, HAS_TABLE).equals("0");
            long last = made ? last(connection) : 0;
            String epoch = made ? text(connection, EPOCH) : note.epoch();
            if (!epoch.equals(note.epoch())) {
                Told.of(Happening.LOG_REPLACED).to(LOGGER);
                return;
            }
            if (last < note.seq()) {
                throw new LogLoss(last, note.seq());
            }
            if (!hash(connection, note.seq()).equals(note.hash())) {
                throw SqliteLog.damaged(note.seq(), "it is not the one that was noted");
            }
        }
    }

    /** Takes what is left for the whole; empty when nothing is lost. */
    Optional<String> accept() {
        LogMark mark = new LogMark(file);
        try {
            SqliteFile.create(file);
            compare(mark.read());
            return Optional.empty();
        } catch (LogLoss loss) {
            try {
                Path ahead = file.resolveSibling(file.getFileName() + "-wal");
                if (Files.exists(ahead)) {
                    Path aside = file.resolveSibling(ahead.getFileName() + ".damaged");
                    Files.copy(ahead, aside, StandardCopyOption.REPLACE_EXISTING);
                }
                SqliteFile.prepare(file);
                renew();
                mark.forget();
            } catch (SQLException | IOException e) {
                throw new FolderFault("The log can't be written: " + e.getMessage(), e);
            }
            return Optional.of(loss.getMessage());
        } catch (SQLException | IOException e) {
            throw new FolderFault("The log can't be read: " + e.getMessage(), e);
        }
    }

    private void renew() throws SQLException {
        try (Connection connection = SqliteFile.writer(file, SqliteFile.Options.USUAL);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(
                    "UPDATE meta SET value = lower(hex(randomblob(8))) WHERE name = 'epoch'");
        }
    }

    private long last(Connection connection) throws SQLException {
        try (PreparedStatement query = connection.prepareStatement(LAST)) {
            query.setString(1, stand);
            try (ResultSet result = query.executeQuery()) {
                return result.next() ? result.getLong(1) : 0;
            }
        }
    }

    private String hash(Connection connection, long seq) throws SQLException {
        try (PreparedStatement query = connection.prepareStatement(HASH)) {
            query.setString(1, stand);
            query.setLong(2, seq);
            try (ResultSet result = query.executeQuery()) {
                return result.next() ? HexFormat.of().formatHex(result.getBytes(1)) : "";
            }
        }
    }

    private static String text(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(query)) {
            return result.next() ? result.getString(1) : "";
        }
    }
}
