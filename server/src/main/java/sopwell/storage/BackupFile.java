package sopwell.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.sqlite.ProgressHandler;

/**
 * One file that holds all of a stand: its log, and in a table of its own the files that stood
 * beside it and what the backup says of itself. Stateless.
 *
 * <p>It is made by SQLite out of the running log ({@code VACUUM INTO}), never by copying files: a
 * copy of a log that is being written is often none.
 */
public final class BackupFile {
    private static final JsonMapper MAPPER = new JsonMapper();

    /** The row that says what the backup is; no file has that name. */
    private static final String MADE = "/made";

    /** Steps of SQLite between two looks whether to stop: some milliseconds' worth. */
    private static final int STEPS = 20_000;

    private static final String CREATE =
            "CREATE TABLE backup (name TEXT NOT NULL PRIMARY KEY, body BLOB NOT NULL,"
                    + " sha256 BLOB NOT NULL) STRICT, WITHOUT ROWID";

    private BackupFile() {}

    /**
     * What a backup says of itself. Immutable.
     *
     * @param stand the stand's id
     * @param atMs when it was made, milliseconds since 1970-01-01 UTC
     * @param lastSeq the last place of its log
     * @param epoch the log's epoch
     */
    public record Made(String stand, long atMs, long lastSeq, String epoch) {}

    /** Copies a log, which may be in use, into a file that must not be there yet. */
    static void copy(Path log, Path to, BooleanSupplier stop) throws SQLException {
        try (Connection connection = SqliteFile.reader(log);
                Statement statement = connection.createStatement()) {
            // The connection can't write to the log as it is; this would forbid the new file too.
            statement.execute("PRAGMA query_only = 0");
            ProgressHandler.setHandler(
                    connection,
                    STEPS,
                    new ProgressHandler() {
                        @Override
                        protected int progress() {
                            return stop.getAsBoolean() ? 1 : 0;
                        }
                    });
            try (PreparedStatement vacuum = connection.prepareStatement("VACUUM INTO ?")) {
                vacuum.setString(1, to.toAbsolutePath().toString());
                vacuum.executeUpdate();
            }
        }
    }

    /** Puts files beside the copied log, and what the backup is; says what that is. */
    static Made seal(Path file, String stand, long atMs, Map<String, byte[]> files)
            throws SQLException {
        try (Connection connection = open(file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("BEGIN EXCLUSIVE");
            statement.executeUpdate("DROP TABLE IF EXISTS backup");
            statement.executeUpdate(CREATE);
            Made made = new Made(stand, atMs, lastSeq(connection, stand), epoch(connection));
            for (Map.Entry<String, byte[]> one : files.entrySet()) {
                put(connection, one.getKey(), one.getValue());
            }
            put(connection, MADE, written(made));
            statement.executeUpdate("COMMIT");
            return made;
        }
    }

    /**
     * What a backup says of itself.
     *
     * @throws FolderFault when the file is no backup that this Sopwell can read
     */
    public static Made made(Path file) {
        Map<String, byte[]> rows = rows(file);
        byte[] body = rows.get(MADE);
        if (body == null) {
            throw new FolderFault(file + " is not a whole backup.");
        }
        try {
            JsonNode node = MAPPER.readTree(body);
            return new Made(
                    node.path("stand").textValue(),
                    node.path("atMs").longValue(),
                    node.path("lastSeq").longValue(),
                    node.path("epoch").textValue());
        } catch (IOException broken) {
            throw new FolderFault(file + " is damaged: it does not say what it is.", broken);
        }
    }

    /**
     * The files that stood beside the log, by their names.
     *
     * @throws FolderFault when the file is no backup that this Sopwell can read, or is damaged
     */
    public static Map<String, byte[]> files(Path file) {
        Map<String, byte[]> rows = rows(file);
        rows.remove(MADE);
        return rows;
    }

    /**
     * The log within a backup, to be read.
     *
     * @throws FolderFault when SQLite finds the file damaged, or this Sopwell can't read it
     */
    public static SqliteLog log(Path file, String stand) {
        try (Connection connection = SqliteFile.reader(file)) {
            SqliteFile.verify(file, connection);
            String sound = SqliteFile.text(connection, "integrity_check");
            if (!sound.equals("ok")) {
                throw new FolderFault(file + " is damaged: " + sound);
            }
        } catch (SQLException e) {
            throw unreadable(file, e);
        }
        return SqliteLog.reading(file, stand);
    }

    /** Makes a copied backup a stand's log again: under a new epoch, without the extra table. */
    static void unseal(Path file) throws SQLException, IOException {
        SqliteFile.prepare(file);
        try (Connection connection = SqliteFile.writer(file, SqliteFile.Options.USUAL);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("BEGIN EXCLUSIVE");
            statement.executeUpdate("DROP TABLE backup");
            statement.executeUpdate(
                    "UPDATE meta SET value = lower(hex(randomblob(8))) WHERE name = 'epoch'");
            statement.executeUpdate("COMMIT");
            SqliteFile.text(connection, "wal_checkpoint(TRUNCATE)");
        }
    }

    private static Map<String, byte[]> rows(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new FolderFault("There is no file " + file + ".");
        }
        Map<String, byte[]> rows = new LinkedHashMap<>();
        try (Connection connection = SqliteFile.reader(file);
                Statement statement = connection.createStatement()) {
            SqliteFile.verify(file, connection);
            if (!isBackup(statement)) {
                throw new FolderFault(file + " is not a backup.");
            }
            try (ResultSet all = statement.executeQuery("SELECT name, body, sha256 FROM backup")) {
                while (all.next()) {
                    if (!Arrays.equals(Sha256.of(all.getBytes(2)), all.getBytes(3))) {
                        throw new FolderFault(
                                file + " is damaged: " + all.getString(1) + " is not as it was.");
                    }
                    rows.put(all.getString(1), all.getBytes(2));
                }
            }
            return rows;
        } catch (SQLException e) {
            throw unreadable(file, e);
        }
    }

    private static boolean isBackup(Statement statement) throws SQLException {
        try (ResultSet table =
                statement.executeQuery("SELECT 1 FROM sqlite_schema WHERE name = 'backup'")) {
            return table.next();
        }
    }

    private static void put(Connection connection, String name, byte[] body) throws SQLException {
        try (PreparedStatement row =
                connection.prepareStatement("INSERT INTO backup VALUES (?, ?, ?)")) {
            row.setString(1, name);
            row.setBytes(2, body);
            row.setBytes(3, Sha256.of(body));
            row.executeUpdate();
        }
    }

    private static long lastSeq(Connection connection, String stand) throws SQLException {
        try (PreparedStatement last =
                connection.prepareStatement("SELECT max(seq) FROM events WHERE stand = ?")) {
            last.setString(1, stand);
            try (ResultSet row = last.executeQuery()) {
                return row.next() ? row.getLong(1) : 0;
            }
        }
    }

    private static String epoch(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row =
                        statement.executeQuery("SELECT value FROM meta WHERE name = 'epoch'")) {
            return row.next() ? row.getString(1) : "";
        }
    }

    /** Not as the log is opened: a file that is made to be carried about needs no second file. */
    private static Connection open(Path file) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + file.toAbsolutePath());
    }

    private static byte[] written(Made made) {
        return MAPPER.createObjectNode()
                .put("stand", made.stand())
                .put("atMs", made.atMs())
                .put("lastSeq", made.lastSeq())
                .put("epoch", made.epoch())
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    private static FolderFault unreadable(Path file, SQLException why) {
        return new FolderFault(file + " can't be read: " + why.getMessage(), why);
    }
}
