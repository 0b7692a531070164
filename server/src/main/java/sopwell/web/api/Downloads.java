package sopwell.web.api;

import io.undertow.server.HttpServerExchange;
import io.undertow.util.Headers;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sopwell.records.Csv;
import sopwell.records.TableWriter;
import sopwell.web.Reply;

/** Tables as files to be kept. Stateless. */
final class Downloads {
    private Downloads() {}

    /** Writes the rows of a table. */
    interface Rows {
        void write(TableWriter to) throws IOException;
    }

    /** Whether a request wants a CSV rather than JSON: by {@code as=csv}, or by what it accepts. */
    static boolean isCsvWanted(HttpServerExchange exchange) {
        Deque<String> as = exchange.getQueryParameters().get("as");
        if (as != null) {
            return as.getFirst().equals("csv");
        }
        String accept = exchange.getRequestHeaders().getFirst(Headers.ACCEPT);
        return accept != null && accept.strip().toLowerCase(Locale.ROOT).startsWith("text/csv");
    }

    /**
     * A table as CSV.
     *
     * @param name of the file, without its ending
     */
    static Reply csv(String name, List<String> columns, Rows rows) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Csv csv = new Csv(bytes, columns)) {
            rows.write(csv);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new Reply(
                200,
                Csv.TYPE,
                ByteBuffer.wrap(bytes.toByteArray()),
                Map.of("Content-Disposition", "attachment; filename=\"" + name + ".csv\""));
    }
}
