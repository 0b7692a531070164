package sopwell.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.audit.AuditEvent;
import sopwell.audit.Who;
import sopwell.boards.Board;
import sopwell.boards.CounterBoard;
import sopwell.boards.PartRow;
import sopwell.boards.StationBoard;
import sopwell.desk.Answer;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PassEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.money.Totals;
import sopwell.orders.OrderEvent;
import sopwell.orders.OutEvent;
import sopwell.orders.PaperEvent;
import sopwell.orders.StandSettings;
import sopwell.prep.past.PlanEvent;
import sopwell.stock.PanEvent;
import sopwell.till.TillEvent;
import sopwell.web.DayFigures;
import sopwell.web.live.BoardHub;
import sopwell.web.live.SteppedScreens;
import sopwell.web.live.SteppedScreens.Looker;

/** The validator finds what is wrong, and says which invariant: faults that were put in. */
class PlantedFaultsTest {
    private static final int DAYS = 8;
    private static final int STEPS = 110;
    private static final List<Day> PLAYED = new ArrayList<>();

    /** One of them, with some rows on a board. */
    private static List<Recorded> log;

    private static StandSettings settings;

    private record Day(List<Recorded> log, StandSettings settings) {}

    @BeforeAll
    static void playSomeDays() {
        for (int seed = 0; seed < DAYS; seed++) {
            try (Store store = Store.memory()) {
                DaySim day = new DaySim(seed, store).play(STEPS);
                List<Recorded> events = new ArrayList<>();
                day.log().read(1, day.log().lastSeq(), events::add);
                PLAYED.add(new Day(events, day.settings()));
            }
        }
    }

    @BeforeEach
    void takeABusyDay() {
        for (Day day : PLAYED) {
            take(day);
            Stand stand = stand(log);
            if (stand.orders().openCount() > 1 && board(stand).isPresent()) {
                return;
            }
        }
        throw new AssertionError("no day ends with rows on a board");
    }

    private static void take(Day day) {
        log = day.log();
        settings = day.settings();
    }

    @Test
    void findsNothingInADayThatWentWell() {
        assertEquals(Set.of(), found(judge(log, log)));
    }

    @Test
    void namesWhatAStandHasMissed() {
        assertMissed(Invariant.PARTS, KitchenEvent.PartUp.class);
        assertMissed(Invariant.PARTS, KitchenEvent.PartStarted.class);
        assertMissed(Invariant.ORDERS, OrderEvent.OrderHanded.class);
        assertMissed(Invariant.MIX, OrderEvent.OrderVoided.class);
        assertMissed(Invariant.PRICES, OrderEvent.OrderDiscounted.class);
        assertMissed(Invariant.DUES, TillEvent.OrderPaid.class);
        assertMissed(Invariant.REPORT, TillEvent.OrderPaid.class);
        assertMissed(Invariant.TILLS, TillEvent.TillOpened.class);
        assertMissed(Invariant.QUERIES, QueryEvent.QueryAsked.class);
        assertMissed(Invariant.OUTS, OutEvent.OutMarked.class);
        assertMissed(Invariant.PASS, PassEvent.BagsCounted.class);
        assertMissed(Invariant.PANS, PanEvent.PanRefilled.class);
        assertMissed(Invariant.PLANS, PlanEvent.PlanKept.class);
    }

    @Test
    void namesWhatMustNotHappen() {
        Recorded placed = last(OrderEvent.OrderPlaced.class);
        OrderEvent.OrderPlaced order = (OrderEvent.OrderPlaced) placed.event();
        List<Recorded> before = until(placed);
        assertBooks(Invariant.WHOLE, before, new OrderEvent.OrderHanded(order.order()));
        assertBooks(Invariant.PASS, before, new PassEvent.NumberCalled(order.order(), 1));
        assertBooks(Invariant.NUMBERS, before, Changed.with(order, "order", order.order() + "9"));
        Event twice = new PaperEvent.PaperPrinted(order.order(), "slip", 4);
        assertBooks(Invariant.PAPERS, before, twice);
        assertBooks(Invariant.PARTS, before, new KitchenEvent.PartUp(Changed.part("20200101")));
        Totals totals = order.totals();
        Totals dearer =
                new Totals(
                        totals.subtotalCents() + 1,
                        totals.discountCents(),
                        totals.taxCents(),
                        totals.taxIncluded(),
                        totals.totalCents() + 1);
        List<Recorded> without = before.subList(0, before.size() - 1);
        assertBooks(Invariant.PRICES, without, Changed.with(order, "totals", dearer));
    }

    @Test
    void namesAPlanThatIsKeptTwice() {
        for (Day day : PLAYED) {
            take(day);
            if (log.stream().anyMatch(one -> one.event() instanceof PlanEvent.PlanKept)) {
                Recorded kept = last(PlanEvent.PlanKept.class);
                assertBooks(Invariant.PLANS, until(kept), kept.event());
                return;
            }
        }
        throw new AssertionError("no day kept a plan");
    }

    @Test
    void namesWhatNobodyAnswersFor() {
        Recorded done = last(AuditEvent.DoneBy.class);
        List<Recorded> before = until(done).subList(0, (int) done.seq() - 1);
        Validator validator = fed(before);
        Who who = ((AuditEvent.DoneBy) done.event()).who();
        validator.askedBy(done.key(), Optional.of(who));
        assertEquals(Set.of(Invariant.AUDIT), found(validator));
        Validator right = fed(until(done));
        right.askedBy(done.key(), Optional.of(who));
        assertEquals(Set.of(), found(right));
        right.askedBy(done.key(), Optional.of(new Who("s9", "", "", "line")));
        assertEquals(Set.of(Invariant.AUDIT), found(right));
        assertBooks(Invariant.AUDIT, until(done), new AuditEvent.DoneBy(who));
    }

    @Test
    void namesWhatIsWrongWithTheLog() {
        Recorded last = log.get(log.size() - 1);
        List<Recorded> gap = new ArrayList<>(log.subList(0, log.size() - 1));
        gap.add(
                new Recorded(
                        last.seq() + 1, last.atMs(), last.key(), last.ordinal(), last.event()));
        assertTrue(found(judge(gap, log)).contains(Invariant.LOG));
        List<Recorded> early = new ArrayList<>(log.subList(0, log.size() - 1));
        early.add(new Recorded(last.seq(), 1, last.key(), last.ordinal(), last.event()));
        assertTrue(found(judge(early, log)).contains(Invariant.LOG));
        List<Recorded> reused = new ArrayList<>(log.subList(0, log.size() - 1));
        reused.add(new Recorded(last.seq(), last.atMs(), log.get(0).key(), 0, last.event()));
        assertTrue(found(judge(reused, log)).contains(Invariant.LOG));
    }

    @Test
    void namesWhatIsWrongOnABoard() {
        Stand stand = stand(log);
        StationBoard board = board(stand).orElseThrow();
        assertBoard(
                Invariant.DIGITS, stand, withFirstRow(board, "digit", board.rows().get(1).digit()));
        assertBoard(Invariant.PARTS, stand, withRows(board, board.rows().subList(1, 3)));
        assertBoard(Invariant.PARTS, stand, withFirstRow(board, "quantity", 98));
        CounterBoard counter = (CounterBoard) screens().board(stand, BoardHub.COUNTER);
        Object shorter = Changed.with(counter, "rows", counter.rows().subList(1, 2));
        assertBoard(Invariant.ORDER_BOARDS, stand, (Board) shorter);
        List<PartRow> turned = new ArrayList<>(board.rows());
        turned.add(0, turned.remove(1));
        Validator validator = fed(log);
        validator.check(List.of(board));
        validator.check(List.of(withRows(board, turned)));
        assertTrue(found(validator).contains(Invariant.PLACES));
    }

    @Test
    void namesWhatWasAnsweredWrong() {
        Recorded last = log.get(log.size() - 1);
        Validator validator = fed(log);
        validator.answered(
                last.key(), new Answer(Answer.Outcome.DONE, List.of(), Optional.empty()));
        assertEquals(Set.of(Invariant.ANSWERS), found(validator));
    }

    @Test
    void namesAStandThatIsNotTheSame() {
        Validator validator = fed(log);
        Stand whole = stand(log);
        Stand short1 = stand(log.subList(0, log.size() - 1));
        validator.same(whole, stand(log), Invariant.REPLAY);
        assertEquals(Set.of(), found(validator));
        validator.same(whole, short1, Invariant.REPLAY);
        validator.same(whole, short1, Invariant.FOLLOWER);
        assertEquals(Set.of(Invariant.REPLAY, Invariant.FOLLOWER), found(validator));
    }

    @Test
    void namesAScreenThatIsBehind() {
        Recorded placed = last(OrderEvent.OrderPlaced.class);
        SteppedScreens screens = screens();
        Looker looker =
                screens.join(stand(log.subList(0, (int) placed.seq() - 1)), BoardHub.COUNTER);
        screens.settle();
        Validator validator = fed(log);
        validator.check(looker, screens.board(stand(until(placed)), BoardHub.COUNTER));
        assertEquals(Set.of(Invariant.SCREENS), found(validator));
    }

    private static SteppedScreens screens() {
        return new SteppedScreens(new SplittableRandom(1), "epoch", new SimClock(0));
    }

    /** Somewhere: what only says again what is known makes no difference when it is missed. */
    private static void assertMissed(Invariant invariant, Class<? extends Event> type) {
        for (Day day : PLAYED) {
            take(day);
            for (Recorded missed : day.log()) {
                List<Recorded> books = until(missed);
                List<Recorded> short1 = books.subList(0, books.size() - 1);
                if (type.isInstance(missed.event())
                        && found(judge(books, short1)).contains(invariant)) {
                    return;
                }
            }
        }
        throw new AssertionError(type.getSimpleName() + " was missed, and no " + invariant);
    }

    private static void assertBooks(Invariant invariant, List<Recorded> before, Object event) {
        Recorded last = before.get(before.size() - 1);
        List<Recorded> books = new ArrayList<>(before);
        books.add(new Recorded(last.seq() + 1, last.atMs(), "planted", 0, (Event) event));
        Validator validator = fed(books);
        assertTrue(found(validator).contains(invariant), validator.complaints()::toString);
    }

    private static void assertBoard(Invariant invariant, Stand stand, Board board) {
        Validator validator = fed(log);
        validator.check(stand);
        assertEquals(Set.of(), found(validator));
        validator.check(List.of(board));
        assertTrue(found(validator).contains(invariant), validator.complaints()::toString);
    }

    private static Optional<StationBoard> board(Stand stand) {
        SteppedScreens screens = screens();
        return stand.menu().stations().stream()
                .map(station -> (StationBoard) screens.board(stand, station.id()))
                .filter(board -> board.rows().size() >= 3)
                .findFirst();
    }

    private static StationBoard withRows(StationBoard board, List<PartRow> rows) {
        return (StationBoard) Changed.with(board, "rows", rows);
    }

    private static StationBoard withFirstRow(StationBoard board, String what, Object value) {
        List<PartRow> rows = new ArrayList<>(board.rows());
        rows.set(0, (PartRow) Changed.with(rows.get(0), what, value));
        return withRows(board, rows);
    }

    private static Validator judge(List<Recorded> books, List<Recorded> applied) {
        Validator validator = fed(books);
        Stand stand = stand(applied);
        validator.check(stand);
        if (stand.orders().date().isPresent()) {
            validator.check(DayFigures.of(stand).mix());
        }
        return validator;
    }

    private static Validator fed(List<Recorded> events) {
        Validator validator = new Validator(settings);
        events.forEach(validator::take);
        return validator;
    }

    private static Stand stand(List<Recorded> events) {
        Stand stand = new Stand(settings);
        events.forEach(stand::apply);
        return stand;
    }

    private static Set<Invariant> found(Validator validator) {
        return validator.complaints().stream()
                .map(Complaints.Complaint::invariant)
                .collect(Collectors.toSet());
    }

    private static Recorded last(Class<? extends Event> type) {
        return log.stream()
                .filter(recorded -> type.isInstance(recorded.event()))
                .reduce((earlier, later) -> later)
                .orElseThrow();
    }

    private static List<Recorded> until(Recorded last) {
        return log.subList(0, (int) last.seq());
    }
}
