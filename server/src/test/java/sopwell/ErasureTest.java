package sopwell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.NamedDays.CASHIER;
import static sopwell.desk.NamedDays.FIRST;
import static sopwell.desk.NamedDays.FRIEND;
import static sopwell.desk.NamedDays.GUEST;
import static sopwell.desk.NamedDays.OTHER;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import sopwell.access.Actor;
import sopwell.access.Role;
import sopwell.access.Roster;
import sopwell.desk.DayBook;
import sopwell.desk.NamedDays;
import sopwell.desk.Script;
import sopwell.storage.DataFolder;
import sopwell.storage.FolderFault;
import sopwell.storage.NamesOnDisk;
import sopwell.storage.SqliteLog;
import sopwell.storage.TallyFile;

/** {@code sopwell erase}: whose names go, whose stay, and what it says when it can't. */
class ErasureTest {
    private static final InstantSource CLOCK = () -> Instant.parse("2026-11-28T14:05:06Z");
    private static final LocalDate LAST = FIRST.plusDays(2);

    @TempDir Path work;
    private Path folder;

    @BeforeEach
    void aStandWithNamesInAllItsFiles() throws Exception {
        folder = work.resolve("stand");
        try (DataFolder data = DataFolder.open(folder)) {
            StandFolder.fillIfEmpty(data, Config.StartWith.menu);
            Roster roster = StandAccess.open(data, CLOCK, Runnable::run, attempt -> {}).roster();
            for (String name : List.of(CASHIER, OTHER)) {
                roster.addPerson(Actor.ANYBODY, name, Role.COUNTER);
            }
            assertTrue(roster.endPerson(Actor.ANYBODY, "s1").isDone());
            try (SqliteLog log = data.openLog(Script.SETTINGS.stand());
                    TallyFile tallies = data.openTallies(Script.SETTINGS.stand());
                    NamedDays days = new NamedDays(log)) {
                days.countedDay(FIRST);
                days.day(FIRST.plusDays(1), true);
                days.day(LAST, false);
                assertTrue(new DayBook(log, Script.SETTINGS, tallies.shelves()).keepNext());
                new DayBook(log, Script.SETTINGS, tallies.shelves())
                        .rebuild((done, all) -> assertEquals(2, all));
            }
        }
        List<String> files = NamesOnDisk.with(folder, CASHIER);
        for (String file : List.of("access.json", "log.sqlite", "tallies.sqlite")) {
            assertTrue(files.contains(file), file + " in " + files);
        }
    }

    private String erase(String option, String value) throws StartRefused {
        return erase("--data", folder.toString(), option, value);
    }

    /** What it says, of a command line as it is typed. */
    private static String erase(String... typed) throws StartRefused {
        Config.Erase asked = new Config.Erase();
        new CommandLine(asked).parseArgs(typed);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        new Erasure(asked, CLOCK, new PrintStream(said, true, StandardCharsets.UTF_8)).run();
        return said.toString(StandardCharsets.UTF_8).strip();
    }

    private String refused(String... typed) {
        return assertThrows(StartRefused.class, () -> erase(typed)).getMessage();
    }

    private static String said(int names) {
        return "erased: " + names + " names; what they were is gone from the log";
    }

    /** The log is as it was written but for the names, and so is what is counted of it. */
    private void standIsWhole() throws StartRefused {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        new Books(folder, out, CLOCK).check();
        assertTrue(
                said.toString(StandardCharsets.UTF_8).strip().endsWith("is what the log says"),
                said.toString(StandardCharsets.UTF_8));
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog(Script.SETTINGS.stand())) {
            data.checkOf(Script.SETTINGS.stand()).newest(log.lastSeq(), log.lastSeq());
        }
    }

    @Test
    void allThatIsOlderThanADateGoesAndTheDateItselfStays() throws Exception {
        assertEquals(said(0), erase("--before", FIRST.toString()));
        assertEquals(said(15), erase("--before", LAST.toString()));
        assertEquals(List.of("log.sqlite"), NamesOnDisk.with(folder, GUEST));
        standIsWhole();
        assertEquals(said(7), erase("--before", LAST.plusDays(1).toString()));
        assertEquals(said(0), erase("--before", "9999-12-31"));
        assertEquals(List.of(), NamesOnDisk.with(folder, GUEST));
        assertEquals(List.of("access.json"), NamesOnDisk.with(folder, CASHIER));
        assertTrue(NamesOnDisk.with(folder, OTHER).contains("log.sqlite"), "still works here");
        assertTrue(NamesOnDisk.with(folder, FRIEND).contains("log.sqlite"), "stands in a reason");
        standIsWhole();
    }

    @Test
    void somebodyWhoLeftIsInNoFileAfterwards() throws Exception {
        assertEquals(said(10), erase("--person", "s1"));
        assertEquals(List.of(), NamesOnDisk.with(folder, CASHIER));
        assertTrue(NamesOnDisk.with(folder, OTHER).contains("access.json"));
        standIsWhole();
        assertEquals(
                "Nobody with the id s1 has a name here.",
                refused("--data", folder.toString(), "--person", "s1"));
    }

    @Test
    void aNameGoesFromWordsTooAndTheSecondTimeThereIsNothingLeft() throws Exception {
        assertEquals(said(9), erase("--name", "  zenobia "));
        assertEquals(List.of(), NamesOnDisk.with(folder, FRIEND));
        assertEquals(said(0), erase("--name", FRIEND));
        standIsWhole();
    }

    @ParameterizedTest
    @CsvSource({"Zeno", "enobia", "Z.*a", "[A-Z]enobia", "%", "', ''); DROP TABLE events; --"})
    void whatIsNoWholeWordOfTheStandChangesNothing(String name) throws Exception {
        byte[] before = Files.readAllBytes(folder.resolve("access.json"));
        assertEquals(said(0), erase("--name", name));
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("access.json")));
        assertTrue(NamesOnDisk.with(folder, FRIEND).contains("log.sqlite"));
    }

    @Test
    void aStandThatRunsIsLeftAlone() throws Exception {
        try (TestStand stand = TestStand.start(folder)) {
            assertTrue(stand.address().startsWith("http"));
            FolderFault held = assertThrows(FolderFault.class, () -> erase("--name", FRIEND));
            assertTrue(held.getMessage().contains("Another Sopwell server runs on " + folder));
            assertTrue(NamesOnDisk.with(folder, FRIEND).contains("log.sqlite"));
        }
        assertEquals(said(9), erase("--name", FRIEND));
    }

    @Test
    void saysWhatIsWrongWithWhatWasAsked() throws IOException {
        String data = folder.toString();
        String one = "Say whose: one of --before, --person and --name.";
        assertEquals(one, refused("--data", data));
        assertEquals(one, refused("--data", data, "--name", "  "));
        assertEquals(one, refused("--data", data, "--name", FRIEND, "--person", "s1"));
        assertEquals(one, refused("--data", data, "--name", "A", "--before", "2026-01-01"));
        for (String id : List.of("s9", "", "S1", CASHIER, "d1")) {
            assertEquals(
                    "Nobody with the id " + id + " has a name here.",
                    refused("--data", data, "--person", id));
        }
        assertEquals(
                "s2 still works here. Take them off the roster first.",
                refused("--data", data, "--person", "s2"));
        Path nowhere = work.resolve("nowhere");
        String absent = refused("--data", nowhere.toString(), "--name", FRIEND);
        assertTrue(absent.contains("There is no folder " + nowhere), absent);
        assertFalse(Files.exists(nowhere), "asking makes no folder");
        Path empty = Files.createDirectory(work.resolve("empty"));
        String none = refused("--data", empty.toString(), "--name", FRIEND);
        assertTrue(none.contains("There is no stand in " + empty), none);
        assertTrue(NamesOnDisk.with(folder, FRIEND).contains("log.sqlite"), "all as it was");
    }

    @ParameterizedTest
    @CsvSource({"yesterday", "2026-13-01", "2026-02-30", "01.02.2026", "20260101", "''"})
    void whatIsNoDateIsSaidSo(String date) {
        CommandLine.ParameterException wrong =
                assertThrows(CommandLine.ParameterException.class, () -> erase("--before", date));
        assertTrue(wrong.getMessage().contains("--before"), wrong.getMessage());
    }
}
