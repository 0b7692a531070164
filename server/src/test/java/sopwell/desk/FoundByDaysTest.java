package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.money.Discount;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;
import sopwell.storage.MemoryLog;

/** What the day simulator found, each as small as it can be. */
class FoundByDaysTest {
    /** The first answer was given again only while its day was the newest. */
    @Test
    void repeatsTheAnswerOfAnEarlierDayToWhatNowAsksForNothing() {
        EventLog log = new MemoryLog("epoch");
        InstantSource clock = InstantSource.fixed(Instant.ofEpochMilli(new Script().nowMs()));
        SteppedDesk.Asking adopt =
                new SteppedDesk.Asking("k", "menu", new StandCommand.AdoptMenu(Script.demoMenu()));
        SteppedDesk.Asking open =
                new SteppedDesk.Asking(
                        "day", "day", new StandCommand.ForOrders(new OrderCommand.OpenDay()));
        SteppedDesk.Asking other = new SteppedDesk.Asking("k", "other", adopt.command());
        List<?> first = answer(new SteppedDesk(log, Script.SETTINGS, clock), adopt).events();
        answer(new SteppedDesk(log, Script.SETTINGS, clock), open);
        SteppedDesk later = new SteppedDesk(log, Script.SETTINGS, clock);
        assertEquals(Answer.Outcome.REPEATED, answer(later, adopt).outcome());
        assertEquals(first, answer(later, adopt).events());
        assertEquals(Answer.Outcome.KEY_REUSED, answer(later, other).outcome());
    }

    /** Recipes were read back after a menu that had been adopted later. */
    @Test
    void knowsItsPlaceAfterAMenuThatCameAfterTheRecipes() {
        EventLog log = new MemoryLog("epoch");
        RecipeBook book = Script.demoRecipes().get(0);
        log.append(List.of(entry(1, new RecipesAdopted(book))));
        log.append(List.of(entry(2, new MenuAdopted(Script.demoMenu()))));
        Stand stand = Replay.newestDay(log, Script.SETTINGS, event -> {});
        assertEquals(2, stand.seq());
        assertEquals(book.revision(), stand.recipes().revision());
    }

    private static Entry entry(int n, Event event) {
        return new Entry(n, "key-" + n, "fingerprint", List.of(event));
    }

    /** A stand that runs for months kept the parts of every order that it ever had. */
    @Test
    void forgetsThePartsOfAnotherDate() {
        Script script = new Script();
        Order order = script.place("beef dipped, fries");
        assertFalse(script.stand().kitchen().parts(order.id()).isEmpty());
        script.at("2026-01-15T12:00");
        script.place("beef");
        assertTrue(script.stand().kitchen().parts(order.id()).isEmpty());
    }

    /** Part of what the cut had left came back onto the boards when it was touched. */
    @Test
    void leavesWhatTheCutHasLeft() {
        Script script = new Script().at("2026-01-15T03:00");
        Order left = script.place("2 beef dipped, fries");
        PartId part = script.part(left, 1, "line").id();
        script.must(new KitchenCommand.Start(part));
        script.at("2026-01-15T11:00");
        Order next = script.place("beef");
        assertEquals(left.id().substring(0, 8), next.id().substring(0, 8));
        assertClosed(script, new KitchenCommand.Up(part));
        assertClosed(script, new KitchenCommand.Start(script.part(left, 2, "fryer").id()));
        assertEquals(Reason.DAY_CLOSED, Script.reason(script.change(left, "beef")));
        assertEquals(
                Reason.DAY_CLOSED,
                Script.reason(script.decide(new OrderCommand.VoidOrder(left.id(), 0, "left"))));
        assertEquals(
                Reason.DAY_CLOSED, Script.reason(script.decide(new OrderCommand.Hand(left.id()))));
        Discount off = new Discount(Discount.Kind.GUEST, 100, 0, "waited in vain");
        script.must(new OrderCommand.SetDiscount(left.id(), 0, off));
        assertEquals(off, script.now(left).discount());
        assertEquals(
                List.of(next.id()),
                script.stand().orders().open().stream().map(Order::id).toList());
        assertEquals(1, script.stand().kitchen().inSight("line").size());
    }

    private static void assertClosed(Script script, KitchenCommand command) {
        assertEquals(Reason.DAY_CLOSED, Script.reason(script.decide(command)));
    }

    private static Answer answer(SteppedDesk desk, SteppedDesk.Asking asking) {
        return desk.run(List.of(asking)).get(0).join();
    }
}
