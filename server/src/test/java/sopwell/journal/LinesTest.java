package sopwell.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import sopwell.Check;
import sopwell.SourceTree;

/** Lines hold what was told, in one form or the other, and nothing that libraries add. */
class LinesTest {
    private static final Instant AT = Instant.parse("2026-11-28T14:05:06.007Z");

    private static LogRecord line(Told told) {
        List<LogRecord> lines = new ArrayList<>();
        Logger logger = Logger.getAnonymousLogger();
        logger.setUseParentHandlers(false);
        logger.addHandler(
                new Handler() {
                    @Override
                    public void publish(LogRecord record) {
                        lines.add(record);
                    }

                    @Override
                    public void flush() {}

                    @Override
                    public void close() {}
                });
        told.to(logger);
        lines.get(0).setInstant(AT);
        return lines.get(0);
    }

    private static JsonNode json(LogRecord line) throws IOException {
        String text = new Lines(Lines.Form.json).format(line);
        assertEquals(text.length() - 1, text.indexOf('\n'), "one object, one line");
        return new JsonMapper().readTree(text);
    }

    @Test
    void aHappeningIsOneObject() throws IOException {
        LogRecord line =
                line(
                        Told.of(Happening.SIGN_IN_FAILED)
                                .id("person", "s3")
                                .id("device", "")
                                .with("left", 2));
        assertEquals(
                new JsonMapper()
                        .readTree(
                                "{\"time\": \"2026-11-28T14:05:06.007Z\", \"level\": \"warning\","
                                        + " \"event\": \"sign-in-failed\","
                                        + " \"fields\": {\"person\": \"s3\", \"left\": 2}}")
                        .toString(),
                json(line).toString());
        assertEquals(
                "2026-11-28T14:05:06.007Z warning sign-in-failed person=s3 left=2:"
                        + " a secret was not the right one\n",
                new Lines(Lines.Form.plain).format(line));
    }

    @Test
    void aFaultIsItsKindAndPlaceWithoutItsMessage() throws IOException {
        Exception fault = new IllegalStateException("Zuleika", new IOException("Zuleika 4711"));
        LogRecord line = line(Told.of(Happening.REQUEST_BROKE).fault(fault));
        JsonNode faults = json(line).path("faults");
        assertEquals("java.lang.IllegalStateException", faults.at("/0/type").textValue());
        assertEquals("java.io.IOException", faults.at("/1/type").textValue());
        assertTrue(faults.at("/0/at/0").textValue().startsWith("sopwell.journal.LinesTest."));
        for (Lines.Form form : Lines.Form.values()) {
            assertFalse(new Lines(form).format(line).contains("Zuleika"), form.name());
        }
    }

    @Test
    void aLibraryIsKnownByItsCodeAlone() throws IOException {
        LogRecord line =
                new LogRecord(Level.SEVERE, "UT005071: Undertow request failed GET /Zuleika");
        line.setLoggerName("io.undertow.request");
        line.setInstant(AT);
        JsonNode json = json(line);
        assertEquals("library", json.path("event").textValue());
        assertEquals("error", json.path("level").textValue());
        assertEquals(
                "{\"logger\":\"io.undertow.request\",\"code\":\"UT005071\"}",
                json.path("fields").toString());
        assertFalse(new Lines(Lines.Form.plain).format(line).contains("Zuleika"));
        assertTrue(Lines.isWorth(line));
        line.setLevel(Level.INFO);
        assertFalse(Lines.isWorth(line));
    }

    @Test
    void addressesAreShortened() throws IOException {
        Told told =
                Told.of(Happening.CONNECTIONS_CLOSED)
                        .network("four", InetAddress.getByName("192.0.2.77"))
                        .network("six", InetAddress.getByName("2001:db8:1:2:3:4:5:6"));
        assertEquals("192.0.2.0/24", told.fields().get("four"));
        assertEquals("2001:db8:1:0:0:0:0:0/48", told.fields().get("six"));
    }

    @Test
    void whatHasNotAnIdsFormIsNoId() {
        Told told = Told.of(Happening.ACCESS_CHANGED);
        for (String name : List.of("Zuleika", "a b", "s3\n", "x".repeat(41))) {
            assertThrows(Check.Broken.class, () -> told.id("person", name), name);
        }
    }

    @Test
    void everyHappeningHasANameOfItsOwnAndASentence() {
        assertEquals(
                Happening.values().length,
                List.of(Happening.values()).stream().map(Happening::written).distinct().count());
        for (Happening one : Happening.values()) {
            assertTrue(one.written().matches("[a-z]+(-[a-z]+)*"), one.written());
            assertTrue(one.sentence().length() > 10, one.written());
        }
    }

    @Test
    void theGuideListsEveryHappening() {
        String guide = SourceTree.read("docs", name -> name.equals("operating.md")).get(0).text();
        Matcher row =
                Pattern.compile("(?m)^\\| `([a-z-]+)` \\| (info|warning|error) \\| (.*) \\|$")
                        .matcher(guide);
        List<String> said = new ArrayList<>();
        while (row.find()) {
            said.add(row.group(1) + " " + row.group(3));
        }
        List<String> told =
                List.of(Happening.values()).stream()
                        .map(one -> one.written() + " " + one.sentence())
                        .toList();
        assertEquals(told, said);
    }
}
