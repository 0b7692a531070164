package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.menu.LocalText;
import sopwell.mix.MixTable.Way;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** What a day sold, how it was made, and how long guests waited. */
class DayMixTest {
    private final Script script = new Script();

    @Test
    void countsDipByPeppersWithCheeseBeside() {
        script.place("2 beef dipped hot, beef dry provolone sweet");
        script.place("large beef dipped both, beef");
        Order gone = script.place("9 beef twice");
        script.must(new OrderCommand.VoidOrder(gone.id(), 0, "guest left"));

        DayMix mix = mix();

        assertEquals(2, mix.orders());
        assertEquals(1, mix.voids());
        assertEquals(5, mix.pieces());
        MixTable beef = mix.tables().get(0);
        assertEquals(List.of("dry", "wet", "dipped"), beef.rows().stream().map(Way::id).toList());
        assertEquals(
                List.of("hot", "sweet", "hot+sweet", "none"),
                beef.columns().stream().map(Way::id).toList());
        assertEquals(
                List.of(List.of(0, 1, 0, 0), List.of(0, 0, 0, 1), List.of(2, 0, 1, 0)),
                beef.pieces());
        assertEquals(5, beef.total());
        assertEquals(
                new LocalText("hot and sweet", "picante y dulce"), beef.columns().get(2).name());
        assertEquals("provolone", beef.besides().get(0).way().id());
        assertEquals(1, beef.besides().get(0).pieces());
        assertEquals(4, beef.besides().get(1).pieces());
    }

    @Test
    void itemsAddUpToTheSubtotal() {
        script.place("2 beef, large beef extra, fries, 3 cola");
        DayMix mix = mix();
        assertEquals(mix.subtotalCents(), mix.items().stream().mapToLong(ItemCount::cents).sum());
        assertEquals(mix.pieces(), mix.items().stream().mapToInt(ItemCount::pieces).sum());
        assertEquals("regular", mix.items().get(0).size());
    }

    @Test
    void anEditedOrderCountsAsItIsNow() {
        Order order = script.place("beef dipped");
        script.change(order, "beef dry");
        assertEquals("dry", mix().tables().get(0).rows().get(0).id());
        assertEquals(1, mix().tables().get(0).total());
    }

    @Test
    void waitsAreFromPlacedToUpAndToHanded() {
        Order quick = script.place("beef");
        script.later(240);
        script.allUp(quick);
        script.later(60).must(new OrderCommand.Hand(quick.id()));
        Order slow = script.place("beef");
        script.later(400);
        script.allUp(slow);
        script.place("beef");

        DayWaits waits = DayWaits.of(script.stand().orders(), script.stand().kitchen(), 360);

        assertEquals(new WaitSummary(2, 320, 400), waits.toUp());
        assertEquals(new WaitSummary(1, 300, 300), waits.toHanded());
        assertEquals(1, waits.withinTarget());
    }

    private DayMix mix() {
        return DayMix.of(
                script.stand().orders().date().orElseThrow(),
                script.stand().orders(),
                script.menu(),
                script.stand()::menuOf);
    }
}
