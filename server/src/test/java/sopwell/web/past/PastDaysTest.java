package sopwell.web.past;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sopwell.Limits;
import sopwell.boards.Board;
import sopwell.boards.Digits;
import sopwell.boards.PassBoards;
import sopwell.boards.Places;
import sopwell.boards.Scene;
import sopwell.boards.StationBoards;
import sopwell.desk.DeskBusy;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.lunch.BusyDay;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.storage.MemoryLog;

/** The boards of days that are over are those that a screen showed that was on all day. */
class PastDaysTest {
    private static final List<String> BOARDS = List.of("line", "grill", "fryer", "drinks", "pass");
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 14);

    /** Draws one board at every event up to a moment, as a screen of that day did. */
    private static Board folded(List<Recorded> day, String name, long untilMs) {
        Stand stand = new Stand(Script.SETTINGS);
        Places places = new Places();
        Digits<String> digits = new Digits<>();
        Board board = null;
        boolean opened = false;
        for (Recorded one : day) {
            if (one.atMs() > untilMs) {
                break;
            }
            stand.apply(one);
            opened |= one.event() instanceof DayOpened;
            if (opened && name.equals("pass")) {
                board =
                        PassBoards.pass(
                                new PassBoards.Sources(
                                        stand.orders(),
                                        stand.till(),
                                        stand.kitchen(),
                                        stand.pass(),
                                        stand::menuOf),
                                digits);
            } else if (opened) {
                Scene scene =
                        Scene.of(
                                stand.menu(),
                                stand::menuOf,
                                stand.kitchen(),
                                stand.pans(),
                                one.atMs());
                board = StationBoards.of(stand.menu().station(name), scene, places);
            }
        }
        return board;
    }

    private static List<Recorded> lunch(long seed, int days) {
        return BusyDay.events(List.of(80, 150, 60), 2, 0.8, seed, days);
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 11})
    void aBoardAtAnyMomentIsWhatTheDaysEventsDrawUpToIt(long seed) {
        List<Recorded> events = lunch(seed, 1);
        SplittableRandom random = new SplittableRandom(seed);
        int rows = 0;
        try (MemoryLog log = new MemoryLog("t");
                PastDays days = new PastDays(log, Script.SETTINGS)) {
            BusyDay.into(log, events);
            PastDay day = days.day(FIRST).join().orElseThrow();
            for (String name : BOARDS) {
                for (int second : List.of(random.nextInt(day.seconds()), 4_000, day.seconds())) {
                    Picture picture = days.board(FIRST, name, second).join().orElseThrow();
                    long atMs = day.fromMs() + second * 1000L;
                    assertEquals(folded(events, name, atMs), picture.frame().board(), name);
                    assertEquals(atMs, picture.frame().nowMs(), "ages are those of the moment");
                    rows += picture.frame().rows().size();
                }
            }
            assertTrue(day.peak().orElseThrow().waiting() > 3, day.peak().toString());
        }
        assertTrue(rows > 20, "boards with nothing on them prove little: " + rows);
    }

    @Test
    void theLastMomentIsTheDaysFinalBoardAndWhatIsLaterIsToo() {
        List<Recorded> closed = lunch(5, 1);
        List<Recorded> events = closed.subList(0, closed.size() - 1);
        try (MemoryLog log = new MemoryLog("t");
                PastDays days = new PastDays(log, Script.SETTINGS)) {
            BusyDay.into(log, events);
            Board last = folded(events, "pass", Long.MAX_VALUE);
            Picture end = days.board(FIRST, "pass", Integer.MAX_VALUE).join().orElseThrow();
            assertEquals(last, end.frame().board());
            assertFalse(end.frame().rows().isEmpty(), "the last ones handed are still there");
        }
    }

    @Test
    void oneDayDoesNotReachIntoTheNext() {
        List<Recorded> events = lunch(7, 2);
        LocalDate second = FIRST.plusDays(1);
        try (MemoryLog log = new MemoryLog("t");
                PastDays days = new PastDays(log, Script.SETTINGS)) {
            BusyDay.into(log, events);
            PastDay one = days.day(FIRST).join().orElseThrow();
            PastDay two = days.day(second).join().orElseThrow();
            assertTrue(one.seconds() < 5 * 3_600, "the first ends with its last order");
            assertTrue(two.fromMs() > one.fromMs() + 80_000_000, "a day later");
            assertEquals(Optional.empty(), days.day(FIRST.minusDays(1)).join());
            assertEquals(Optional.empty(), days.board(second.plusDays(1), "line", 0).join());
            assertEquals(Optional.empty(), days.board(FIRST, "roof", 60).join());
        }
    }

    @Test
    void whatIsDoneWithTheBooksAtNightDoesNotLengthenTheDay() {
        List<Recorded> events = lunch(5, 1);
        try (MemoryLog log = new MemoryLog("t");
                PastDays days = new PastDays(log, Script.SETTINGS)) {
            BusyDay.into(log, events);
            PastDay before = days.day(FIRST).join().orElseThrow();
            long nightMs = events.get(events.size() - 1).atMs() + 8 * 3_600_000L;
            for (Event event :
                    List.of(
                            new CalendarEvent.CalendarSet(OwnerCalendar.EMPTY),
                            new RecipeEvent.RecipesAdopted(RecipeBook.empty()),
                            new BatchEvent.BatchUsedUp("b1"))) {
                String key = event.getClass().getName();
                log.append(List.of(new Entry(nightMs, key, key, List.of(event))));
            }
            assertEquals(before, days.day(FIRST).join().orElseThrow());
        }
    }

    @Test
    void aDayThatGoesOnIsFollowed() {
        List<Recorded> events = lunch(9, 1);
        int half = events.size() / 2;
        try (MemoryLog log = new MemoryLog("t");
                PastDays days = new PastDays(log, Script.SETTINGS)) {
            BusyDay.into(log, events.subList(0, half));
            int before = days.day(FIRST).join().orElseThrow().seconds();
            assertTrue(days.board(FIRST, "line", before).join().isPresent());
            BusyDay.into(log, events.subList(half, events.size()));
            PastDay day = days.day(FIRST).join().orElseThrow();
            assertTrue(day.seconds() > before);
            Picture now = days.board(FIRST, "line", before + 600).join().orElseThrow();
            long atMs = day.fromMs() + (before + 600) * 1000L;
            assertEquals(folded(events, "line", atMs), now.frame().board());
        }
    }

    @Test
    void anyMomentOfABusyDayIsFoundInTimeToDragAlong() {
        try (MemoryLog log = new MemoryLog("t");
                PastDays days = new PastDays(log, Script.SETTINGS)) {
            BusyDay.into(log, BusyDay.ofFiveHundred(7));
            PastDay day = days.day(FIRST).join().orElseThrow();
            assertTrue(days.board(FIRST, "line", day.seconds()).join().isPresent());
            SplittableRandom random = new SplittableRandom(1);
            long[] millis = new long[100];
            for (int n = 0; n < millis.length; n++) {
                long begin = System.nanoTime();
                assertTrue(
                        days.board(FIRST, "line", random.nextInt(day.seconds()))
                                .join()
                                .isPresent());
                millis[n] = (System.nanoTime() - begin) / 1_000_000;
            }
            Arrays.sort(millis);
            assertTrue(millis[94] <= 300, "19 of 20 within " + millis[94] + " ms");
        }
    }

    @Test
    void whoComesWhenTooManyWaitIsToldSo() throws Exception {
        List<Recorded> events = lunch(5, 1);
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch began = new CountDownLatch(1);
        try (MemoryLog log = new MemoryLog("t");
                PastDays days = new PastDays(log, Script.SETTINGS)) {
            BusyDay.into(log, events);
            CompletableFuture<Optional<Integer>> slow =
                    days.ask(
                            FIRST,
                            over -> {
                                began.countDown();
                                await(held);
                                return over.stand().orders().all().size();
                            });
            began.await();
            List<CompletableFuture<?>> waiting = new ArrayList<>();
            for (int n = 0; n < Limits.PAST_QUEUE_MAX; n++) {
                waiting.add(days.day(FIRST));
            }
            assertThrows(DeskBusy.class, () -> days.day(FIRST));
            held.countDown();
            assertTrue(slow.join().orElseThrow() > 100);
            waiting.forEach(CompletableFuture::join);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
