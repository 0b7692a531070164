package sopwell.damage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Everything that can be read out of a log's file, without Sopwell's code: what a damage changed,
 * it changed here. Stateless.
 */
final class Contents {
    private static final String RARE =
            "('day-opened', 'day-closed', 'menu-adopted', 'recipes-adopted', 'calendar-set',"
                    + " 'out-marked', 'out-lifted', 'past-day-kept', 'done-by', 'names-erased')";

    /** Every table, and each index on its own. */
    private static final List<String> QUERIES =
            List.of(
                    "SELECT * FROM events NOT INDEXED ORDER BY stand, seq",
                    "SELECT stand, key, seq FROM events INDEXED BY events_by_key"
                            + " WHERE key IS NOT NULL ORDER BY stand, key",
                    "SELECT stand, kind, seq FROM events INDEXED BY events_rare WHERE kind IN "
                            + RARE
                            + " ORDER BY stand, kind, seq",
                    "SELECT * FROM erased NOT INDEXED ORDER BY stand, seq, by_seq",
                    "SELECT stand, by_seq, seq, proof FROM erased INDEXED BY erased_by"
                            + " ORDER BY stand, by_seq, seq",
                    "SELECT name, value FROM meta ORDER BY name",
                    "SELECT type, name, tbl_name, sql FROM sqlite_schema");

    private Contents() {}

    /** Whether SQLite's own check finds nothing wrong, in what is never read either. */
    static boolean isSound(Path copy) {
        try (Connection connection =
                        DriverManager.getConnection("jdbc:sqlite:" + copy.resolve("log.sqlite"));
                Statement statement = connection.createStatement();
                ResultSet said = statement.executeQuery("PRAGMA integrity_check")) {
            return said.next() && said.getString(1).equals("ok");
        } catch (SQLException unreadable) {
            return false;
        }
    }

    /** Works on a copy: to read is to recover. */
    static List<String> of(Path copy) throws SQLException {
        List<String> all = new ArrayList<>();
        try (Connection connection =
                        DriverManager.getConnection("jdbc:sqlite:" + copy.resolve("log.sqlite"));
                Statement statement = connection.createStatement()) {
            for (String query : QUERIES) {
                try (ResultSet rows = statement.executeQuery(query)) {
                    int columns = rows.getMetaData().getColumnCount();
                    while (rows.next()) {
                        StringBuilder row = new StringBuilder();
                        for (int at = 1; at <= columns; at++) {
                            byte[] bytes = rows.getBytes(at);
                            row.append(Arrays.toString(bytes)).append('|');
                        }
                        all.add(row.toString());
                    }
                }
            }
        }
        return all;
    }
}
