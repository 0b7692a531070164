package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.NamedDays.CASHIER;
import static sopwell.desk.NamedDays.FIRST;
import static sopwell.desk.NamedDays.FRIEND;
import static sopwell.desk.NamedDays.GUEST;
import static sopwell.desk.NamedDays.OTHER;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.audit.Who;
import sopwell.log.LogFault;
import sopwell.log.Recorded;
import sopwell.mix.TallyShelves;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.storage.DataFolder;
import sopwell.storage.NamesOnDisk;
import sopwell.storage.SqliteLog;
import sopwell.storage.TallyFile;
import sopwell.till.DayReport;

/** Names go from the log, its files and all that is made from it; everything else stays. */
class NameErasingTest {
    private static final Optional<Who> OWNER = Optional.of(new Who("s1", "", "", "owner"));
    private static final LocalDate SECOND = FIRST.plusDays(1);
    private static final LocalDate THIRD = FIRST.plusDays(2);

    @TempDir Path folder;
    private DataFolder data;
    private SqliteLog log;
    private TallyFile tallies;
    private DayBook book;
    private NamedDays days;
    private NameErasing erasing;
    private List<String> orders;

    @BeforeEach
    void threeDaysWithNames() {
        open();
        days.day(FIRST, true);
        days.day(SECOND, true);
        orders = days.day(THIRD, false);
        while (book.keepNext()) {
            assertTrue(log.lastSeq() > 0);
        }
    }

    private void open() {
        data = DataFolder.open(folder);
        log = data.openLog(Script.SETTINGS.stand());
        tallies = data.openTallies(Script.SETTINGS.stand());
        book = new DayBook(log, Script.SETTINGS, tallies.shelves());
        days = new NamedDays(log);
        erasing = new NameErasing(log, days.desk::submit, book::doubt, book::recount);
    }

    @AfterEach
    void close() {
        days.close();
        tallies.close();
        log.close();
        data.close();
    }

    @Test
    void guestsNamesGoAndNothingElse() throws IOException {
        String before = all();
        int names = 0;
        for (LocalDate date : List.of(FIRST, SECOND, THIRD)) {
            names += erasing.guests(date, Optional.empty());
        }
        assertEquals(12, names, "three guests a day, one of them changed the order");
        assertEquals(before.replaceAll("name=[A-Z][a-z]+( B.)?", "name="), all());
        assertEquals(List.of(), NamesOnDisk.with(folder, GUEST));
        assertFalse(NamesOnDisk.with(folder, FRIEND).isEmpty(), "words stay, and so are found");
        data.checkOf("millrace").newest(log.lastSeq(), log.lastSeq());
        assertTrue(book.wrong().isEmpty());
        assertEquals(0, erasing.guests(FIRST, Optional.empty()), "there is nothing left");
    }

    @Test
    void whatTheDeskRefusesIsNotSaidToBeDone() throws IOException {
        List<LocalDate> told = new ArrayList<>();
        NameErasing refused =
                new NameErasing(
                        log,
                        (key, print, command) ->
                                CompletableFuture.completedFuture(
                                        Answer.refused(Refusal.of(Reason.READING_ONLY))),
                        told::add,
                        told::add);
        assertThrows(LogFault.class, () -> refused.guests(FIRST, Optional.empty()));
        assertEquals(List.of(FIRST, FIRST), told, "what was thrown away is counted anew");
        assertFalse(NamesOnDisk.with(folder, GUEST).isEmpty());
        assertThrows(LogFault.class, () -> refused.note("s3", AuditTrail.BY_ITSELF));
    }

    @Test
    void cashiersOfADayStayApart() throws IOException {
        String before = all();
        int names = 0;
        for (LocalDate date : List.of(FIRST, SECOND, THIRD)) {
            names += erasing.staff(date, OTHER::equals, OWNER);
        }
        assertEquals(9, names, "a till opened, an order paid, money out");
        assertEquals(before.replace(CASHIER, "#1"), all());
        for (LocalDate date : List.of(FIRST, SECOND, THIRD)) {
            names += erasing.staff(date, name -> false, OWNER);
        }
        assertEquals(before.replace(CASHIER, "#1").replace(OTHER, "#2"), all());
        assertEquals(List.of(), NamesOnDisk.with(folder, CASHIER));
        assertEquals(List.of(), NamesOnDisk.with(folder, OTHER));
        data.checkOf("millrace").newest(log.lastSeq(), log.lastSeq());
    }

    @Test
    void onePersonGoesFromWordsToo() throws IOException {
        String before = all();
        for (LocalDate date : List.of(FIRST, SECOND, THIRD)) {
            assertEquals(3, erasing.person(date, "zenobia", OWNER));
        }
        assertEquals(
                before.replace("name=" + FRIEND, "name=").replace(FRIEND, NameErasing.GONE), all());
        assertEquals(List.of(), NamesOnDisk.with(folder, FRIEND));
        data.checkOf("millrace").newest(log.lastSeq(), log.lastSeq());
    }

    @Test
    void oneOrdersGuestGoesFromTheOpenDay() {
        assertEquals(2, erasing.order(orders.get(0), THIRD, OWNER));
        List<String> shown =
                days.follower
                        .ask(
                                stand ->
                                        stand.orders().all().stream()
                                                .map(order -> order.name())
                                                .toList())
                        .join();
        assertEquals(List.of("", "", GUEST + " B.", FRIEND), shown);
        Stand replayed = Replay.newestDay(log, Script.SETTINGS, event -> {});
        assertEquals(
                replayed.orders().all().toString(),
                days.follower.ask(stand -> stand.orders().all().toString()).join());
        assertTrue(
                days.follower
                        .ask(stand -> stand.kitchen().parts(orders.get(0)).toString())
                        .join()
                        .contains("name=,"));
    }

    @Test
    void aKeyIsStillAnsweredButNamesAreNotGuessedFromIt() {
        Recorded placed = placed(orders.get(0));
        assertEquals(placed.key(), log.find(placed.key()).orElseThrow().fingerprint());
        erasing.guests(THIRD, Optional.empty());
        assertEquals("", log.find(placed.key()).orElseThrow().fingerprint());
        Answer again =
                days.desk
                        .submit(
                                placed.key(),
                                placed.key(),
                                new StandCommand.AdoptMenu(Script.demoMenu()))
                        .join();
        assertEquals(Answer.Outcome.REPEATED, again.outcome());
        assertEquals(placed.seq(), again.events().get(again.events().size() - 1).seq());
    }

    @Test
    void theTrailSaysWhoErasedAndWhenAndWhatSopwellErasedItself() {
        erasing.guests(FIRST, OWNER);
        erasing.guests(SECOND, Optional.empty());
        AuditTrail.Day day = new AuditTrail(log, Script.SETTINGS).day(THIRD);
        List<LocalDate> byOwner = new ArrayList<>();
        List<LocalDate> byItself = new ArrayList<>();
        for (AuditTrail.Deed deed : day.deeds()) {
            if (deed.events().get(0) instanceof NamesErased erased) {
                (deed.who().equals(OWNER.get()) ? byOwner : byItself).add(erased.date());
                assertEquals(4, erased.names());
            }
        }
        assertEquals(List.of(FIRST), byOwner);
        assertEquals(List.of(SECOND), byItself);
    }

    @Test
    void whatWasErasedIsErasedAfterARestart() throws IOException {
        erasing.guests(FIRST, OWNER);
        String before = all();
        close();
        open();
        assertEquals(before, all());
        assertEquals(0, erasing.guests(FIRST, OWNER));
    }

    private Recorded placed(String order) {
        List<Recorded> found = new ArrayList<>();
        log.read(
                1,
                log.lastSeq(),
                recorded -> {
                    if (recorded.ordinal() == 0
                            && recorded.event().toString().contains("OrderPlaced[order=" + order)) {
                        found.add(recorded);
                    }
                });
        return found.get(0);
    }

    /** Everything that the log says of the days, and all that is made from it, in words. */
    private String all() {
        StringBuilder all = new StringBuilder();
        log.read(
                1,
                log.lastSeq(),
                recorded -> {
                    if (!recorded.toString().matches(".*(MenuAdopted|NamesErased|DoneBy).*")) {
                        all.append(recorded).append('\n');
                    }
                });
        for (LocalDate date : List.of(FIRST, SECOND, THIRD)) {
            Stand stand = Replay.day(log, Script.SETTINGS, date).orElseThrow();
            all.append(stand.orders().all()).append('\n');
            all.append(DayReport.of(stand.orders(), stand.till())).append('\n');
            all.append(stand.kitchen().parts(stand.orders().all().iterator().next().id()));
            all.append(DayBook.Day.of(stand)).append('\n');
        }
        TallyShelves kept = tallies.shelves();
        all.append(kept.mixes().all()).append(kept.waits().all()).append(kept.exceptions().all());
        return all.toString();
    }
}
