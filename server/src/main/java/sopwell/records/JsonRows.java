package sopwell.records;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A table as a JSON array of objects, a field for each column: {@code half hour} becomes {@code
 * halfHour}, and what is not known is null. Not thread-safe.
 */
public final class JsonRows implements TableWriter {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final Pattern WORD = Pattern.compile(" (.)");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private final JsonGenerator out;
    private final List<String> fields;
    private final boolean own;

    /** An array on a stream of its own. */
    public JsonRows(OutputStream to, List<String> columns) throws IOException {
        this(FACTORY.createGenerator(to), columns, true);
    }

    /** An array within a larger document, which goes on after it. */
    public JsonRows(JsonGenerator out, List<String> columns) throws IOException {
        this(out, columns, false);
    }

    private JsonRows(JsonGenerator out, List<String> columns, boolean own) throws IOException {
        this.out = out;
        this.fields = columns.stream().map(JsonRows::field).toList();
        this.own = own;
        out.writeStartArray();
    }

    @Override
    public void row(List<Object> cells) throws IOException {
        out.writeStartObject();
        for (int at = 0; at < fields.size(); at++) {
            out.writeFieldName(fields.get(at));
            write(cells.get(at));
        }
        out.writeEndObject();
    }

    private void write(Object cell) throws IOException {
        if (cell instanceof Number number) {
            out.writeNumber(number.longValue());
        } else if (!(cell instanceof Plain plain)) {
            out.writeString(cell.toString());
        } else if (plain.word().isEmpty()) {
            out.writeNull();
        } else if (NUMBER.matcher(plain.word()).matches()) {
            out.writeNumber(plain.word());
        } else {
            out.writeString(plain.word());
        }
    }

    @Override
    public void close() throws IOException {
        out.writeEndArray();
        if (own) {
            out.close();
        }
    }

    private static String field(String column) {
        return WORD.matcher(column).replaceAll(hit -> hit.group(1).toUpperCase(Locale.ROOT));
    }
}
