package sopwell.records;

import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * Comma-separated values, RFC 4180, in UTF-8: the first line names the columns, lines end with CR
 * LF, texts stand in quotes and numbers, dates and times do not.
 *
 * <p>A text that begins like a formula gets an apostrophe before it, so that no spreadsheet
 * computes it; so does one that begins with an apostrophe, so that taking one away is always right.
 * Not thread-safe.
 */
public final class Csv implements TableWriter {
    /** The media type of what is written. */
    public static final String TYPE = "text/csv; charset=utf-8; header=present";

    private static final String MARK = "'";

    /** What makes a spreadsheet take a text for a formula, and the mark itself. */
    private static final String GUARDED = "=+-@\t\r'";

    private static final CsvFactory FACTORY =
            CsvFactory.builder()
                    .enable(CsvGenerator.Feature.ALWAYS_QUOTE_STRINGS)
                    .enable(CsvGenerator.Feature.ALWAYS_QUOTE_EMPTY_STRINGS)
                    .build();

    private final CsvGenerator out;

    /** Begins a table with its first line. */
    public Csv(OutputStream to, List<String> columns) throws IOException {
        out = FACTORY.createGenerator(to);
        CsvSchema.Builder schema = CsvSchema.builder().setLineSeparator("\r\n");
        columns.forEach(schema::addColumn);
        out.setSchema(schema.build());
        out.writeStartArray();
        for (String column : columns) {
            out.writeRawValue(column);
        }
        out.writeEndArray();
    }

    @Override
    public void row(List<Object> cells) throws IOException {
        out.writeStartArray();
        for (Object cell : cells) {
            if (cell instanceof Plain plain) {
                out.writeRawValue(plain.word());
            } else if (cell instanceof Number number) {
                out.writeNumber(number.longValue());
            } else {
                out.writeString(guarded(cell.toString()));
            }
        }
        out.writeEndArray();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }

    /** The text as it is written. */
    static String guarded(String text) {
        return !text.isEmpty() && GUARDED.indexOf(text.charAt(0)) >= 0 ? MARK + text : text;
    }

    /** The text that was written so. */
    static String unguarded(String written) {
        return written.startsWith(MARK) ? written.substring(MARK.length()) : written;
    }
}
