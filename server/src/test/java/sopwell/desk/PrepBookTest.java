package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.prep.past.DayPrep;
import sopwell.storage.MemoryLog;

/** Past days are read once; the newest one may still change. */
class PrepBookTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 6);
    private static final LocalDate LAST = FIRST.plusDays(2);

    private final MemoryLog log = new MemoryLog("test");

    private void play() {
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            desk.day(FIRST, 3);
            desk.keptPlan(FIRST.plusDays(1));
            desk.day(FIRST.plusDays(1), 2);
            desk.day(LAST, 1);
        }
    }

    @Test
    void daysComeInTheirOrderWithTheirOwnPlansOnly() {
        play();
        List<DayPrep> days = new PrepBook(log, Script.SETTINGS).days(FIRST, LAST);
        assertEquals(
                List.of(FIRST, FIRST.plusDays(1), LAST), days.stream().map(DayPrep::date).toList());
        assertTrue(days.get(0).plan().isEmpty(), "it was not kept, and that is said");
        assertEquals(FIRST.plusDays(1), days.get(1).plan().orElseThrow().date());
        assertTrue(days.get(2).plan().isEmpty());
        List<DayPrep> middle =
                new PrepBook(log, Script.SETTINGS).days(FIRST.plusDays(1), FIRST.plusDays(1));
        assertEquals(List.of(days.get(1)), middle);
    }

    @Test
    void aDayThatAnotherHasFollowedIsReadOnceAndTheNewestEachTime() {
        play();
        PrepBook book = new PrepBook(log, Script.SETTINGS);
        List<DayPrep> once = book.days(FIRST, LAST);
        List<DayPrep> again = book.days(FIRST, LAST);
        assertEquals(once, again);
        assertSame(once.get(0), again.get(0));
        assertNotSame(once.get(2), again.get(2));
        assertEquals(once, new PrepBook(log, Script.SETTINGS).days(FIRST, LAST), "after a start");
    }
}
