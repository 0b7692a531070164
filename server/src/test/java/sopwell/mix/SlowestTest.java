package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PassCommand;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;
import sopwell.kitchen.RemakeReason;
import sopwell.mix.OrderStory.What;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** The orders that took longest, and what happened to them. */
class SlowestTest {
    private final Script script = new Script();

    @Test
    void anOrdersStoryIsToldStepByStep() {
        Order order = script.place("beef dipped, fries");
        PartId beef = new PartId(order.id(), 1, "line");
        PartId fries = new PartId(order.id(), 2, "fryer");
        script.later(60).must(new KitchenCommand.Start(beef));
        script.later(10)
                .must(new QueryCommand.Ask(beef, new Question(List.of("dry", "dipped"), "")));
        QueryId query = script.stand().kitchen().queries().openOn(beef).orElseThrow().id();
        script.later(20).must(new QueryCommand.Answer(query, Optional.of(List.of("dry")), ""));
        script.must(new KitchenCommand.Seen(beef));
        script.later(30).must(new KitchenCommand.Up(fries));
        script.later(10)
                .must(new KitchenCommand.Remake(List.of(fries), 1, RemakeReason.DROPPED, "tray"));
        script.later(60).must(new KitchenCommand.Up(fries));
        script.must(new KitchenCommand.Up(beef));
        script.later(5).must(new PassCommand.CallNumber(order.id()));
        script.later(5).must(new OrderCommand.Hand(order.id()));

        OrderStory story = slowest(10).get(0);

        assertEquals(190, story.waitedSeconds());
        assertEquals(
                List.of(
                        What.CALLED,
                        What.STARTED,
                        What.ASKED,
                        What.CHANGED,
                        What.ANSWERED_CHANGED,
                        What.UP,
                        What.REMADE,
                        What.UP,
                        What.UP,
                        What.NUMBER_CALLED,
                        What.HANDED),
                story.steps().stream().map(OrderStory.Step::what).toList());
        OrderStory.Step remade = story.steps().get(6);
        assertEquals("fryer", remade.station());
        assertEquals("fries", remade.item());
        assertEquals(1, remade.pieces());
        assertEquals(Optional.of(RemakeReason.DROPPED), remade.why());
        assertEquals("tray", remade.words());
        assertEquals(130_000, remade.atMs() - order.takenAtMs());
    }

    @Test
    void theLongestWaitsComeFirstAndOnlyThoseThatAreWhole() {
        Order quick = up(script.place("beef"), 60);
        Order slow = up(script.place("beef"), 300);
        Order gone = up(script.place("beef"), 900);
        script.must(new OrderCommand.VoidOrder(gone.id(), 0, "gone"));
        Order again = up(script.place("beef"), 600);
        script.must(new OrderCommand.Hand(again.id()));
        PartId beef = new PartId(again.id(), 1, "line");
        script.must(new KitchenCommand.Remake(List.of(beef), 1, RemakeReason.COLD, ""));
        script.place("beef");
        assertEquals(
                List.of(slow.id(), quick.id()),
                slowest(10).stream().map(story -> story.order().id()).toList());
        assertEquals(1, slowest(1).size());
    }

    private Order up(Order order, int seconds) {
        script.later(seconds);
        script.allUp(order);
        return order;
    }

    private List<OrderStory> slowest(int most) {
        Slowest slowest = new Slowest();
        script.log().forEach(slowest::add);
        return slowest.of(script.stand().orders(), script.stand().kitchen(), most);
    }
}
