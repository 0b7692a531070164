package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.Answer;
import sopwell.desk.DayBook;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.MemoryShelf;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.log.Recorded;
import sopwell.orders.OrderCommand;
import sopwell.prep.past.PlanEvent.PlanKept;
import sopwell.stock.recipes.RecipeBook;
import sopwell.storage.MemoryLog;
import sopwell.web.PrepPlans;

/** A day's plan is kept once, a minute after its opening, whatever happens in between. */
class PlanKeepingTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 27);
    private static final int LOOKS = (int) (Limits.PLAN_KEPT_AFTER_SECONDS / Limits.TICK_SECONDS);

    private final MemoryLog log = new MemoryLog("test");
    private Instant now = Instant.parse("2026-11-27T15:00:00Z");
    private Follower follower;
    private Desk desk;
    private PrepPlans plans;
    private PlanKeeping keeping;
    private int keys;

    @BeforeEach
    void start() {
        follower = new Follower(log, Script.SETTINGS);
        desk = new Desk(log, Script.SETTINGS, () -> now, follower::follow);
        DayBook book = new DayBook(log, Script.SETTINGS, MemoryShelf.shelves());
        plans = new PrepPlans(log, follower, book, Script.SETTINGS, () -> now);
        keeping = new PlanKeeping(follower, desk, plans, Script.SETTINGS.zone());
    }

    @AfterEach
    void stop() {
        plans.close();
        desk.close();
        follower.close();
    }

    private void ask(StandCommand command) {
        String key = "test-" + log.lastSeq() + "-" + keys++;
        Answer answer = desk.submit(key, key, command).join();
        assertTrue(answer.refusal().isEmpty(), () -> "refused: " + answer.refusal());
    }

    private void openDay() {
        ask(new StandCommand.AdoptMenu(Script.demoMenu()));
        RecipeBook recipes = Script.demoRecipes().get(0);
        ask(new StandCommand.AdoptRecipes(recipes, RecipeBook.empty().revision()));
        ask(new ForOrders(new OrderCommand.OpenDay()));
    }

    /** So many ticks; how many of them kept something. */
    private int ticks(int many) {
        int kept = 0;
        for (int n = 0; n < many; n++) {
            now = now.plusSeconds(Limits.TICK_SECONDS);
            Optional<Answer> answer = keeping.look().join();
            kept += answer.isPresent() && !answer.get().events().isEmpty() ? 1 : 0;
        }
        return kept;
    }

    private List<LocalDate> kept() {
        List<Recorded> all = new ArrayList<>();
        log.read(1, log.lastSeq(), all::add);
        return all.stream()
                .map(Recorded::event)
                .filter(PlanKept.class::isInstance)
                .map(event -> ((PlanKept) event).date())
                .toList();
    }

    @Test
    void aDaysPlanIsKeptOnceAMinuteAfterItIsSeenOpen() {
        assertEquals(0, ticks(LOOKS + 2), "no day is open");
        openDay();
        assertEquals(0, ticks(LOOKS), "the shelves are often counted first");
        assertEquals(1, ticks(1));
        assertEquals(List.of(DAY), kept());
        assertEquals(0, ticks(3 * LOOKS));
        assertEquals(List.of(DAY), kept());
        Stand stand = follower.ask(one -> one).join();
        assertFalse(stand.keptPlan().orElseThrow().tasks().isEmpty());
    }

    @Test
    void aRestartBeforeItWaitsAnewAndOneAfterItKeepsNothingAgain() {
        openDay();
        assertEquals(0, ticks(LOOKS));
        stop();
        start();
        assertEquals(0, ticks(LOOKS), "waits a minute again");
        assertEquals(1, ticks(1));
        stop();
        start();
        assertEquals(0, ticks(3 * LOOKS));
        assertEquals(List.of(DAY), kept());
    }

    @Test
    void thatAPlanCanNotBeMadeStopsNeitherTheTicksNorTheStand() {
        openDay();
        plans.close();
        assertEquals(0, ticks(3 * LOOKS));
        assertEquals(List.of(), kept());
        ask(new ForOrders(new OrderCommand.CloseDay()));
        assertFalse(follower.ask(stand -> stand.orders().isDayOpen()).join());
    }

    @Test
    void everyDayHasAPlanOfItsOwn() {
        openDay();
        ticks(LOOKS + 1);
        ask(new ForOrders(new OrderCommand.CloseDay()));
        now = now.plusSeconds(24 * 3_600);
        ask(new ForOrders(new OrderCommand.OpenDay()));
        assertEquals(1, ticks(LOOKS + 1));
        assertEquals(List.of(DAY, DAY.plusDays(1)), kept());
    }
}
