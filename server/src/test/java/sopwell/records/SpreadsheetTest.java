package sopwell.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.records.TableWriter.Plain;

/**
 * A real spreadsheet program opens what is written, keeps it as its own file, and writes the same
 * texts and numbers out of it again. Needs LibreOffice Calc; without it the test is skipped, and
 * with SOPWELL_REQUIRE_OFFICE=1 that is a failure.
 */
class SpreadsheetTest {
    /** Comma, quote, UTF-8, from the first line, English, quoted fields are texts. */
    private static final String READ = "CSV:44,34,76,1,,1033,true,false";

    /** Comma, quote, UTF-8, every text quoted, as it is rather than as it is shown. */
    private static final String WRITE =
            "csv:Text - txt - csv (StarCalc):44,34,76,1,,1033,true,false";

    private static final int SECONDS_MAX = 120;

    @TempDir Path folder;

    @Test
    void aSpreadsheetReadsAndWritesTheSame() throws Exception {
        boolean there = isThere();
        assertTrue(
                there || !"1".equals(System.getenv("SOPWELL_REQUIRE_OFFICE")),
                "LibreOffice Calc is missing: apt-get install --no-install-recommends"
                        + " libreoffice-calc");
        assumeTrue(there, "no LibreOffice here");
        List<List<Object>> rows = new ArrayList<>();
        for (String text : CsvTest.HOSTILE) {
            rows.add(List.of(new Plain("12"), text, new Plain("-0.50")));
        }
        String written = CsvTest.csv(List.of("pieces", "name", "amount"), rows);
        Files.writeString(folder.resolve("table.csv"), written);
        convert("table.csv", List.of("--infilter=" + READ, "--convert-to", "ods"));
        convert("table.ods", List.of("--convert-to", WRITE, "--outdir", "back"));
        String back = Files.readString(folder.resolve("back").resolve("table.csv"));
        List<List<String>> expected = new ArrayList<>();
        for (String text : CsvTest.HOSTILE) {
            expected.add(List.of("12", asInACell(text), "-0.5"));
        }
        List<List<String>> found = new ArrayList<>();
        for (List<String> row : CsvTest.read(back)) {
            found.add(List.of(row.get(0), asInACell(Csv.unguarded(row.get(1))), row.get(2)));
        }
        assertEquals(expected, found);
    }

    /** Within a cell, Calc has one kind of line end, and no tabs. */
    private static String asInACell(String text) {
        return text.replace("\r\n", "\n").replace("\r", "\n").replace("\t", "");
    }

    private static boolean isThere() {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                .anyMatch(place -> Files.isExecutable(Path.of(place, "soffice")));
    }

    private void convert(String file, List<String> how) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add("soffice");
        command.add("-env:UserInstallation=" + folder.resolve("profile").toUri());
        command.addAll(List.of("--headless", "--norestore"));
        command.addAll(how);
        command.add(file);
        Path said = folder.resolve("said.txt");
        Process process =
                new ProcessBuilder(command)
                        .directory(folder.toFile())
                        .redirectErrorStream(true)
                        .redirectOutput(said.toFile())
                        .start();
        boolean over = process.waitFor(SECONDS_MAX, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertTrue(over, "LibreOffice took too long");
        assertEquals(0, process.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
    }
}
