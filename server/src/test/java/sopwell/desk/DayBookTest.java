package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.desk.StandCommand.AdoptMenu;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.mix.DayTally;
import sopwell.mix.TallyShelf;
import sopwell.mix.TallyShelf.Shelved;
import sopwell.orders.Asked;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.storage.DataFolder;
import sopwell.storage.MemoryLog;
import sopwell.storage.TallyFile;

/** Past days are counted once, and what is kept always equals what the log says. */
class DayBookTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 14);
    private static final int DAYS = 4;
    private static final List<Asked> ASKED = new Script().asked("2 beef dipped hot, fries");

    private final MemoryLog log = new MemoryLog("millrace");
    private int keys;

    @Test
    void aRebuiltShelfEqualsTheOneThatGrew() {
        MemoryShelf grown = new MemoryShelf();
        DayBook book = new DayBook(log, Script.SETTINGS, grown);
        play();
        List<DayTally> days = book.days(FIRST, FIRST.plusDays(DAYS));
        assertEquals(DAYS - 1, days.size(), "the newest day may still grow");
        List<Shelved> before = grown.between(FIRST, FIRST.plusDays(DAYS));
        List<String> progress = new ArrayList<>();
        assertEquals(3, book.rebuild((done, all) -> progress.add(done + "/" + all)));
        assertEquals(before, grown.between(FIRST, FIRST.plusDays(DAYS)));
        assertEquals(List.of("1/3", "2/3", "3/3"), progress);
        assertEquals(List.of(), book.wrong());
        assertEquals(Optional.of(FIRST), book.first());
    }

    @Test
    void aTamperedTallyIsFound() {
        MemoryShelf shelf = new MemoryShelf();
        DayBook book = new DayBook(log, Script.SETTINGS, shelf);
        play();
        book.days(FIRST, FIRST.plusDays(DAYS));
        Shelved second = shelf.between(FIRST.plusDays(1), FIRST.plusDays(1)).get(0);
        shelf.put(
                List.of(
                        new Shelved(
                                new DayTally(second.tally().date(), List.of()), second.lastSeq())));
        assertEquals(List.of(FIRST.plusDays(1)), book.wrong());
        assertTrue(book.day(FIRST.plusDays(1)).orElseThrow().halfHours().isEmpty());
        book.rebuild((done, all) -> {});
        assertEquals(List.of(), book.wrong());
        assertFalse(book.day(FIRST.plusDays(1)).orElseThrow().halfHours().isEmpty());
    }

    @Test
    void whatIsKeptInAFileComesBackAsItWas(@TempDir Path folder) throws Exception {
        play();
        try (DataFolder data = DataFolder.open(folder)) {
            List<DayTally> counted;
            try (TallyFile file = data.openTallies("millrace")) {
                counted = new DayBook(log, Script.SETTINGS, file).days(FIRST, FIRST.plusDays(9));
            }
            try (TallyFile file = data.openTallies("millrace")) {
                List<Shelved> kept = file.between(FIRST, FIRST.plusDays(9));
                assertEquals(counted, kept.stream().map(Shelved::tally).toList());
                assertEquals(List.of(), new DayBook(log, Script.SETTINGS, file).wrong());
            }
            try (TallyFile other = data.openTallies("elsewhere")) {
                assertEquals(List.of(), other.between(FIRST, FIRST.plusDays(9)));
            }
        }
    }

    @Test
    void aDamagedFileIsThrownAwayAndCountedAnew(@TempDir Path folder) throws Exception {
        play();
        Files.writeString(folder.resolve("tallies.sqlite"), "no database at all ".repeat(600));
        try (DataFolder data = DataFolder.open(folder);
                TallyFile file = data.openTallies("millrace")) {
            DayBook book = new DayBook(log, Script.SETTINGS, file);
            assertEquals(3, book.days(FIRST, FIRST.plusDays(9)).size());
            assertEquals(3, book.days(FIRST, FIRST.plusDays(9)).size());
            assertEquals(List.of(), book.wrong());
        }
    }

    @Test
    void aReopenedDayIsCountedAnew() {
        TallyShelf shelf = new MemoryShelf();
        DayBook book = new DayBook(log, Script.SETTINGS, shelf);
        try (DaysDesk desk = new DaysDesk()) {
            desk.closed(FIRST);
            desk.closed(FIRST);
            assertEquals(List.of(), book.days(FIRST, FIRST));
            desk.day(FIRST.plusDays(1), 1);
            assertEquals(2, voids(book.day(FIRST).orElseThrow()));
            assertEquals(List.of(), book.days(FIRST.plusDays(1), FIRST.plusDays(1)));
        }
    }

    private static int voids(DayTally day) {
        return day.halfHours().stream().mapToInt(half -> half.counts().voids()).sum();
    }

    /** Days with one order more each. */
    private void play() {
        try (DaysDesk desk = new DaysDesk()) {
            for (int day = 0; day < DAYS; day++) {
                desk.day(FIRST.plusDays(day), day + 1);
            }
        }
    }

    /** A desk whose clock goes from day to day. */
    private final class DaysDesk implements AutoCloseable {
        private long nowMs;
        private final Desk desk = new Desk(log, Script.SETTINGS, () -> at(nowMs), events -> {});

        DaysDesk() {
            nowMs = noon(FIRST);
            must(new AdoptMenu(Script.demoMenu()));
        }

        void day(LocalDate date, int orders) {
            nowMs = Math.max(nowMs, noon(date));
            for (int order = 0; order < orders; order++) {
                place();
            }
            nowMs = Math.max(nowMs, noon(date) + 17 * 3_600_000L);
            must(new ForOrders(new OrderCommand.CutDay()));
        }

        /** One order that came to nothing, and closed. */
        void closed(LocalDate date) {
            nowMs = Math.max(nowMs, noon(date));
            String order = place();
            must(new ForOrders(new OrderCommand.VoidOrder(order, 0, "guest left")));
            must(new ForOrders(new OrderCommand.CloseDay()));
        }

        private String place() {
            nowMs += 60_000;
            return must(new ForOrders(new OrderCommand.Place("", true, ASKED))).events().stream()
                    .filter(recorded -> recorded.event() instanceof OrderPlaced)
                    .map(recorded -> ((OrderPlaced) recorded.event()).order())
                    .findFirst()
                    .orElseThrow();
        }

        private Answer must(StandCommand command) {
            String key = "key " + keys++;
            Answer answer = desk.submit(key, key, command).join();
            assertTrue(answer.refusal().isEmpty(), () -> "refused: " + answer.refusal());
            return answer;
        }

        private static java.time.Instant at(long ms) {
            return java.time.Instant.ofEpochMilli(ms);
        }

        private static long noon(LocalDate date) {
            return date.atTime(12, 0).atZone(Script.SETTINGS.zone()).toInstant().toEpochMilli();
        }

        @Override
        public void close() {
            desk.close();
        }
    }
}
