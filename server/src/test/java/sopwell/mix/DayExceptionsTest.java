package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.kitchen.PartId;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;
import sopwell.kitchen.RemakeReason;
import sopwell.mix.DayExceptions.RemakeCount;
import sopwell.mix.DayExceptions.VoidCount;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** What counts as not having gone straight. */
class DayExceptionsTest {
    private final Script script = new Script();

    @Test
    void aDayOnWhichAllWentStraightHasNothingToSay() {
        script.allUp(script.place("beef, fries"));
        assertTrue(exceptions().isQuiet());
    }

    @Test
    void countsQuestionsAndHowLongStationsWaitedForAnswers() {
        for (int seconds : new int[] {10, 20, 60}) {
            QueryId query = asked(script.place("beef dipped"));
            script.later(seconds).must(new QueryCommand.Answer(query, Optional.empty(), ""));
        }
        Order lapsed = script.place("beef");
        asked(lapsed);
        script.later(500).must(new Up(part(lapsed)));
        asked(script.place("beef"));

        DayExceptions day = exceptions();
        assertEquals(5, day.asked());
        assertEquals(1, day.lapsed());
        assertEquals(3, day.waits().measured());
        assertEquals(20, day.waits().medianSeconds());
        assertEquals(0, day.changes());
    }

    @Test
    void tellsChangesAfterStartFromThoseBefore() {
        Order early = script.place("beef dipped, fries");
        script.change(early, "beef dry, fries");
        Order late = script.place("beef dipped, fries");
        script.must(new Start(part(late)));
        script.change(late, "beef dipped, 2 fries");
        assertEquals(0, exceptions().changesAfterStart(), "what was begun was left alone");
        script.change(script.now(late), "beef dry, 2 fries");
        Order taken = script.place("beef, fries");
        script.must(new Start(part(taken)));
        script.change(taken, "fries");
        Order asked = script.place("beef dipped");
        script.must(new Start(part(asked)));
        QueryId query = asked(asked);
        script.must(new QueryCommand.Answer(query, Optional.of(List.of("dry")), ""));

        DayExceptions day = exceptions();
        assertEquals(5, day.changes());
        assertEquals(3, day.changesAfterStart());
    }

    @Test
    void countsVoidOrdersByReasonMostFirst() {
        for (String reason : List.of("gone", "Fell on the floor", "gone", "mind")) {
            Order order = script.place("beef");
            if (reason.equals("mind")) {
                script.must(new Start(part(order)));
            }
            script.must(new OrderCommand.VoidOrder(order.id(), 0, reason));
        }
        DayExceptions day = exceptions();
        assertEquals(
                List.of(
                        new VoidCount("gone", 2),
                        new VoidCount("Fell on the floor", 1),
                        new VoidCount("mind", 1)),
                day.voids());
        assertEquals(1, day.voidsAfterStart());
    }

    private QueryId asked(Order order) {
        Question question = new Question(List.of("dry", "dipped"), "");
        script.must(new QueryCommand.Ask(part(order), question));
        return script.stand().kitchen().queries().openOn(part(order)).orElseThrow().id();
    }

    private static PartId part(Order order) {
        return new PartId(order.id(), 1, "line");
    }

    @Test
    void severalDaysAreAddedUpAndTheirWaitsSummedUpTogether() {
        DayExceptions first =
                new DayExceptions(
                        2,
                        0,
                        List.of(10_000L, 30_000L),
                        1,
                        0,
                        0,
                        List.of(new VoidCount("gone", 2), new VoidCount("mind", 1)),
                        List.of(new RemakeCount(RemakeReason.COLD, 1)));
        DayExceptions second =
                new DayExceptions(
                        4,
                        1,
                        List.of(20_000L),
                        2,
                        1,
                        1,
                        List.of(new VoidCount("mind", 3)),
                        List.of(new RemakeCount(RemakeReason.DROPPED, 2)));
        DayExceptions both = DayExceptions.NONE.plus(first).plus(second);
        assertEquals(
                new DayExceptions(
                        6,
                        1,
                        List.of(10_000L, 20_000L, 30_000L),
                        3,
                        1,
                        1,
                        List.of(new VoidCount("mind", 4), new VoidCount("gone", 2)),
                        List.of(
                                new RemakeCount(RemakeReason.DROPPED, 2),
                                new RemakeCount(RemakeReason.COLD, 1))),
                both);
        assertEquals(20, both.waits().medianSeconds());
        assertEquals(both, second.plus(first));
    }

    private DayExceptions exceptions() {
        return DayExceptions.of(script.stand().orders(), script.stand().kitchen());
    }
}
