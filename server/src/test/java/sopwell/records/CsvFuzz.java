package sopwell.records;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Any text as a cell: no spreadsheet takes it for a formula, and it comes back as it was. */
public final class CsvFuzz {
    private static final CsvMapper MAPPER =
            CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();

    private CsvFuzz() {}

    /** One cell between two others. */
    public static void fuzzerTestOneInput(byte[] data) {
        String text = new String(data, StandardCharsets.UTF_8);
        try {
            ByteArrayOutputStream to = new ByteArrayOutputStream();
            try (Csv csv = new Csv(to, List.of("a", "b", "c"))) {
                csv.row(List.of("before", text, "after"));
            }
            String written = to.toString(StandardCharsets.UTF_8).replaceFirst("^\ufeff", "");
            try (MappingIterator<String[]> rows =
                    MAPPER.readerFor(String[].class).readValues(written)) {
                rows.next();
                String[] row = rows.next();
                if (row.length != 3 || rows.hasNext()) {
                    throw new AssertionError("one cell became " + row.length);
                }
                if (!row[1].isEmpty() && "=+-@\t\r".indexOf(row[1].charAt(0)) >= 0) {
                    throw new AssertionError("a formula");
                }
                if (!Csv.unguarded(row[1]).equals(text)) {
                    throw new AssertionError("came back as something else");
                }
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
