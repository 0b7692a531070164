package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page about limits says what the program does. */
class LimitsGuideTest {
    private static final Pattern ROW = Pattern.compile("\\| `([A-Z_]+)` \\| (\\d+) \\|");

    @Test
    void eachFigureIsThePrograms() throws IOException, ReflectiveOperationException {
        Matcher row = ROW.matcher(Files.readString(SourceTree.root().resolve("docs/limits.md")));
        int rows = 0;
        while (row.find()) {
            long figure = ((Number) Limits.class.getField(row.group(1)).get(null)).longValue();
            assertEquals(figure, Long.parseLong(row.group(2)), row.group(1));
            rows++;
        }
        assertTrue(rows >= 25, "rows: " + rows);
    }
}
