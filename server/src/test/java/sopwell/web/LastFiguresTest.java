package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.desk.DayBook;
import sopwell.desk.DaysDesk;
import sopwell.desk.MemoryShelf;
import sopwell.desk.Script;
import sopwell.storage.MemoryLog;

/** Figures of past days stay at hand, and never longer than they are right. */
class LastFiguresTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 14);

    private final MemoryLog log = new MemoryLog("millrace");
    private final LastFigures figures =
            new LastFigures(new DayBook(log, Script.SETTINGS, MemoryShelf.shelves()));

    @Test
    void aPastDayIsCountedOnceWhileOthersAreFew() {
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            for (int day = 0; day < Limits.DAY_FIGURES_KEPT_MAX + 3; day++) {
                desk.day(FIRST.plusDays(day), day + 1);
            }
        }
        DayFigures first = figures.of(FIRST).orElseThrow();
        assertEquals(1, first.mix().counts().orders());
        assertSame(first, figures.of(FIRST).orElseThrow());
        for (int day = 1; day <= Limits.DAY_FIGURES_KEPT_MAX; day++) {
            assertEquals(
                    day + 1,
                    figures.of(FIRST.plusDays(day)).orElseThrow().waitTally().orders().size());
        }
        assertNotSame(first, figures.of(FIRST).orElseThrow(), "the oldest has left");
        assertEquals(first.mix(), figures.of(FIRST).orElseThrow().mix());
    }

    @Test
    void theNewestDayAndDaysWithoutSalesAreNotPast() {
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            desk.closed(FIRST);
            assertEquals(Optional.empty(), figures.of(FIRST));
            desk.day(FIRST.plusDays(2), 1);
            assertEquals(1, figures.of(FIRST).orElseThrow().mix().counts().voids());
            assertEquals(Optional.empty(), figures.of(FIRST.plusDays(1)));
            assertEquals(Optional.empty(), figures.of(FIRST.plusYears(100)));
        }
    }
}
