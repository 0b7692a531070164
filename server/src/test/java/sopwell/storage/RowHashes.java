package sopwell.storage;

import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;

/** The hashes of a log's rows, as they stand in the file. Stateless. */
public final class RowHashes {
    private RowHashes() {}

    /** In order, in hexadecimal, of the log in a folder that nobody writes to. */
    public static List<String> of(Path folder, String stand) {
        try (SqliteReader reader = new SqliteReader(folder.resolve("log.sqlite"), stand)) {
            return reader.rows(1, Long.MAX_VALUE, Integer.MAX_VALUE).stream()
                    .map(row -> HexFormat.of().formatHex(row.hash()))
                    .toList();
        }
    }
}
