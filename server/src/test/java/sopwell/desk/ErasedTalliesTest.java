package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.NamedDays.CASHIER;
import static sopwell.desk.NamedDays.FIRST;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.log.LogFault;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.storage.DataFolder;
import sopwell.storage.NamesOnDisk;
import sopwell.storage.SqliteLog;
import sopwell.storage.TallyFile;

/** What is counted of a day and kept beside the log never holds a name longer than the log does. */
class ErasedTalliesTest {
    private static final LocalDate SECOND = FIRST.plusDays(1);

    @TempDir Path folder;
    private DataFolder data;
    private SqliteLog log;
    private TallyFile tallies;
    private DayBook book;
    private NamedDays days;

    @BeforeEach
    void aDayWithATillThatWasShort() throws IOException {
        open();
        days.countedDay(FIRST);
        days.day(SECOND, false);
        while (book.keepNext()) {
            assertTrue(log.lastSeq() > 0);
        }
        assertTrue(NamesOnDisk.with(folder, CASHIER).contains("tallies.sqlite"));
    }

    private void open() {
        data = DataFolder.open(folder);
        log = data.openLog(Script.SETTINGS.stand());
        tallies = data.openTallies(Script.SETTINGS.stand());
        book = new DayBook(log, Script.SETTINGS, tallies.shelves());
        days = new NamedDays(log);
    }

    @AfterEach
    void close() {
        days.close();
        tallies.close();
        log.close();
        data.close();
    }

    /** The stand is killed when the names are out of the log: nobody counts the day anew. */
    @Test
    void aKillBetweenTheErasingAndTheCountingLeavesNoName() throws IOException {
        NameErasing killed = new NameErasing(log, days.desk::submit, book::doubt, date -> {});
        assertEquals(4, eraseCashier(killed, FIRST));
        assertFalse(NamesOnDisk.with(folder, CASHIER).contains("tallies.sqlite"));
        assertEquals(3, eraseCashier(killed, SECOND));
        assertEquals(List.of(), NamesOnDisk.with(folder, CASHIER));
        close();
        open();
        assertEquals("#1", shortTill());
        assertEquals(List.of(), book.wrong());
    }

    @Test
    void whatIsAskedForWhileNamesGoIsNotKept() throws IOException {
        NameErasing.Submitting asking =
                (key, print, command) -> {
                    assertEquals(CASHIER, shortTill(), "it is still in the log");
                    return days.desk.submit(key, print, command);
                };
        NameErasing killed = new NameErasing(log, asking, book::doubt, date -> {});
        assertEquals(4, eraseCashier(killed, FIRST));
        assertFalse(NamesOnDisk.with(folder, CASHIER).contains("tallies.sqlite"));
        assertEquals("#1", shortTill(), "nor is it at hand");
    }

    /** Somebody read the day before its names went, and has counted it only afterwards. */
    @Test
    void whatWasReadBeforeAndCountedAfterIsNotKept() throws IOException {
        TroubledLog slow = new TroubledLog(log);
        DayBook other = new DayBook(slow, Script.SETTINGS, tallies.shelves());
        NameErasing whole = new NameErasing(log, days.desk::submit, other::doubt, other::recount);
        tallies.shelves().exceptions().clear();
        slow.whenNextRead(() -> assertEquals(4, eraseCashier(whole, FIRST)));
        assertEquals(CASHIER, shortTill(other), "it was read before");
        assertEquals("#1", shortTill(other));
        assertFalse(NamesOnDisk.with(folder, CASHIER).contains("tallies.sqlite"));
        assertEquals(List.of(), other.wrong());
    }

    @Test
    void whatTheDeskRefusedIsCountedAnewAsItWas() {
        NameErasing refused =
                new NameErasing(
                        log,
                        (key, print, command) ->
                                CompletableFuture.completedFuture(
                                        Answer.refused(Refusal.of(Reason.READING_ONLY))),
                        book::doubt,
                        book::recount);
        assertThrows(LogFault.class, () -> eraseCashier(refused, FIRST));
        assertEquals(1, tallies.shelves().exceptions().of(List.of(FIRST)).size());
        assertEquals(CASHIER, shortTill());
        assertEquals(List.of(), book.wrong());
    }

    private static int eraseCashier(NameErasing erasing, LocalDate date) {
        return erasing.staff(date, name -> !name.equals(CASHIER), Optional.empty());
    }

    private String shortTill() {
        return shortTill(book);
    }

    private static String shortTill(DayBook book) {
        return book.day(FIRST).orElseThrow().exceptions().differences().get(0).cashier();
    }
}
