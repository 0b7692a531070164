package sopwell.storage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.sqlite.SQLiteOpenMode;

/**
 * Opens the log's database file so that what is committed is on the disk. Stateless.
 *
 * <p>Every setting is read back after it was made: several of them are silently ignored when SQLite
 * can't have them, and half of them hold for one connection only. The file itself is never opened
 * by other means: closing any other handle on it would drop SQLite's locks.
 */
final class SqliteFile {
    /** "Sopw" in ASCII, so that no other program's file is mistaken for a log. */
    static final int APPLICATION_ID = 0x536F7077;

    /** The newest schema that this Sopwell knows. */
    static final int SCHEMA_VERSION = 6;

    /** Every commit is on the disk before it is said to be done. */
    static final int FULL = 2;

    /** What makes each version of the one before; the first makes a log of an empty file. */
    private static final List<String> SCRIPTS =
            List.of(
                    "/schema/0001-log.sql",
                    "/schema/0002-recipes.sql",
                    "/schema/0003-calendar.sql",
                    "/schema/0004-history.sql",
                    "/schema/0005-done-by.sql",
                    "/schema/0006-names.sql");

    /** The first version in which names can be taken out. */
    static final int NAMES_VERSION = 6;

    /** How long one connection waits for another. */
    static final int BUSY_MILLIS = 5_000;

    private static final Logger LOGGER = Logger.getLogger(SqliteFile.class.getName());

    private SqliteFile() {}

    /**
     * How a file is opened.
     *
     * @param pagesMax the most pages the file may grow to, or 0 for as many as the disk holds
     * @param synchronous SQLite's number for how far a commit waits for the disk; a stand runs with
     *     2, FULL, and nothing outside the tests says otherwise
     */
    record Options(int pagesMax, int synchronous) {
        static final Options USUAL = new Options(0, FULL);
    }

    /** Creates the file if it is not there, and refuses one that is not a log of ours. */
    static void create(Path file) throws SQLException, IOException {
        DiskRules.refuseUnsafe(file.toAbsolutePath().getParent());
        try {
            Files.createFile(file, ownerOnly(file, "rw-------"));
        } catch (FileAlreadyExistsException e) {
            restrict(file);
        }
        if (Files.size(file) > 0) {
            probe(file);
        }
    }

    /** Makes a log of a new file, and of an older version's the newest. */
    static void prepare(Path file) throws SQLException, IOException {
        try (Connection connection = writer(file, Options.USUAL)) {
            int version = number(connection, "user_version");
            if (version < SCHEMA_VERSION) {
                raise(connection, version);
            }
            verify(file, connection);
        }
    }

    /** Loads the library; whoever opens a file meets what went wrong. */
    static void load() {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            text(connection, "user_version");
        } catch (SQLException fault) {
            LOGGER.log(Level.FINE, "SQLite could not be loaded ahead", fault);
        }
    }

    /** Looks without writing, so that a newer Sopwell's file stays as it is to the last byte. */
    private static void probe(Path file) throws SQLException {
        try (Connection probe = open(file, SQLiteOpenMode.READONLY)) {
            verify(file, probe);
        } catch (SQLiteException e) {
            if (e.getResultCode() != SQLiteErrorCode.SQLITE_READONLY_ROLLBACK) {
                throw e;
            }
            // Its creation was cut short by a loss of power: what was begun is taken back first.
            try (Connection taking = open(file, SQLiteOpenMode.READWRITE)) {
                verify(file, taking);
            }
        }
    }

    /** The connection that writes; there is never more than one. */
    static Connection writer(Path file, Options options) throws SQLException {
        Connection connection = open(file, SQLiteOpenMode.READWRITE);
        try {
            Map<String, String> settings = shared();
            settings.put("journal_mode", "wal");
            settings.put("synchronous", Integer.toString(options.synchronous()));
            // What is taken out of the file is overwritten, not only forgotten.
            settings.put("secure_delete", "1");
            settings.put("wal_autocheckpoint", "1000");
            settings.put("journal_size_limit", Long.toString(64L * 1_024 * 1_024));
            if (options.pagesMax() > 0) {
                settings.put("max_page_count", Integer.toString(options.pagesMax()));
            }
            apply(connection, settings);
            return connection;
        } catch (SQLException | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    /** A connection that can only read. */
    static Connection reader(Path file) throws SQLException {
        Connection connection = open(file, SQLiteOpenMode.READONLY);
        try {
            Map<String, String> settings = shared();
            settings.put("query_only", "1");
            apply(connection, settings);
            return connection;
        } catch (SQLException | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    /** Permissions for the owner alone, where the disk knows such things. */
    static FileAttribute<?>[] ownerOnly(Path file, String permissions) {
        if (!file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return new FileAttribute<?>[0];
        }
        return new FileAttribute<?>[] {
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        };
    }

    private static void restrict(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }

    private static Map<String, String> shared() {
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("busy_timeout", Integer.toString(BUSY_MILLIS));
        settings.put("foreign_keys", "1");
        settings.put("trusted_schema", "0");
        settings.put("cell_size_check", "1");
        settings.put("mmap_size", "0");
        return settings;
    }

    private static Connection open(Path file, SQLiteOpenMode mode) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        config.setReadOnly(mode == SQLiteOpenMode.READONLY);
        Properties properties = config.toProperties();
        return DriverManager.getConnection("jdbc:sqlite:" + file.toAbsolutePath(), properties);
    }

    private static void apply(Connection connection, Map<String, String> settings)
            throws SQLException {
        for (Map.Entry<String, String> setting : settings.entrySet()) {
            String name = setting.getKey();
            try (Statement statement = connection.createStatement()) {
                statement.execute("PRAGMA " + name + " = " + setting.getValue());
            }
            String found = text(connection, name);
            if (!found.equalsIgnoreCase(setting.getValue())) {
                throw new FolderFault(
                        "The disk or this SQLite does not take "
                                + name
                                + " = "
                                + setting.getValue()
                                + " (it stays "
                                + found
                                + "); the log must be on a local disk.");
            }
        }
    }

    /** The tables of the newest version, in an empty database. */
    static void make(Connection connection) throws SQLException {
        try {
            raise(connection, 0);
        } catch (IOException unreadable) {
            throw new SQLException(unreadable);
        }
    }

    /** Brings a file from a version, 0 for an empty one, to the newest. */
    private static void raise(Connection connection, int from) throws SQLException, IOException {
        try (Statement statement = connection.createStatement()) {
            // In one transaction: a file is a whole log of one version or another.
            statement.executeUpdate("BEGIN EXCLUSIVE");
            for (String script : SCRIPTS.subList(from, SCHEMA_VERSION)) {
                run(statement, script);
            }
            statement.executeUpdate("PRAGMA application_id = " + APPLICATION_ID);
            statement.executeUpdate("PRAGMA user_version = " + SCHEMA_VERSION);
            statement.executeUpdate("COMMIT");
        }
    }

    private static void run(Statement statement, String name) throws SQLException, IOException {
        String script;
        try (InputStream in = SqliteFile.class.getResourceAsStream(name)) {
            script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (String command : script.replaceAll("(?m)^--.*$", "").split(";", -1)) {
            if (!command.isBlank()) {
                statement.executeUpdate(command);
            }
        }
    }

    static void verify(Path file, Connection connection) throws SQLException {
        int application = number(connection, "application_id");
        int version = number(connection, "user_version");
        if (application == 0 && version == 0 && number(connection, "schema_version") == 0) {
            return; // An empty file: its creation was cut short.
        }
        if (application != APPLICATION_ID) {
            throw new FolderFault(file + " is a database of another program, not a log.");
        }
        if (version > SCHEMA_VERSION) {
            throw new FolderFault(
                    file
                            + " was written by a newer Sopwell (schema "
                            + version
                            + "; this one knows "
                            + SCHEMA_VERSION
                            + "): start that one.");
        }
    }

    /** Writes what is there already once more, and waits until the disk has it. */
    static void rewrite(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("UPDATE meta SET value = value WHERE name = 'epoch'");
        }
    }

    static int number(Connection connection, String pragma) throws SQLException {
        return Integer.parseInt(text(connection, pragma));
    }

    static String text(Connection connection, String pragma) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA " + pragma)) {
            return result.next() ? result.getString(1) : "";
        }
    }
}
