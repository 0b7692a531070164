package sopwell.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.menu.Out;
import sopwell.menu.Shortage;

/** What is out can't be sold, and what is counted goes down. */
class OutsTest {
    private static final Out PROVOLONE = Out.option("provolone");
    private static final Out LARGE_BEEF = Out.size("beef", "large");
    private static final Out FRIES = Out.item("fries");

    private final Script script = new Script();

    @Test
    void refusesWhatIsOutAndNamesWhatIsNearIt() {
        script.must(new OutCommand.Mark(PROVOLONE, 0, 0));
        script.must(new OutCommand.Mark(Out.option("mozzarella"), 0, 0));

        Refusal refusal = place("beef dipped provolone").refusal().orElseThrow();

        assertEquals(Reason.OUT, refusal.reason());
        assertEquals(List.of("option:provolone", "option:cheddar-sauce"), refusal.args());
        assertFalse(place("beef dipped cheddar sauce").isRefused());
    }

    @Test
    void aSizeThatIsOutLeavesTheOtherSizes() {
        script.must(new OutCommand.Mark(LARGE_BEEF, 0, 0));

        Refusal refusal = place("large beef dipped").refusal().orElseThrow();

        assertEquals(
                List.of("size:beef.large", "size:beef.small", "size:beef.regular"), refusal.args());
        assertFalse(place("beef dipped").isRefused());
        assertFalse(place("large cola").isRefused());
    }

    @Test
    void aDefaultThatIsOutIsRefusedUntilTheGuestChoosesAnother() {
        script.must(new OutCommand.Mark(Out.option("wet"), 0, 0));
        assertEquals(Reason.OUT, reason(place("beef")), "a beef is wet by itself");
        assertFalse(place("beef dipped").isRefused());
    }

    @Test
    void countsDownWithEveryPieceAndUpWithEveryPieceTakenOff() {
        script.must(new OutCommand.Mark(FRIES, 5, 0));
        Order order = script.place("2 fries, beef dipped");
        assertEquals(3, left(FRIES));
        assertFalse(script.change(order, "3 fries").isRefused());
        assertEquals(2, left(FRIES));
        Decision more = script.change(script.now(order), "6 fries");
        assertEquals(Reason.TOO_FEW_LEFT, reason(more));
        assertEquals(
                List.of("item:fries", "2", "3"), more.refusal().orElseThrow().args().subList(0, 3));
        assertFalse(script.change(script.now(order), "5 fries").isRefused());
        assertEquals(0, left(FRIES));
        assertEquals(Reason.OUT, reason(place("fries")));
        assertFalse(script.change(script.now(order), "4 fries, beef dry").isRefused());
        assertEquals(1, left(FRIES));
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "left"));
        assertEquals(5, left(FRIES));
    }

    @Test
    void anOrderKeepsWhatItHadWhenItWasMarkedOut() {
        Order order = script.place("beef dipped provolone");
        script.must(new OutCommand.Mark(PROVOLONE, 0, 0));
        assertFalse(script.change(order, "beef dry provolone").isRefused());
        assertEquals(Reason.OUT, reason(script.change(script.now(order), "2 beef dry provolone")));
    }

    @Test
    void isSoldAgainWhenItsTimeIsOverOrSomebodySaysSo() {
        script.must(new OutCommand.Mark(FRIES, 0, 20));
        assertEquals(Reason.OUT, reason(place("fries")));
        script.later(20 * 60 - 1);
        assertEquals(Reason.OUT, reason(place("fries")));
        assertTrue(script.decide(new OutCommand.LiftDue()).events().isEmpty());
        script.later(1);
        assertFalse(place("fries").isRefused(), "also before anything has lifted it");
        assertEquals(1, script.decide(new OutCommand.LiftDue()).events().size());
        assertTrue(script.stand().outs().all().isEmpty());

        script.must(new OutCommand.Mark(FRIES, 0, 0));
        script.must(new OutCommand.Lift(FRIES));
        assertFalse(place("fries").isRefused());
        assertEquals(Reason.NOT_OUT, reason(script.decide(new OutCommand.Lift(FRIES))));
    }

    @Test
    void isForgottenWhenTheDayCloses() {
        script.must(new OutCommand.Mark(FRIES, 0, 0));
        script.must(new OrderCommand.CloseDay());
        assertTrue(script.stand().outs().all().isEmpty());
        assertFalse(place("fries").isRefused());
    }

    @Test
    void opensTheDayWhenNoneIsOpen() {
        assertFalse(script.stand().orders().isDayOpen());
        script.must(new OutCommand.Mark(FRIES, 0, 0));
        assertTrue(script.stand().orders().isDayOpen());
    }

    @Test
    void refusesMarksThatSayNothing() {
        assertEquals(Reason.NOT_ON_MENU, reason(mark(Out.item("soup"), 0, 0)));
        assertEquals(Reason.NOT_ON_MENU, reason(mark(Out.size("fries", "large"), 0, 0)));
        assertEquals(Reason.LEFT_RANGE, reason(mark(FRIES, -1, 0)));
        assertEquals(Reason.LEFT_RANGE, reason(mark(FRIES, 10_000, 0)));
        assertEquals(Reason.MINUTES_RANGE, reason(mark(FRIES, 0, -5)));
        assertEquals(Reason.MINUTES_RANGE, reason(mark(FRIES, 0, 1_441)));
        assertTrue(script.stand().outs().all().isEmpty());
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        for (Out out : List.of(PROVOLONE, LARGE_BEEF, FRIES)) {
            assertEquals(out, Out.read(out.toString()).orElseThrow());
        }
        for (String odd : List.of("", "fries", "item:", "size:beef", "size:.large", "size:beef.")) {
            assertTrue(Out.read(odd).isEmpty(), odd);
        }
    }

    /** The law: what was left when it was counted, less what orders now have more than then. */
    @Test
    void theCountIsWhatTheOrdersSay() {
        for (long seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            Script day = new Script();
            List<Order> orders = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                orders.add(day.place((1 + random.nextInt(3)) + " fries, beef dipped"));
            }
            int before = ordered(day);
            int counted = random.nextInt(15);
            day.must(new OutCommand.Mark(FRIES, counted, 0));
            for (int step = 0; step < 25; step++) {
                boolean fresh = orders.isEmpty() || random.nextBoolean();
                String call = random.nextInt(5) + 1 + (random.nextBoolean() ? " fries" : " cola");
                if (fresh) {
                    Decision placed = day.decide(new OrderCommand.Place("", true, day.asked(call)));
                    if (!placed.isRefused()) {
                        orders.add(List.copyOf(day.stand().orders().all()).get(orders.size()));
                    }
                } else {
                    Order one = day.now(orders.get(random.nextInt(orders.size())));
                    if (random.nextInt(4) == 0) {
                        day.decide(new OrderCommand.VoidOrder(one.id(), 0, "left"));
                    } else {
                        day.change(one, call);
                    }
                }
                int left = day.stand().outs().find(FRIES).orElseThrow().left();
                assertEquals(counted - (ordered(day) - before), left, "seed " + seed);
                assertTrue(left >= 0, "seed " + seed);
            }
        }
    }

    private static int ordered(Script day) {
        return day.stand().orders().all().stream()
                .filter(order -> !order.isVoid())
                .flatMap(order -> order.lines().stream())
                .filter(line -> line.selection().item().equals("fries"))
                .mapToInt(OrderLine::quantity)
                .sum();
    }

    private int left(Out out) {
        return script.stand().outs().find(out).map(Shortage::left).orElseThrow();
    }

    private Decision mark(Out out, int left, int minutes) {
        return script.decide(new OutCommand.Mark(out, left, minutes));
    }

    private Decision place(String call) {
        return script.decide(new OrderCommand.Place("", true, script.asked(call)));
    }
}
