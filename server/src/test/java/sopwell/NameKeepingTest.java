package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.NamedDays.CASHIER;
import static sopwell.desk.NamedDays.FIRST;
import static sopwell.desk.NamedDays.GUEST;
import static sopwell.desk.NamedDays.OTHER;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.access.Access;
import sopwell.access.Actor;
import sopwell.access.Role;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.desk.AuditTrail;
import sopwell.desk.ClockState;
import sopwell.desk.NameErasing;
import sopwell.desk.NamedDays;
import sopwell.desk.Script;
import sopwell.desk.SureDate;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.Event;
import sopwell.storage.DataFolder;
import sopwell.storage.NamesOnDisk;
import sopwell.storage.PrivacyRule;
import sopwell.storage.SqliteLog;

/** Names go by themselves when they were kept for as long as they may be, and not before. */
class NameKeepingTest {
    private static final ZoneId ZONE = Script.SETTINGS.zone();
    private static final LocalDate SECOND = FIRST.plusDays(1);
    private static final LocalDate YEAR_2099 = LocalDate.of(2099, 3, 1);

    @TempDir Path folder;
    private final List<Told> told = new ArrayList<>();
    private final Handler ear = ear();
    private ClockState box = right(SECOND);
    private DataFolder data;
    private SqliteLog log;
    private NamedDays days;
    private Access access;
    private NameKeeping keeping;

    @BeforeEach
    void twoDaysOfTwoCashiers() throws StartRefused {
        data = DataFolder.open(folder);
        log = data.openLog(Script.SETTINGS.stand());
        days = new NamedDays(log);
        days.day(FIRST, true);
        days.day(SECOND, true);
        access =
                StandAccess.open(
                        data,
                        () -> Instant.ofEpochMilli(box.standMs()),
                        Runnable::run,
                        attempt -> {});
        for (String name : List.of(CASHIER, OTHER)) {
            access.roster().addPerson(Actor.ANYBODY, name, Role.OWNER);
        }
        keeping = keeping(new PrivacyRule(30, 90));
        Logger.getLogger(NameKeeping.class.getName()).addHandler(ear);
    }

    private NameKeeping keeping(PrivacyRule rule) {
        NameErasing erasing = new NameErasing(log, days.desk::submit, d -> {}, d -> {});
        return new NameKeeping(
                log, erasing, access, rule, new NameKeeping.Time(() -> box, ZONE, 1_000));
    }

    private Handler ear() {
        return new Handler() {
            @Override
            public void publish(LogRecord line) {
                told.add((Told) line.getParameters()[0]);
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
    }

    @AfterEach
    void close() {
        Logger.getLogger(NameKeeping.class.getName()).removeHandler(ear);
        keeping.close();
        days.close();
        log.close();
        data.close();
    }

    private static long noon(LocalDate date) {
        return date.atTime(12, 0).atZone(ZONE).toInstant().toEpochMilli();
    }

    private static ClockState right(LocalDate date) {
        return new ClockState(ClockState.Trust.RIGHT, noon(date), noon(date));
    }

    /** The dates of which names of a kind went, in order, as the log says. */
    private List<String> gone() {
        List<String> gone = new ArrayList<>();
        log.read(
                1,
                log.lastSeq(),
                recorded -> {
                    if (recorded.event() instanceof NamesErased erased) {
                        gone.add(erased.of() + " " + erased.date());
                    }
                });
        return gone;
    }

    private void lookOn(LocalDate date) throws InterruptedException {
        box = right(date);
        keeping.eraseDue(() -> true);
    }

    /** Nights of a stand that runs but does not sell. */
    private void lookEachNight(LocalDate from, LocalDate to) throws InterruptedException {
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            lookOn(date);
        }
    }

    @Test
    void guestsNamesGoOnTheDayAfterTheirLast() throws Exception {
        lookEachNight(SECOND, FIRST.plusDays(30));
        assertEquals(List.of(), gone());
        lookOn(FIRST.plusDays(31));
        assertEquals(List.of("GUESTS " + FIRST), gone());
        lookOn(FIRST.plusDays(31));
        lookOn(SECOND.plusDays(31));
        assertEquals(List.of("GUESTS " + FIRST, "GUESTS " + SECOND), gone());
        assertEquals(List.of(), NamesOnDisk.with(folder, GUEST));
        data.checkOf(Script.SETTINGS.stand()).newest(log.lastSeq(), log.lastSeq());
        assertEquals(30, keeping.state().guestDays());
    }

    @Test
    void whoIsInterruptedGoesOnAtTheNextLook() throws Exception {
        lookEachNight(SECOND, FIRST.plusDays(29));
        box = right(FIRST.plusDays(40));
        keeping.eraseDue(() -> false);
        assertEquals(List.of("GUESTS " + FIRST), gone());
        keeping.eraseDue(() -> true);
        assertEquals(List.of("GUESTS " + FIRST, "GUESTS " + SECOND), gone());
    }

    @Test
    void cashiersStayWhileTheyWorkHereAndGoAfterThat() throws Exception {
        lookEachNight(SECOND, SECOND.plusDays(95));
        assertFalse(NamesOnDisk.with(folder, CASHIER).isEmpty());
        assertTrue(access.roster().endPerson(Actor.ANYBODY, "s1").isDone());
        assertTrue(NamesOnDisk.with(folder, CASHIER).contains("access.json"));
        LocalDate left = SECOND.plusDays(95);
        lookEachNight(left, left.plusDays(90));
        assertFalse(NamesOnDisk.with(folder, CASHIER).isEmpty(), "as long as for others");
        lookOn(left.plusDays(91));
        assertEquals(List.of(), NamesOnDisk.with(folder, CASHIER));
        assertFalse(NamesOnDisk.with(folder, OTHER).isEmpty(), "who still works here stays");
        data.checkOf(Script.SETTINGS.stand()).newest(log.lastSeq(), log.lastSeq());
    }

    /** What Sopwell does by itself is found where people look for what was done. */
    @Test
    void whoeverLeftIsForgottenWithANoteThatSopwellDidIt() throws Exception {
        access.roster().endPerson(Actor.ANYBODY, "s2");
        lookEachNight(SECOND, SECOND.plusDays(91));
        assertEquals("", access.state().people().get(1).name());
        assertEquals(CASHIER, access.state().people().get(0).name());
        Event forgot = AccessChanged.ofPerson(Change.PERSON_ERASED, "s2");
        List<AuditTrail.Deed> deeds =
                new AuditTrail(log, Script.SETTINGS)
                        .day(LocalDate.ofInstant(Instant.ofEpochMilli(lastAtMs()), ZONE))
                        .deeds();
        assertEquals(
                1,
                deeds.stream()
                        .filter(deed -> deed.events().equals(List.of(forgot)))
                        .filter(deed -> deed.who().equals(AuditTrail.BY_ITSELF))
                        .count(),
                deeds.toString());
    }

    private long lastAtMs() {
        long[] at = new long[1];
        log.read(log.lastSeq(), log.lastSeq(), recorded -> at[0] = recorded.atMs());
        return at[0];
    }

    @Test
    void aBoxThatSaysTheYear2099ErasesNothing() throws Exception {
        access.roster().endPerson(Actor.ANYBODY, "s2");
        lookOn(SECOND);
        lookOn(YEAR_2099);
        assertEquals(List.of(), gone());
        assertEquals(OTHER, access.state().people().get(1).name());
        assertEquals(new SureDate(YEAR_2099, SECOND), keeping.state().looked().orElseThrow());
        Told line = told.get(told.size() - 1);
        assertEquals(Happening.NAMES_WAIT, line.what());
        assertEquals("2099-03-01", line.fields().get("today"));
        assertEquals(SECOND.toString(), line.fields().get("sure"));
        lookOn(SECOND.plusDays(1));
        assertTrue(keeping.state().looked().orElseThrow().isSure());
        assertEquals(List.of(), gone());
    }

    @Test
    void soDoesOneThatStartsSoAndSellsForSomeDays() throws Exception {
        for (int sold = 0; sold < 6; sold++) {
            days.day(YEAR_2099.plusDays(sold), true);
        }
        lookOn(YEAR_2099.plusDays(6));
        assertEquals(List.of(), gone());
        days.day(YEAR_2099.plusDays(6), true);
        lookOn(YEAR_2099.plusDays(7));
        assertEquals("GUESTS " + SECOND, gone().get(1), "a week of selling makes it sure");
    }

    @Test
    void whatWasDueOnTheLastSureDayStillGoes() throws Exception {
        days.day(FIRST.plusDays(11), true);
        days.day(FIRST.plusDays(21), true);
        days.day(FIRST.plusDays(31), true);
        lookOn(YEAR_2099);
        assertEquals(List.of("GUESTS " + FIRST), gone());
    }

    @Test
    void aBoxThatWasPutBackCountsAsItSaysAndOneWithoutAClockDoesNot() throws Exception {
        LocalDate later = FIRST.plusDays(14);
        days.day(later, true);
        keeping.close();
        keeping = keeping(new PrivacyRule(10, 90));
        box = new ClockState(ClockState.Trust.STEPPED, noon(FIRST.plusDays(5)), noon(later));
        keeping.eraseDue(() -> true);
        assertEquals(List.of(), gone(), "the box may be right");
        box = new ClockState(ClockState.Trust.BEHIND, 7, noon(later));
        keeping.eraseDue(() -> true);
        assertEquals(
                List.of("GUESTS " + FIRST, "GUESTS " + SECOND), gone(), "1970 is no box's time");
    }

    @Test
    void whenSomebodyLeftByAClockThatWasAheadIsTakenToBeNow() throws Exception {
        box = right(YEAR_2099);
        access.roster().endPerson(Actor.ANYBODY, "s2");
        lookOn(SECOND);
        assertEquals(noon(SECOND), access.state().people().get(1).endedAtMs());
        lookEachNight(SECOND, SECOND.plusDays(91));
        assertEquals("", access.state().people().get(1).name());
        assertTrue(
                NamesOnDisk.with(folder, "\"" + OTHER).stream().noneMatch("access.json"::equals));
    }

    @Test
    void aLogThatTakesNothingKeepsTheNameOnTheRoster() throws IOException, InterruptedException {
        access.roster().endPerson(Actor.ANYBODY, "s2");
        lookEachNight(SECOND, SECOND.plusDays(90));
        days.desk.close();
        box = right(SECOND.plusDays(91));
        try {
            keeping.eraseDue(() -> true);
        } catch (RuntimeException closed) {
            told.clear();
        }
        assertEquals(List.of(), told);
        assertEquals(OTHER, access.state().people().get(1).name());
    }
}
