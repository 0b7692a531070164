package sopwell.prep.plan;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.prep.plan.Kitchen.step;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.Kitchen.Routing;
import sopwell.prep.plan.PlanAsk.Busy;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.Terms;
import sopwell.prep.plan.PrepPlan.Kind;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Watch;

/** Plans whose times can be worked out by hand. */
class BackwardTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final DayOfWeek[] OPEN = {
        TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY, SUNDAY
    };
    static final Terms TERMS = new Terms(Map.of(), Map.of(), 4, 360, LocalTime.of(9, 0));

    /**
     * Computed with an independent implementation: the clocks go forward in the night before the
     * day of need. Chilling takes 22 hours that really pass, so it starts by 10:30 on Saturday and
     * not 11:30; roasting must end while somebody is there, so all ends on Friday at 22:00.
     */
    @Test
    void roastsBeforeTheClocksGoForward() {
        PlanAsk ask = roast("2026-03-04T08:00", "2026-03-08T10:15", CHICAGO, 2);
        PrepPlan plan = Planner.plan(ask);
        assertEquals(List.of(), PlanChecker.faults(ask, plan));
        assertEquals(2, plan.tasks().size());
        Task second = plan.tasks().get(0);
        Task first = plan.tasks().get(1);
        assertEquals(at("2026-03-06T17:00", CHICAGO), first.start());
        assertEquals(at("2026-03-06T20:00", CHICAGO), first.steps().get(0).until());
        assertEquals(at("2026-03-06T22:00", CHICAGO), first.steps().get(1).until());
        assertEquals(at("2026-03-08T09:30", CHICAGO), first.steps().get(2).from());
        assertEquals(at("2026-03-06T13:45", CHICAGO), second.start());
        assertEquals(at("2026-03-06T16:45", CHICAGO), second.steps().get(0).until());
        Duration chilled =
                Duration.between(first.steps().get(1).until(), first.steps().get(2).from());
        assertEquals(Duration.ofMinutes(34 * 60 + 30), chilled);
    }

    /** In autumn the night has 25 hours: 22 of them fit behind a roast of Saturday morning. */
    @Test
    void waitsAreElapsedTimeInEveryZone() {
        String[][] cases = {
            {"America/Chicago", "2026-10-28T08:00", "2026-11-01T10:15", "22:00"},
            {"America/New_York", "2026-03-04T08:00", "2026-03-08T10:15", "34:30"},
            {"Europe/Warsaw", "2026-03-25T08:00", "2026-03-29T10:15", "34:30"},
            {"Europe/Dublin", "2026-10-21T08:00", "2026-10-25T10:15", "22:00"},
            {"America/Phoenix", "2026-03-04T08:00", "2026-03-08T10:15", "35:30"}
        };
        for (String[] one : cases) {
            PlanAsk ask = roast(one[1], one[2], ZoneId.of(one[0]), 1);
            PrepPlan plan = Planner.plan(ask);
            assertEquals(List.of(), PlanChecker.faults(ask, plan), one[0]);
            Task task = plan.tasks().get(0);
            Duration chilled =
                    Duration.between(task.steps().get(1).until(), task.steps().get(2).from());
            String[] time = one[3].split(":", 2);
            long minutes = Long.parseLong(time[0]) * 60 + Long.parseLong(time[1]);
            assertEquals(minutes, chilled.toMinutes(), one[0]);
        }
    }

    /** Ripening for 60 hours, mixing 90 minutes, for Saturday at 10:30: by Wednesday at 21:00. */
    @Test
    void relishRipensThroughTheClosedDay() {
        Instant needed = at("2026-03-07T10:30", CHICAGO);
        assertEquals(at("2026-03-04T21:00", CHICAGO), relish(60).tasks().get(0).start());
        assertEquals(needed, relish(60).tasks().get(0).ready());
        assertEquals(at("2026-03-03T21:00", CHICAGO), relish(84).tasks().get(0).start());
    }

    private static PrepPlan relish(int hours) {
        Kitchen kitchen =
                new Kitchen()
                        .open("07:00", "22:30", OPEN)
                        .keep("relish", 0, Optional.empty())
                        .keep("vegetables", 0, Optional.empty());
        Routing routing =
                new Routing(
                        1,
                        "mix",
                        List.of(
                                step("mix", 90).attended(true, true).done(),
                                step("ripen", hours * 60).watched(Watch.MATURE).done()));
        kitchen.make("relish", "vegetables", 900, 1_000, routing);
        return Planner.plan(
                ask(
                        kitchen.book(),
                        "2026-02-28T08:00",
                        "2026-03-07T10:30",
                        CHICAGO,
                        lots("relish", 1)));
    }

    /** One open day. */
    static PlanAsk ask(RecipeBook book, String now, String needed, ZoneId zone, DemandFor demand) {
        Instant readyBy = at(needed, zone);
        LocalDate date = LocalDate.ofInstant(readyBy, zone);
        return new PlanAsk(
                book,
                zone,
                at(now, zone),
                List.of(new OpenDay(date, readyBy)),
                List.of(demand),
                List.of(),
                List.of(),
                TERMS);
    }

    /** A sure demand of lots of 1,000 g. */
    static DemandFor lots(String of, int lots) {
        return new DemandFor(of, List.of(1_000.0 * lots), List.of(0.0), 0);
    }

    private static PlanAsk roast(String now, String needed, ZoneId zone, int lots) {
        return ask(roastBook(120), now, needed, zone, lots("sliced", lots));
    }

    private static RecipeBook roastBook(int coolMinutes) {
        Routing routing =
                new Routing(
                        1,
                        "slice",
                        List.of(
                                step("roast", 180).on("oven", 1).attended(true, true).done(),
                                step("cool", coolMinutes)
                                        .then(22 * 60, 72 * 60)
                                        .attended(false, true)
                                        .watched(Watch.COOL)
                                        .done(),
                                step("slice", 45).attended(true, true).done()));
        return new Kitchen()
                .open("07:00", "22:00", DayOfWeek.values())
                .resource("oven", 1, 15)
                .keep("sliced", 3, Optional.empty())
                .keep("beef", 0, Optional.empty())
                .make("sliced", "beef", 1_500, 1_000, routing)
                .book();
    }

    @Test
    void coolingThatTakesTooLongIsRefused() {
        PlanAsk ask =
                ask(
                        roastBook(361),
                        "2026-03-04T08:00",
                        "2026-03-08T10:15",
                        CHICAGO,
                        lots("sliced", 1));
        PrepPlan plan = Planner.plan(ask);
        assertEquals(List.of(), plan.tasks());
        assertTrue(plan.warnings().stream().anyMatch(w -> w.kind() == Kind.COOLING_TOO_LONG));
    }

    @Test
    void ovenThatIsOutIsNamedAndWhatFitsIsStillPlanned() {
        PlanAsk whole = roast("2026-03-06T07:00", "2026-03-08T10:15", CHICAGO, 5);
        PrepPlan plan = Planner.plan(whole);
        assertEquals(List.of(), PlanChecker.faults(whole, plan));
        assertEquals(4, plan.tasks().size());
        PrepPlan.Warning missed = missed(plan);
        assertEquals(Optional.of(Hindrance.RESOURCE), missed.hindrance());
        assertEquals(5, missed.asked());
        assertTrue(missed.readyAt().orElseThrow().isAfter(missed.by().orElseThrow()));
        Busy out =
                new Busy(
                        "oven",
                        1,
                        at("2026-03-06T00:00", CHICAGO),
                        at("2026-03-07T12:00", CHICAGO));
        PlanAsk none =
                new PlanAsk(
                        whole.book(),
                        CHICAGO,
                        whole.now(),
                        whole.days(),
                        whole.demand(),
                        List.of(),
                        List.of(out),
                        TERMS);
        PrepPlan without = Planner.plan(none);
        assertEquals(List.of(), without.tasks());
        assertEquals(Optional.of(Hindrance.RESOURCE), missed(without).hindrance());
    }

    @Test
    void whatIsTooLateSaysWhenItCouldBeReady() {
        PrepPlan plan = Planner.plan(roast("2026-03-07T12:00", "2026-03-08T10:15", CHICAGO, 1));
        assertEquals(List.of(), plan.tasks());
        PrepPlan.Warning missed = missed(plan);
        assertEquals(Optional.of(Hindrance.TIME), missed.hindrance());
        Instant soonest = at("2026-03-07T12:00", CHICAGO).plus(Duration.ofMinutes(27 * 60 + 45));
        assertEquals(Optional.of(soonest), missed.readyAt());
    }

    /** The oven takes one, for three hours, and is turned round in fifteen minutes. */
    @Test
    void ofTwoThatAreTooLateTheSecondWaitsForTheFirst() {
        PrepPlan plan = Planner.plan(roast("2026-03-07T12:00", "2026-03-08T10:15", CHICAGO, 2));
        Instant first = at("2026-03-07T12:00", CHICAGO).plus(Duration.ofMinutes(27 * 60 + 45));
        assertEquals(
                List.of(Optional.of(first), Optional.of(first.plus(Duration.ofMinutes(195)))),
                plan.warnings().stream()
                        .filter(w -> w.kind() == Kind.NOT_IN_TIME)
                        .map(PrepPlan.Warning::readyAt)
                        .toList());
    }

    private static PrepPlan.Warning missed(PrepPlan plan) {
        return plan.warnings().stream()
                .filter(w -> w.kind() == Kind.NOT_IN_TIME)
                .findFirst()
                .orElseThrow();
    }

    static Instant at(String local, ZoneId zone) {
        return LocalDateTime.parse(local).atZone(zone).toInstant();
    }
}
