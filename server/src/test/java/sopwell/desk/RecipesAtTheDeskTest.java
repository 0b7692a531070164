package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.menu.LocalText;
import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.RecipeRules;
import sopwell.stock.recipes.Resource;
import sopwell.storage.MemoryLog;

/** Which book of recipes is in force. */
class RecipesAtTheDeskTest {
    private final RecipeBook first = book("a", 1);
    private final RecipeBook second = book("b", 2);

    @Test
    void aBookFollowsTheOneThatItWasMadeFromAndNoOther() {
        RecipeBook none = RecipeBook.empty();
        Decision adopted = RecipeRules.decide(none, first, none.revision());
        assertEquals(List.of(new RecipesAdopted(first)), adopted.events());
        Decision late = RecipeRules.decide(first, second, none.revision());
        assertEquals(Reason.RECIPES_CHANGED, late.refusal().orElseThrow().reason());
        assertEquals(List.of("a"), late.refusal().get().args());
    }

    @Test
    void theBookInForceAlreadyAsksForNothing() {
        Decision same = RecipeRules.decide(first, first, "a");
        assertEquals(List.of(), same.events());
        assertTrue(same.refusal().isEmpty());
    }

    @Test
    void theNewestBookBeforeTheNewestDayIsInForceAfterAReplay() {
        try (MemoryLog log = new MemoryLog("test")) {
            assertTrue(Replay.newestDay(log, Script.SETTINGS, e -> {}).recipes().isEmpty());
            keep(log, new RecipesAdopted(first), new RecipesAdopted(second));
            Script day = new Script();
            day.place("beef");
            List<Event> events = new ArrayList<>();
            day.log().forEach(recorded -> events.add(recorded.event()));
            keep(log, events.toArray(new Event[0]));
            Stand stand = Replay.newestDay(log, Script.SETTINGS, e -> {});
            assertTrue(stand.orders().isDayOpen());
            assertEquals(second, stand.recipes());
        }
    }

    private static void keep(MemoryLog log, Event... events) {
        for (Event event : events) {
            log.append(List.of(new Entry(1L, "k" + log.lastSeq(), "f", List.of(event))));
        }
    }

    private static RecipeBook book(String revision, int slots) {
        Resource oven = new Resource("oven", new LocalText("oven", "horno"), slots, 0);
        return new RecipeBook(
                revision,
                new RecipeParts(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(oven),
                        new KitchenHours(Map.of())));
    }
}
