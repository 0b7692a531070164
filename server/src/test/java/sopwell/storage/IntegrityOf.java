package sopwell.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

/** What SQLite itself says of a log's file. Stateless. */
public final class IntegrityOf {
    private IntegrityOf() {}

    /** "ok", or what is wrong. */
    public static String log(Path folder) {
        try (Connection connection = SqliteFile.reader(folder.resolve("log.sqlite"))) {
            return SqliteFile.text(connection, "integrity_check");
        } catch (SQLException e) {
            return e.getMessage();
        }
    }
}
