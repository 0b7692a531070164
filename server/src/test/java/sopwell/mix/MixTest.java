package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.menu.LocalText;
import sopwell.mix.MixTable.Way;
import sopwell.money.Discount;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** What a day sold, how it was made, and how long guests waited. */
class MixTest {
    private final Script script = new Script();

    @Test
    void countsDipByPeppersWithCheeseBeside() {
        script.place("2 beef dipped hot, beef dry provolone sweet");
        script.place("large beef dipped both, beef");
        Order gone = script.place("9 beef twice");
        script.must(new OrderCommand.VoidOrder(gone.id(), 0, "guest left"));

        Mix mix = mix();

        assertEquals(2, mix.counts().orders());
        assertEquals(1, mix.counts().voids());
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
        Mix mix = mix();
        assertEquals(
                mix.counts().subtotalCents(),
                mix.items().stream().mapToLong(ItemCount::cents).sum());
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

        GuestWaits waits = waits().guests();

        assertEquals(new WaitSummary(2, 320, 400), waits.toUp());
        assertEquals(new WaitSummary(1, 300, 300), waits.toHanded());
        assertEquals(new Share(1, 2), waits.within());
    }

    @Test
    void aPartOfTheDayCountsWhatWasTakenInIt() {
        script.place("beef dipped, fries");
        int first = halfHour();
        script.later(1_800);
        script.place("2 beef dry");
        LocalDate date = date();
        Mix second = mix(new Period(date, date, first + 1, first + 2));
        assertEquals(1, second.counts().orders());
        assertEquals(2, second.pieces());
        assertEquals(0, second.table("fries").stream().count());
        assertEquals(new Share(2, 2), second.table("beef").orElseThrow().rowShare(0));
        assertEquals(3 + 1, mix().pieces());
        assertEquals(0, mix(new Period(date, date, 0, first)).days());
    }

    @Test
    void aStaffMealStandsApart() {
        script.place("beef dipped");
        Order meal = script.place("2 beef dry, cola");
        script.must(
                new OrderCommand.SetDiscount(
                        meal.id(),
                        0,
                        new Discount(Discount.Kind.STAFF_MEAL, 0, 100_000, "shift meal")));
        Mix mix = mix();
        assertEquals(1, mix.counts().orders());
        assertEquals(1, mix.counts().staffOrders());
        assertEquals(3, mix.staffPieces());
        assertEquals(1, mix.pieces());
        assertEquals(mix.counts().subtotalCents(), mix.items().get(0).cents());
    }

    /** Days added up are the sum of each, whatever is asked of them. */
    @Test
    void daysAddUp() {
        script.place("2 beef dipped hot, fries");
        script.place("combo dry sweet mozzarella");
        DayTally one = tally(date());
        DayTally other = new DayTally(date().plusDays(7), one.halfHours());
        DayTally apart = new DayTally(date().plusDays(9), one.halfHours());
        Period week = new Period(date(), date().plusDays(7), 0, HalfHours.END_MAX);
        Mix both = Mix.of(week, List.of(one, other, apart), names());
        Mix single = mix();
        assertEquals(2, both.days());
        assertEquals(2 * single.pieces(), both.pieces());
        assertEquals(2 * single.counts().orders(), both.counts().orders());
        assertEquals(2 * single.counts().subtotalCents(), both.counts().subtotalCents());
        for (MixTable table : single.tables()) {
            MixTable twice = both.table(table.item()).orElseThrow();
            assertEquals(table.rows(), twice.rows());
            assertEquals(2 * table.total(), twice.total());
            assertEquals(2 * table.rowTotal(0), twice.rowTotal(0));
        }
    }

    @Test
    void whatNoMenuHasAnyMoreIsCalledByItsId() {
        DayTally.Sold old =
                new DayTally.Sold(
                        "porridge", "bowl", List.of("milk=oat", "top=none"), false, 3, 900);
        DayTally day =
                new DayTally(
                        date(),
                        List.of(new DayTally.HalfHour(20, DayTally.Counts.NONE, List.of(old))));
        Mix mix = Mix.of(Period.day(date()), List.of(day), names());
        assertEquals(new LocalText("porridge", "porridge"), mix.items().get(0).name());
        MixTable table = mix.table("porridge").orElseThrow();
        assertEquals("oat", table.rows().get(0).name().en());
        assertEquals(new LocalText("milk", "milk"), table.down());
        assertEquals(new LocalText("none", "nada"), table.columns().get(0).name());
    }

    private Mix mix() {
        return mix(Period.day(date()));
    }

    private Mix mix(Period period) {
        return Mix.of(period, List.of(tally(period.from())), names());
    }

    private DayTally tally(LocalDate date) {
        return DayTally.of(
                date,
                script.stand().orders(),
                script.stand().settings().zone(),
                script.stand()::menuOf);
    }

    private Names names() {
        return new Names(List.of(script.menu()));
    }

    private LocalDate date() {
        return script.stand().orders().date().orElse(LocalDate.of(2026, 1, 7));
    }

    private int halfHour() {
        return HalfHours.of(date(), script.stand().settings().zone(), script.nowMs());
    }

    private Waits waits() {
        WaitTally tally =
                WaitTally.of(
                        date(),
                        script.stand().orders(),
                        script.stand().kitchen(),
                        script.stand().settings().zone());
        Names names = new Names(List.of(script.menu()));
        return Waits.of(Period.day(date()), List.of(tally), 360, names);
    }
}
