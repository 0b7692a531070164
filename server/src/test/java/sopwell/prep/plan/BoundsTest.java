package sopwell.prep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static sopwell.prep.plan.Kitchen.step;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.Bound.Kind;
import sopwell.prep.plan.Kitchen.Routing;
import sopwell.prep.plan.PlanAsk.Busy;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.Terms;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Watch;

/** What is said to keep a task from starting later, on stands so small that it can be seen. */
class BoundsTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final String NEEDED = "2026-03-07T10:30";

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(CHICAGO).toInstant();
    }

    private static Kitchen open() {
        return new Kitchen()
                .open("07:00", "22:00", DayOfWeek.values())
                .resource("oven", 1, 0)
                .keep("stuff", 0, Optional.empty());
    }

    private static Kitchen with(Kitchen kitchen, String makes, PrepStep... steps) {
        return kitchen.keep(makes, 0, Optional.empty())
                .make(makes, "stuff", 1_000, 1_000, new Routing(1, steps[0].id(), List.of(steps)));
    }

    private static PlanAsk ask(Kitchen kitchen, String now, String needed, Busy... busy) {
        List<DemandFor> demand = new ArrayList<>();
        kitchen.book().recipes().forEach(one -> demand.add(BackwardTest.lots(one.makes(), 1)));
        Instant by = at(needed);
        return new PlanAsk(
                kitchen.book(),
                CHICAGO,
                at(now),
                List.of(new OpenDay(LocalDateTime.parse(needed).toLocalDate(), by)),
                demand,
                List.of(),
                List.of(busy),
                new Terms(Map.of(), Map.of(), 1, 360, LocalTime.of(9, 0)));
    }

    private static Task only(PlanAsk ask, String makes) {
        PrepPlan plan = Planner.plan(ask);
        assertEquals(List.of(), PlanChecker.faults(ask, plan));
        List<Task> found =
                plan.tasks().stream().filter(task -> task.makes().equals(makes)).toList();
        assertEquals(1, found.size(), plan.toString());
        return found.get(0);
    }

    @Test
    void nothingButTheNeed() {
        Kitchen kitchen = with(open(), "mix", step("mix", 60).attended(true, true).done());
        Task task = only(ask(kitchen, "2026-03-05T08:00", NEEDED), "mix");
        assertEquals(at("2026-03-07T09:30"), task.start());
        assertEquals(List.of(), task.bounds());
    }

    @Test
    void chillingAndWaitingTakeTheirTime() {
        Kitchen kitchen =
                with(
                        open(),
                        "relish",
                        step("mix", 60).then(120, 0).done(),
                        step("chill", 24 * 60).watched(Watch.MATURE).done());
        Task task = only(ask(kitchen, "2026-03-02T08:00", NEEDED), "relish");
        assertEquals(at("2026-03-06T07:30"), task.start());
        Instant start = task.start();
        assertEquals(
                List.of(
                        new Bound(
                                Kind.WAIT,
                                "mix",
                                "",
                                at("2026-03-06T08:30"),
                                at("2026-03-06T10:30"),
                                start),
                        new Bound(
                                Kind.WAIT, "chill", "", at("2026-03-06T10:30"), at(NEEDED), start)),
                task.bounds());
    }

    @Test
    void theOvenIsTaken() {
        Kitchen kitchen = with(open(), "roast", step("roast", 60).on("oven", 1).done());
        Instant from = at("2026-03-07T08:00");
        Busy busy = new Busy("oven", 1, from, at("2026-03-07T10:15"));
        Task task = only(ask(kitchen, "2026-03-05T08:00", NEEDED, busy), "roast");
        assertEquals(at("2026-03-07T07:00"), task.start());
        assertEquals(
                List.of(
                        new Bound(
                                Kind.RESOURCE,
                                "roast",
                                "oven",
                                from,
                                at("2026-03-07T10:15"),
                                at("2026-03-07T09:30"))),
                task.bounds());
    }

    @Test
    void nobodyIsInTheKitchen() {
        Kitchen kitchen = with(open(), "chop", step("chop", 60).attended(true, true).done());
        Task task = only(ask(kitchen, "2026-03-05T08:00", "2026-03-07T07:30"), "chop");
        assertEquals(at("2026-03-06T21:00"), task.start());
        Instant early = at("2026-03-07T06:30");
        assertEquals(
                List.of(new Bound(Kind.HOURS, "chop", "", early, early, early)), task.bounds());
    }

    @Test
    void allHandsAreBusy() {
        Kitchen kitchen = with(open(), "chop", step("chop", 60).hands(60).done());
        with(kitchen, "peel", step("peel", 60).hands(60).done());
        PlanAsk ask = ask(kitchen, "2026-03-05T08:00", NEEDED);
        List<Task> tasks = Planner.plan(ask).tasks();
        assertEquals(at("2026-03-07T08:30"), tasks.get(0).start());
        assertEquals(
                List.of(
                        new Bound(
                                Kind.HANDS,
                                tasks.get(0).steps().get(0).step(),
                                "",
                                at("2026-03-07T09:30"),
                                at(NEEDED),
                                at("2026-03-07T09:30"))),
                tasks.get(0).bounds());
    }

    @Test
    void severalThingsTogether() {
        Kitchen kitchen =
                new Kitchen()
                        .open("07:00", "22:00", DayOfWeek.FRIDAY)
                        .resource("oven", 1, 0)
                        .keep("stuff", 0, Optional.empty());
        PrepStep roast = step("roast", 60).on("oven", 1).attended(true, true).done();
        Busy busy = new Busy("oven", 1, at("2026-03-06T22:00"), at(NEEDED));
        Task task =
                only(ask(with(kitchen, "roast", roast), "2026-03-05T08:00", NEEDED, busy), "roast");
        assertEquals(at("2026-03-06T21:00"), task.start());
        Instant start = task.start();
        Instant otherwise = at("2026-03-07T09:30");
        assertEquals(
                List.of(new Bound(Kind.SEVERAL, "roast", "", start, start, otherwise)),
                task.bounds());
    }

    /** What may start last is placed first, and would take the only time of the other. */
    @Test
    void itMakesRoomForAnother() {
        Kitchen kitchen = with(open(), "roast", step("roast", 60).on("oven", 1).done());
        with(kitchen, "pie", step("rise", 150).done(), step("bake", 60).on("oven", 1).done());
        Task task = only(ask(kitchen, "2026-03-07T07:00", NEEDED), "roast");
        assertEquals(at("2026-03-07T07:00"), task.start());
        assertEquals(
                List.of(
                        new Bound(
                                Kind.EARLY,
                                "roast",
                                "",
                                task.start(),
                                task.start(),
                                at("2026-03-07T08:30"))),
                task.bounds());
    }

    @Test
    void whatAnotherTaskTakesIsReadyWhenThatStarts() {
        Kitchen kitchen = open().keep("jus", 0, Optional.empty());
        with(kitchen, "stock", step("simmer", 90).done());
        Routing routing = new Routing(1, "reduce", List.of(step("reduce", 45).done()));
        kitchen.make("jus", "stock", 1_000, 1_000, routing);
        PlanAsk ask = ask(kitchen, "2026-03-05T08:00", NEEDED);
        PlanAsk jusOnly =
                new PlanAsk(
                        ask.book(),
                        ask.zone(),
                        ask.now(),
                        ask.days(),
                        List.of(BackwardTest.lots("jus", 1)),
                        List.of(),
                        List.of(),
                        ask.terms());
        Task jus = only(jusOnly, "jus");
        assertEquals(at("2026-03-07T09:45"), jus.start());
        assertEquals(jus.start(), only(jusOnly, "stock").why().by());
        assertEquals(at("2026-03-07T08:15"), only(jusOnly, "stock").start());
    }
}
