package sopwell.records;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamReadException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A CSV file with named columns, read whole: RFC 4180, or with semicolons or tabs; with or without
 * a byte order mark; blank rows are skipped and columns may come in any order. Immutable.
 */
final class HistoryTable {
    private static final Pattern TIME =
            Pattern.compile("(\\d{1,2})[:.h](\\d{2})(?:[:.]\\d{2}(?:\\.\\d+)?)?");
    private static final CsvFactory FACTORY =
            CsvFactory.builder()
                    .enable(CsvParser.Feature.TRIM_SPACES)
                    .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
                    .build();
    private static final int HOUR_MINUTES = 60;
    private static final int DAY_MINUTES = 1_440;

    private final Path file;
    private final Map<String, Integer> columns = new HashMap<>();
    private final List<Row> rows = new ArrayList<>();

    private HistoryTable(Path file) {
        this.file = file;
    }

    /**
     * A file.
     *
     * @param needed the columns that must be there
     */
    static HistoryTable read(Path file, List<String> needed) throws HistoryFault {
        HistoryTable table = new HistoryTable(file);
        try {
            table.parse(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException fault) {
            throw new HistoryFault(
                    file, 0, "", "can't be read (" + fault + "); it must be a file in UTF-8.");
        }
        for (String name : needed) {
            if (!table.columns.containsKey(name)) {
                throw new HistoryFault(
                        file,
                        1,
                        "",
                        "there is no column \""
                                + name
                                + "\"; the first line must name the columns "
                                + String.join(", ", needed)
                                + ".");
            }
        }
        return table;
    }

    List<Row> rows() {
        return rows;
    }

    /** One line of the table. */
    final class Row {
        private final int line;
        private final List<String> cells;

        private Row(int line, List<String> cells) {
            this.line = line;
            this.cells = cells;
        }

        /** What stands in a column, without blanks around it; empty when there is none. */
        String text(String column) {
            int at = columns.getOrDefault(column, cells.size());
            return at < cells.size() ? cells.get(at).strip() : "";
        }

        /** What stands in a column that must not be empty. */
        String needed(String column, String right) throws HistoryFault {
            String text = text(column);
            if (text.isEmpty()) {
                throw fault(column, "is empty; " + right);
            }
            return text;
        }

        LocalDate date(String column) throws HistoryFault {
            String text = needed(column, "it must be a date such as 2026-03-08.");
            try {
                return LocalDate.parse(text.length() > 10 ? text.substring(0, 10) : text);
            } catch (DateTimeException wrong) {
                throw fault(
                        column, "\"" + text + "\" is no date; it must be one such as 2026-03-08.");
            }
        }

        /** Minutes from midnight, or the other value when there is none. */
        int minutes(String column, int otherwise) throws HistoryFault {
            String text = text(column);
            if (text.isEmpty()) {
                return otherwise;
            }
            String time = text.matches("\\d{4}-.*[T ].*") ? text.substring(11) : text;
            Matcher matcher = TIME.matcher(time);
            if (matcher.matches()) {
                int hour = Integer.parseInt(matcher.group(1));
                int minute = Integer.parseInt(matcher.group(2));
                if (hour <= 36 && minute < HOUR_MINUTES) {
                    return Math.min(DAY_MINUTES * 3 / 2, hour * HOUR_MINUTES + minute);
                }
            }
            throw fault(column, "\"" + text + "\" is no time; it must be one such as 12:45.");
        }

        HistoryFault fault(String column, String sentence) {
            return new HistoryFault(file, line, column, sentence);
        }
    }

    private void parse(String text) throws IOException, HistoryFault {
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        int line = 1;
        try (CsvParser parser = FACTORY.createParser(body)) {
            parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(delimiter(body)));
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                line = parser.currentLocation().getLineNr();
                List<String> cells = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    if (cells.isEmpty()) {
                        line = parser.currentTokenLocation().getLineNr();
                    }
                    cells.add(parser.getText());
                }
                row(line, cells);
            }
        } catch (StreamReadException wrong) {
            throw new HistoryFault(
                    file,
                    line,
                    "",
                    "the quotes of this row don't match; a text that begins with a quote must end"
                            + " with one, and a quote within it stands twice.");
        }
    }

    private void row(int line, List<String> cells) {
        if (cells.stream().allMatch(String::isBlank)) {
            return;
        }
        if (columns.isEmpty()) {
            for (int i = 0; i < cells.size(); i++) {
                columns.putIfAbsent(cells.get(i).strip().toLowerCase(Locale.ROOT), i);
            }
        } else {
            rows.add(new Row(line, cells));
        }
    }

    /** The one of comma, semicolon and tab that the first line has most of. */
    private static char delimiter(String body) {
        String head = body.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char best = ',';
        for (char candidate : new char[] {';', '\t'}) {
            if (count(head, candidate) > count(head, best)) {
                best = candidate;
            }
        }
        return best;
    }

    private static long count(String text, char wanted) {
        return text.chars().filter(c -> c == wanted).count();
    }
}
