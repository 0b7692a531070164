package sopwell.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.records.TableWriter.Plain;

/** Tables come back as they were written, and nothing in them is a formula. */
class CsvTest {
    /** Texts that a program, a spreadsheet or a reader of CSV might take for something else. */
    static final List<String> HOSTILE =
            List.of(
                    "=cmd|' /C calc'!A0",
                    "=1+1",
                    "+1-800",
                    "-2+3",
                    "@SUM(1)",
                    "\tstarts with a tab",
                    "\rstarts with a carriage return",
                    "'starts with an apostrophe",
                    "''two",
                    "says \"hot, please\"",
                    "one\ntwo",
                    "one\r\ntwo",
                    "Jalapeño, más carne",
                    "007",
                    "1e5",
                    "2026-01-14",
                    "=\"0\"",
                    "",
                    " blank ",
                    "\"",
                    ",",
                    "'=1+1");

    /** RFC 4180, 2: CRLF after each record, a header, quotes doubled within quotes. */
    @Test
    void isWrittenByTheStandard() throws IOException {
        String written =
                csv(
                        List.of("date", "half hour", "name", "pieces"),
                        List.of(
                                List.of(
                                        new Plain("2026-01-14"),
                                        new Plain("11:30"),
                                        "a \"b\", c",
                                        7),
                                List.of(new Plain("2026-01-14"), TableWriter.NONE, "=1", -3L)));
        String expected =
                """
                date,half hour,name,pieces
                2026-01-14,11:30,"a ""b"", c",7
                2026-01-14,,"'=1",-3
                """;
        assertEquals(expected.replace("\n", "\r\n"), written);
    }

    @Test
    void hostileTextsComeBackAndAreNoFormulas() throws IOException {
        assertEquals(HOSTILE, readBack(HOSTILE));
        for (String text : HOSTILE) {
            String guarded = Csv.guarded(text);
            assertFalse(guarded.matches("(?s)[=+\\-@\t\r].*"), guarded);
            assertEquals(text, Csv.unguarded(guarded));
        }
    }

    @Test
    void anyTextsComeBack() throws IOException {
        SplittableRandom random = new SplittableRandom(11);
        String signs = "=+-@\t\r\n'\",; ab0é𝄞\u00a0";
        List<String> texts = new ArrayList<>();
        for (int n = 0; n < 2_000; n++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(6); length > 0; length--) {
                int at = random.nextInt(signs.length());
                text.append(signs.charAt(at));
            }
            texts.add(whole(text.toString()));
        }
        assertEquals(texts, readBack(texts));
    }

    @Test
    void asJsonNumbersAreNumbersAndTheUnknownIsNull() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonRows rows = new JsonRows(bytes, List.of("date", "half hour", "name", "amount"))) {
            rows.row(List.of(new Plain("2026-01-14"), TableWriter.NONE, "=1", new Plain("-0.50")));
            rows.row(List.of(new Plain("2026-01-14"), new Plain("11:30"), "", 12));
        }
        assertEquals(
                "[{\"date\":\"2026-01-14\",\"halfHour\":null,\"name\":\"=1\",\"amount\":-0.50},"
                        + "{\"date\":\"2026-01-14\",\"halfHour\":\"11:30\",\"name\":\"\","
                        + "\"amount\":12}]",
                bytes.toString(StandardCharsets.UTF_8));
    }

    /** Half a pair of surrogates is no text. */
    private static String whole(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }

    private static List<String> readBack(List<String> texts) throws IOException {
        List<List<Object>> rows = new ArrayList<>();
        texts.forEach(text -> rows.add(List.of(text, 1)));
        return read(csv(List.of("text", "one"), rows)).stream()
                .map(row -> Csv.unguarded(row.get(0)))
                .toList();
    }

    static String csv(List<String> columns, List<List<Object>> rows) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Csv csv = new Csv(bytes, columns)) {
            for (List<Object> row : rows) {
                csv.row(row);
            }
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    /** The rows behind the first. */
    static List<List<String>> read(String csv) throws IOException {
        CsvMapper mapper = CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
        List<List<String>> rows = new ArrayList<>();
        try (MappingIterator<String[]> found = mapper.readerFor(String[].class).readValues(csv)) {
            while (found.hasNext()) {
                rows.add(List.of(found.next()));
            }
        }
        return rows.subList(1, rows.size());
    }
}
