package sopwell.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Replay;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.LarderLeft;
import sopwell.stock.recipes.RecipeBook;
import sopwell.storage.MemoryLog;

/** The demo's lunch leaves a stand that has been at work. */
class DemoLunchTest {
    private static final long NOW_MS = Instant.parse("2026-01-08T18:30:00Z").toEpochMilli();

    private final MemoryLog log = new MemoryLog("millrace");

    @Test
    void everyShelfWasCountedAndTheLunchTookFromThem() {
        RecipeBook book = Script.demoRecipes().get(0);
        DemoLunch.play(log, Script.SETTINGS, Script.demoMenu(), book, NOW_MS);
        Stand stand = Replay.newestDay(log, Script.SETTINGS, event -> {});
        assertEquals(book, stand.recipes());
        List<LarderLeft> shelves = LarderLeft.all(book, stand.larder(), NOW_MS);
        assertTrue(shelves.size() > 30);
        List<String> unknown = new ArrayList<>();
        for (LarderLeft one : shelves) {
            if (one.held().filter(held -> held.expected() > 0).isEmpty()) {
                unknown.add(one.ingredient().id());
            }
        }
        assertEquals(List.of(), unknown, "not counted, or all used up");
        Held rolls = stand.larder().held("roll").orElseThrow();
        assertTrue(rolls.expected() < 24 * 24 * 1_000, "sandwiches took rolls");
    }

    @Test
    void withoutRecipesNothingIsCountedAndTheGuestsAreTheSame() {
        RecipeBook book = Script.demoRecipes().get(0);
        DemoLunch.play(log, Script.SETTINGS, Script.demoMenu(), book, NOW_MS);
        MemoryLog bare = new MemoryLog("millrace");
        DemoLunch.play(bare, Script.SETTINGS, Script.demoMenu(), RecipeBook.empty(), NOW_MS);
        Stand stand = Replay.newestDay(bare, Script.SETTINGS, event -> {});
        assertTrue(stand.recipes().isEmpty());
        assertEquals(List.of(), stand.larder().carried().held());
        assertEquals(orders(log), orders(bare));
    }

    private static List<String> orders(MemoryLog log) {
        List<String> orders = new ArrayList<>();
        log.read(
                1,
                log.lastSeq(),
                (Recorded recorded) -> {
                    if (recorded.event() instanceof OrderPlaced placed) {
                        orders.add(recorded.atMs() + " " + placed.lines());
                    }
                });
        return orders;
    }
}
