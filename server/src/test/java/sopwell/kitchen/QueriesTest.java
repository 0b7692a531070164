package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand.BringBack;
import sopwell.kitchen.KitchenCommand.Seen;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.kitchen.Query.State;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.Reason;

/** What stations ask, what the counter answers, and what that does to parts and money. */
class QueriesTest {
    private static final List<String> DIP = List.of("dry", "wet", "dipped", "twice");

    private final Script script = new Script();
    private final Kitchen kitchen = script.stand().kitchen();

    @Test
    void theCounterSeesWhatIsAskedOldestFirst() {
        Order first = script.place("beef dipped");
        Order second = script.place("beef dry");
        QueryId late = asked(second, DIP);
        QueryId later = asked(first, List.of());
        assertEquals(
                List.of(late, later), kitchen.queries().open().stream().map(Query::id).toList());
        assertEquals(second.id() + ".1.line.1", late.toString());
        assertEquals(Optional.of(late), QueryId.read(late.toString()));
    }

    @Test
    void anAnswerThatChangesIsAnEditAndAnAnswerInOneDecision() {
        Order order = script.place("beef dipped, 2 beef dry hot");
        QueryId query = asked(order, 2, DIP);
        Decision answer = script.later(40).decide(answer(query, "dipped"));

        assertEquals(2, answer.events().size());
        OrderChanged changed = (OrderChanged) answer.events().get(0);
        assertEquals(2, changed.version());
        assertEquals(List.of(1, 2), changed.lines().stream().map(l -> l.line()).toList());
        assertEquals(2, changed.lines().get(1).quantity());
        assertTrue(changed.lines().get(1).selection().has("dipped"));
        assertTrue(changed.lines().get(1).selection().has("hot"));
        assertEquals(new QueryEvent.QueryAnswered(query, true, ""), answer.events().get(1));
        assertTrue(script.part(order, 2, "line").before().isPresent(), "the cell is changed");
        assertFalse(script.part(order, 1, "line").isUnseen(), "the other line is left alone");
        assertEquals(40_000, kitchen.queries().find(query).orElseThrow().waitedMs());
    }

    @Test
    void anAnswerChangesTheTotalsByThePriceOfWhatIsChosen() {
        Order order = script.place("3 beef dipped");
        QueryId query = asked(order, List.of("provolone", "mozzarella", "cheddar-sauce"));
        script.must(answer(query, "provolone"));
        assertEquals(3 * (790 + 75), script.now(order).totals().subtotalCents());
        assertEquals(
                script.now(order).totals().subtotalCents() + script.now(order).totals().taxCents(),
                script.now(order).totals().totalCents());
    }

    @Test
    void asItStandsIsAnAnswerWithoutAnEditAndMustBeSeenBeforeThePartGoesUp() {
        Order order = script.place("beef dipped");
        PartId part = part(order, 1);
        QueryId query = asked(order, DIP);
        Decision answer = script.decide(answer(query));
        assertEquals(List.of(new QueryEvent.QueryAnswered(query, false, "")), answer.events());
        assertEquals(1, script.now(order).version());

        assertTrue(kitchen.isUnseen(script.part(order, 1, "line")));
        assertEquals(Reason.CHANGE_UNSEEN, reason(script.decide(new Up(part))));
        script.must(new Seen(part));
        assertEquals(Reason.NOTHING_TO_SEE, reason(script.decide(new Seen(part))));
        script.must(new Up(part));
    }

    @Test
    void whatIsOrderedAlreadyIsAnAnswerWithoutAnEdit() {
        Order order = script.place("beef dipped");
        QueryId query = asked(order, DIP);
        assertEquals(
                List.of(new QueryEvent.QueryAnswered(query, false, "")),
                script.decide(answer(query, "dipped")).events());
    }

    @Test
    void anAnswerMayTakeTheWholeGroupAwayOrOverrideARefusal() {
        Order order = script.place("beef hot sweet, beef no hot");
        List<String> peppers = List.of("hot", "sweet");
        QueryId first = asked(order, 1, peppers);
        script.must(new QueryCommand.Answer(first, Optional.of(List.of()), ""));
        QueryId second = asked(order, 2, peppers);
        script.must(answer(second, "hot"));
        Order now = script.now(order);
        assertFalse(now.lines().get(0).selection().has("hot"));
        assertFalse(now.lines().get(0).selection().has("sweet"));
        assertTrue(now.lines().get(1).selection().has("hot"));
        assertEquals(List.of(), now.lines().get(1).selection().refused());
        assertEquals(3, now.version());
    }

    @Test
    void whoeverEditsWhatWasAskedAboutHasAnswered() {
        Order order = script.place("beef dipped hot");
        QueryId query = asked(order, DIP);
        script.change(order, "beef dipped sweet");
        assertTrue(kitchen.queries().find(query).orElseThrow().isOpen(), "that was not asked");
        script.change(script.now(order), "beef dry sweet");
        assertEquals(State.ANSWERED, kitchen.queries().find(query).orElseThrow().state());
        assertTrue(kitchen.queries().find(query).orElseThrow().changed());

        Order other = script.place("beef, fries");
        QueryId right = asked(other, List.of());
        script.change(other, "2 beef, fries");
        assertEquals(State.ANSWERED, kitchen.queries().find(right).orElseThrow().state());
    }

    @Test
    void aQueryLapsesWhenItsPartGoesUpOrLeavesTheOrder() {
        Order up = script.place("beef");
        Order gone = script.place("beef, fries");
        Order begun = script.place("beef, fries");
        Order voided = script.place("beef");
        QueryId[] ids = {
            asked(up, DIP), asked(gone, DIP), asked(begun, DIP), asked(voided, List.of())
        };
        script.must(new Up(part(up, 1)));
        script.change(gone, "fries");
        script.must(new Start(part(begun, 1)));
        script.change(begun, "fries");
        script.must(new OrderCommand.VoidOrder(voided.id(), 0, "gone"));
        for (QueryId id : ids) {
            assertEquals(State.LAPSED, kitchen.queries().find(id).orElseThrow().state(), "" + id);
            assertEquals(Reason.QUERY_LAPSED, reason(script.decide(answer(id))));
        }
        assertEquals(0, kitchen.queries().open().size());
        script.must(new BringBack(part(up, 1)));
        assertEquals(part(up, 1) + ".2", asked(up, DIP).toString());
    }

    @Test
    void theDaysQueriesEndWithItAndAnotherDateStartsWithNone() {
        Order order = script.place("beef");
        QueryId query = asked(order, DIP);
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        script.must(new OrderCommand.CloseDay());
        script.must(new OrderCommand.OpenDay());
        assertEquals(1, kitchen.queries().all().size(), "the same date goes on");
        script.must(new OrderCommand.CloseDay());
        assertEquals(Reason.QUERY_LAPSED, reason(script.decide(answer(query))));
        script.at("2026-01-15T11:00").must(new OrderCommand.OpenDay());
        assertEquals(0, kitchen.queries().all().size());
        assertEquals(Reason.UNKNOWN_QUERY, reason(script.decide(answer(query))));
    }

    @Test
    void theDayThatIsCutTakesItsOpenQueriesAlong() {
        Order order = script.place("beef");
        QueryId query = asked(order, DIP);
        script.at("2026-01-15T04:00").must(new OrderCommand.CutDay());
        assertEquals(State.LAPSED, kitchen.queries().find(query).orElseThrow().state());
        assertEquals(Reason.DAY_CLOSED, reason(script.decide(ask(part(order, 1), DIP))));
    }

    @Test
    void refusesWhatCannotBeAsked() {
        Order order = script.place("beef, hot dog");
        PartId beef = part(order, 1);
        assertEquals(Reason.UNKNOWN_PART, reason(script.decide(ask(part(order, 9), List.of()))));
        for (List<String> wrong :
                List.of(
                        List.of("mustard"),
                        List.of("gravel"),
                        List.of("dry", "hot"),
                        List.of("dry", "gravel"))) {
            Decision decision = script.decide(ask(beef, wrong));
            assertEquals(Reason.QUESTION_WRONG, reason(decision), wrong.toString());
        }
        Question tooLong = new Question(List.of(), "x".repeat(81));
        assertEquals(
                Reason.TEXT_TOO_LONG, reason(script.decide(new QueryCommand.Ask(beef, tooLong))));
        Question unclear = new Question(List.of(), "a\nb");
        assertEquals(
                Reason.TEXT_UNCLEAR, reason(script.decide(new QueryCommand.Ask(beef, unclear))));
        asked(order, DIP);
        assertEquals(Reason.QUERY_OPEN, reason(script.decide(ask(beef, List.of()))));

        Order handed = script.place("beef");
        script.must(new Up(part(handed, 1)));
        assertEquals(Reason.ALREADY_UP, reason(script.decide(ask(part(handed, 1), DIP))));
        script.must(new OrderCommand.Hand(handed.id()));
        assertEquals(Reason.ORDER_HANDED, reason(script.decide(ask(part(handed, 1), DIP))));
        Order begun = script.place("beef");
        script.must(new Start(part(begun, 1)));
        script.must(new OrderCommand.VoidOrder(begun.id(), 0, "gone"));
        assertEquals(Reason.PART_CANCELLED, reason(script.decide(ask(part(begun, 1), DIP))));
    }

    @Test
    void refusesWhatCannotBeAnswered() {
        Order order = script.place("beef");
        QueryId query = asked(order, DIP);
        for (List<String> wrong :
                List.of(
                        List.of("hot"),
                        List.of("gravel"),
                        List.of("dry", "wet"),
                        List.<String>of()))
            assertEquals(
                    Reason.ANSWER_WRONG,
                    reason(script.decide(new QueryCommand.Answer(query, Optional.of(wrong), ""))),
                    wrong.toString());
        assertEquals(
                Reason.TEXT_TOO_LONG,
                reason(
                        script.decide(
                                new QueryCommand.Answer(query, Optional.empty(), "x".repeat(81)))));
        script.must(answer(query));
        assertEquals(Reason.QUERY_ANSWERED, reason(script.decide(answer(query, "dry"))));
        assertEquals(
                Reason.UNKNOWN_QUERY,
                reason(script.decide(answer(new QueryId(part(order, 1), 7)))));
        QueryId right = asked(order, List.of());
        assertEquals(Reason.ANSWER_WRONG, reason(script.decide(answer(right, "dry"))));
    }

    @Test
    void theChoicesOfAQuestionStandWithWhatIsOrderedFirstAndWhatTheyCost() {
        Order order = script.place("2 beef sweet provolone");
        QueryId peppers = asked(order, List.of("hot", "sweet"));
        assertEquals(
                List.of("sweet 0", "hot 0", "hot and sweet 0", "no peppers 0"), choices(peppers));
        script.must(answer(peppers));
        QueryId cheese = asked(order, List.of("provolone", "cheddar-sauce"));
        List<String> choices = choices(cheese);
        assertEquals("provolone 0", choices.get(0));
        assertTrue(choices.contains("no cheese -150"), choices.toString());
        script.must(answer(cheese));
        assertEquals(List.of(), choices(asked(order, List.of())));
    }

    private List<String> choices(QueryId id) {
        Query query = kitchen.queries().find(id).orElseThrow();
        Order order = script.stand().orders().find(id.part().order()).orElseThrow();
        return Answers.of(script.menu(), query, order.lines().get(0)).stream()
                .map(choice -> choice.name().en() + " " + choice.moreCents())
                .toList();
    }

    private QueryId asked(Order order, List<String> options) {
        return asked(order, 1, options);
    }

    private QueryId asked(Order order, int line, List<String> options) {
        PartId part = part(order, line);
        script.must(ask(part, options));
        return kitchen.queries().openOn(part).orElseThrow().id();
    }

    private static QueryCommand ask(PartId part, List<String> options) {
        return new QueryCommand.Ask(part, new Question(options, ""));
    }

    private static QueryCommand answer(QueryId query, String... options) {
        Optional<List<String>> chosen =
                options.length == 0 ? Optional.empty() : Optional.of(List.of(options));
        return new QueryCommand.Answer(query, chosen, "");
    }

    private static PartId part(Order order, int line) {
        return new PartId(order.id(), line, "line");
    }
}
