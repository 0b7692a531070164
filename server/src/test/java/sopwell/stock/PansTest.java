package sopwell.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.boards.PanRows;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenCommand.BringBack;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.menu.Pan;
import sopwell.menu.Selection;
import sopwell.orders.Order;
import sopwell.orders.Reason;

/**
 * What is left in the pans. The demo's beef pan holds 4,500 g; a regular beef takes 150 g and half
 * as much again with extra, a large 200 g, a combo 100 g; the next batch takes 25 minutes.
 */
class PansTest {
    private final Script script = new Script();

    @Test
    void anAmountIsTheSizesOwnThenAPercentageThenWhatModifiersAdd() {
        Pan beef = script.menu().pan("beef").orElseThrow();
        assertEquals(150, beef.amount(selection("beef")));
        assertEquals(200, beef.amount(selection("large beef")));
        assertEquals(225, beef.amount(selection("beef extra")));
        assertEquals(105, beef.amount(selection("beef easy")));
        assertEquals(150, beef.amount(selection("combo extra")));
        assertEquals(0, beef.amount(selection("fries")));
        Pan jus = script.menu().pan("jus").orElseThrow();
        assertEquals(0, jus.amount(selection("beef dry")));
        assertEquals(30, jus.amount(selection("sausage wet")));
        assertEquals(120, jus.amount(selection("beef twice")));
        assertEquals(240, jus.amount(selection("jus cup")));
    }

    @Test
    void nothingIsKnownOfAPanUntilSomebodyFillsIt() {
        script.place("beef");
        assertFalse(beef().isKnown());
        assertEquals(150, beef().promised());
        script.must(new PanCommand.Refill("beef", 100));
        assertEquals(4_500, beef().left());
        script.later(60).must(new PanCommand.Refill("beef", 50));
        assertEquals(2_250, beef().left());
        assertEquals(script.nowMs(), beef().refilledAtMs());
    }

    @Test
    void whatGoesUpTakesFromThePanAndWhatIsBroughtBackDidNot() {
        script.must(new PanCommand.Refill("beef", 100));
        Order order = script.place("2 beef, large beef, fries");
        assertEquals(4_500, beef().left());
        assertEquals(500, beef().promised());
        script.must(new Up(script.part(order, 1, "line").id()));
        assertEquals(4_200, beef().left());
        assertEquals(200, beef().promised());
        script.must(new BringBack(script.part(order, 1, "line").id()));
        assertEquals(4_500, beef().left());
        assertEquals(500, beef().promised());
    }

    @Test
    void aSandwichThatIsMadeAgainTakesAgain() {
        script.must(new PanCommand.Refill("beef", 100));
        Order order = script.place("beef");
        script.allUp(order);
        assertFalse(script.change(order, "beef dry").isRefused());
        assertEquals(4_350, beef().left());
        assertEquals(150, beef().promised());
        script.allUp(order);
        assertEquals(4_200, beef().left());
        assertEquals(0, beef().promised());
    }

    @Test
    void theNextBatchIsDueAtThePaceOfSalesLessItsReheating() {
        script.must(new PanCommand.Refill("beef", 100));
        for (int n = 0; n < 10; n++) {
            script.allUp(script.place("beef"));
            script.later(120);
        }
        // 1,500 g in 20 minutes leave 3,000 g for 40 more; 25 before that is in 15 minutes.
        PanLeft left = beef();
        assertEquals(3_000, left.left());
        assertEquals(20, left.builds());
        assertEquals(script.nowMs() + 15 * 60_000, left.startByMs());
        assertFalse(left.isDue(script.nowMs()));
        assertTrue(left.isDue(script.nowMs() + 15 * 60_000));
    }

    @Test
    void openOrdersAreTakenOffFirst() {
        script.must(new PanCommand.Refill("beef", 10));
        script.place("2 beef");
        assertEquals(450, beef().left());
        assertEquals(1, beef().builds());
        script.place("beef");
        assertEquals(0, beef().builds());
        assertTrue(beef().isDue(script.nowMs()));
    }

    @Test
    void oneLargeOrderDoesNotMakeThePace() {
        script.must(new PanCommand.Refill("beef", 100));
        for (int n = 0; n < 10; n++) {
            script.allUp(script.place("beef"));
            script.later(120);
        }
        long beforeMs = beef().startByMs();
        script.allUp(script.place("12 beef"));
        // Its own 1,800 g are gone, but the pace counts it as three orders.
        assertEquals(1_200, beef().left());
        long lastsMs = 1_200L * 20 * 60_000 / (1_500 + 450);
        assertEquals(script.nowMs() + lastsMs - 25 * 60_000, beef().startByMs());
        assertTrue(beef().startByMs() < beforeMs);
    }

    @Test
    void onlyTheLastFortyFiveMinutesTellThePace() {
        script.must(new PanCommand.Refill("beef", 100));
        script.allUp(script.place("10 beef"));
        script.later(46 * 60);
        assertEquals(0, beef().startByMs());
        assertFalse(beef().isDue(script.nowMs()));
        script.allUp(script.place("beef"));
        long lastsMs = 2_850L * 45 * 60_000 / 150;
        assertEquals(script.nowMs() + lastsMs - 25 * 60_000, beef().startByMs());
    }

    @Test
    void anotherDayBeginsWithPansThatNobodyHasFilled() {
        script.must(new PanCommand.Refill("beef", 100));
        script.at("2026-01-15T11:00").place("beef");
        assertFalse(beef().isKnown());
    }

    @Test
    void whatCannotBeIsRefused() {
        assertEquals(
                Reason.UNKNOWN_PAN,
                Script.reason(script.decide(new PanCommand.Refill("gravy", 100))));
        for (int percent : new int[] {-1, 0, 101, 1_000}) {
            assertEquals(
                    Reason.LEVEL_RANGE,
                    Script.reason(script.decide(new PanCommand.Refill("beef", percent))));
        }
    }

    @Test
    void theSameEventsGiveTheSamePans() {
        script.must(new PanCommand.Refill("beef", 80));
        script.must(new PanCommand.Refill("jus", 100));
        Order first = script.place("3 beef dipped hot, combo");
        script.later(90).must(new Up(script.part(first, 1, "line").id()));
        script.later(60).place("jus cup, beef extra");
        Stand again = new Stand(Script.SETTINGS);
        script.log().forEach(again::apply);
        assertEquals(all(script.stand()), all(again));
        assertTrue(all(again).get(0).left() < 3_600);
    }

    private List<PanLeft> all(Stand stand) {
        return PanRows.all(script.menu(), stand.kitchen(), stand.pans(), script.nowMs());
    }

    private PanLeft beef() {
        return all(script.stand()).get(0);
    }

    private Selection selection(String call) {
        return script.asked(call).get(0).selection();
    }
}
