package sopwell.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.boards.StationLoads.Load;
import sopwell.boards.StationLoads.Share;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.PartId;
import sopwell.orders.Order;

/** What the fryer and the grill make in one go. The demo's baskets take four, its grill six. */
class LoadRowsTest {
    private final Script script = new Script();
    private final LoadTimes times = new LoadTimes();

    @Test
    void piecesOfSeveralOrdersGoInTogetherUpToTheLoad() {
        Order first = script.place("2 fries");
        Order second = script.place("fries");
        Order third = script.place("2 fries");
        Load load = fryer().loads().get(0);
        assertFalse(load.started());
        assertEquals(4, fryer().capacity());
        assertEquals(3, load.pieces());
        assertEquals(
                List.of(first.number(), second.number()),
                load.shares().stream().map(Share::number).toList());
        Load next = fryer().loads().get(1);
        assertEquals(List.of(third.number()), next.shares().stream().map(Share::number).toList());
    }

    @Test
    void oneMoveBeginsALoadAndAnotherPutsItUp() {
        script.place("2 fries");
        script.place("fries");
        List<PartId> parts = fryer().loads().get(0).moved();
        script.must(new KitchenCommand.Together(KitchenCommand.Move.START, parts));
        Load load = fryer().loads().get(0);
        assertTrue(load.started());
        assertEquals(parts, load.moved());
        script.later(180);
        script.must(new KitchenCommand.Together(KitchenCommand.Move.UP, load.moved()));
        assertEquals(List.of(), fryer().loads());
    }

    @Test
    void whatDoesNotFitGoesUpWithItsLastLoad() {
        Order order = script.place("5 fries");
        script.must(new Start(script.part(order, 1, "fryer").id()));
        List<Load> loads = fryer().loads();
        assertEquals(
                List.of(4, 1), loads.stream().map(Load::pieces).sorted((a, b) -> b - a).toList());
        List<List<PartId>> moved = loads.stream().map(Load::moved).toList();
        assertEquals(1, moved.stream().mapToInt(List::size).sum(), moved.toString());
    }

    @Test
    void aLoadComesUpWhenItWasPromisedTo() {
        script.place("fries");
        script.must(
                new KitchenCommand.Together(
                        KitchenCommand.Move.START, fryer().loads().get(0).moved()));
        long promisedMs = fryer().loads().get(0).upAtMs();
        assertTrue(promisedMs > script.nowMs());
        script.later(600).place("2 fries");
        assertEquals(promisedMs, fryer().loads().get(0).upAtMs());
    }

    @Test
    void aTimeToBeginMovesOnlyByTenSecondsOrMore() {
        script.place("12 beef, fries");
        long shownMs = fryer().loads().get(0).startByMs();
        assertTrue(shownMs > script.nowMs(), "fries wait for the beef");
        for (int second = 0; second < 5; second++) {
            script.later(1);
            assertEquals(shownMs, fryer().loads().get(0).startByMs());
        }
    }

    @Test
    void whatIsToBeBegunNowStaysSo() {
        script.place("fries");
        long sinceMs = fryer().loads().get(0).startByMs();
        assertEquals(script.nowMs(), sinceMs);
        script.later(30);
        assertEquals(sinceMs, fryer().loads().get(0).startByMs());
    }

    @Test
    void whatGoesOnToTheLineSaysSo() {
        Order combo = script.place("combo");
        Order dog = script.place("hot dog");
        StationLoads grill = loads("grill");
        List<Share> shares =
                grill.loads().stream().flatMap(load -> load.shares().stream()).toList();
        Share sausage = shares.stream().filter(s -> s.number() == combo.number()).findFirst().get();
        assertEquals("Line", sausage.feeds().en());
        Share other = shares.stream().filter(s -> s.number() == dog.number()).findFirst().get();
        assertEquals("", other.feeds().en());
        assertEquals("Línea", grill.feeds().get(script.part(combo, 1, "grill").id()).es());
        assertEquals(1, grill.feeds().size());
    }

    @Test
    void loadsAfterTheNextTwoAreCounted() {
        for (int n = 0; n < 5; n++) {
            script.place("4 fries");
        }
        assertEquals(2, fryer().loads().size());
        assertEquals(3, fryer().more());
        Load first = fryer().loads().get(0);
        script.must(new KitchenCommand.Together(KitchenCommand.Move.START, first.moved()));
        assertEquals(3, fryer().loads().size());
        assertEquals(2, fryer().more());
    }

    @Test
    void aStationThatMakesPiecesOneByOneHasNone() {
        script.place("beef, cola");
        assertTrue(LoadRows.of(script.menu().station("drinks"), scene(), times).isEmpty());
    }

    private StationLoads fryer() {
        return loads("fryer");
    }

    private StationLoads loads(String station) {
        return LoadRows.of(script.menu().station(station), scene(), times).orElseThrow();
    }

    private Scene scene() {
        return Scene.of(
                script.menu(),
                script.stand()::menuOf,
                script.stand().kitchen(),
                script.stand().pans(),
                script.nowMs());
    }
}
