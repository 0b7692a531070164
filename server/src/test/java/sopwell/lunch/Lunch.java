package sopwell.lunch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.SplittableRandom;
import sopwell.desk.Script;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.OrderStage;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PartState;
import sopwell.kitchen.Router;
import sopwell.kitchen.Schedule;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** One lunch, from the first guest to the last order handed. Not thread-safe. */
final class Lunch {
    private static final long LOOK_MS = 5_000;

    private final Script script;
    private final Truth truth;
    private final boolean byStartTimes;
    private final Draws draws;
    private final Map<String, List<Asked>> asked = new HashMap<>();
    private final long beginMs;
    private final PriorityQueue<Due> due = new PriorityQueue<>();
    private final Set<PartId> taken = new HashSet<>();
    private final Set<PartId> made = new HashSet<>();
    private final Map<String, Integer> free = new HashMap<>();
    private final Map<String, Integer> leaving = new HashMap<>();
    private final Set<String> looking = new HashSet<>();
    private final Map<String, Integer> ordinals = new HashMap<>();
    private final List<Served> served = new ArrayList<>();
    private final List<Watcher> watchers = new ArrayList<>();
    private long events;

    /** Something that happens at a time. */
    private record Due(long atMs, long order, Runnable what) implements Comparable<Due> {
        @Override
        public int compareTo(Due other) {
            int byTime = Long.compare(atMs, other.atMs);
            return byTime != 0 ? byTime : Long.compare(order, other.order);
        }
    }

    /** Is told of everything that happens. */
    interface Watcher {
        default void placed(Order order) {}

        default void left(long nowMs) {}

        default void handed(Order order) {}
    }

    /**
     * A lunch that begins now.
     *
     * @param byStartTimes whether fryer and grill begin what the schedule says when it says so,
     *     rather than the oldest as soon as a machine is free
     */
    Lunch(Script script, Truth truth, boolean byStartTimes, Draws draws) {
        this.script = script;
        this.truth = truth;
        this.byStartTimes = byStartTimes;
        this.draws = draws;
        this.beginMs = script.nowMs();
        for (Station station : script.menu().stations()) {
            free.put(station.id(), station.hands());
        }
        free.put("line", truth.lineHands());
    }

    void watch(Watcher watcher) {
        watchers.add(watcher);
    }

    /** Every order that was handed, in the order of handing. */
    List<Served> run() {
        List<Guests.Coming> all = Guests.all(draws, truth);
        for (Guests.Coming coming : all) {
            at(beginMs + coming.afterMs(), () -> place(coming.call()));
        }
        for (Truth.Coming coming : truth.comings()) {
            at(beginMs + coming.minute() * 60_000L, () -> come(coming.by()));
        }
        while (!due.isEmpty()) {
            Due next = due.poll();
            script.atMs(next.atMs());
            next.what().run();
        }
        if (served.size() != all.size()) {
            throw new AssertionError(served.size() + " of " + all.size() + " were handed");
        }
        return served;
    }

    private Kitchen kitchen() {
        return script.stand().kitchen();
    }

    private void at(long atMs, Runnable what) {
        due.add(new Due(atMs, events++, what));
    }

    private void after(double seconds, Runnable what) {
        at(script.nowMs() + Math.max(1, Math.round(seconds * 1000)), what);
    }

    private void come(int by) {
        if (by > 0) {
            free.merge("line", by, Integer::sum);
        } else if (free.get("line") > 0) {
            free.merge("line", by, Integer::sum);
            watchers.forEach(watcher -> watcher.left(script.nowMs()));
        } else {
            leaving.merge("line", -by, Integer::sum);
        }
        look("line");
    }

    private void place(String call) {
        List<Asked> lines = asked.computeIfAbsent(call, script::asked);
        Order order = script.place(new OrderCommand.Place("", true, lines));
        ordinals.put(order.id(), ordinals.size());
        watchers.forEach(watcher -> watcher.placed(order));
        script.menu().stations().forEach(station -> look(station.id()));
    }

    /** People at a station look at what there is to do. */
    private void look(String station) {
        Station bench = script.menu().station(station);
        if (bench.load() > 1 && byStartTimes) {
            followStartTimes(bench);
        } else {
            takeOldest(bench);
        }
    }

    private void takeOldest(Station bench) {
        while (free.get(bench.id()) > 0) {
            List<Part> load = new ArrayList<>();
            int room = bench.load();
            for (Part part : kitchen().inSight(bench.id())) {
                boolean fits = load.isEmpty() || part.making().quantity() <= room;
                if (room > 0 && fits && canBegin(part)) {
                    load.add(part);
                    room = bench.load() == 1 ? 0 : room - part.making().quantity();
                }
            }
            if (load.isEmpty()) {
                return;
            }
            begin(bench, load);
        }
    }

    private void followStartTimes(Station bench) {
        boolean waits = kitchen().inSight(bench.id()).stream().anyMatch(this::canBegin);
        if (waits && free.get(bench.id()) > 0) {
            Schedule schedule = Schedule.of(kitchen(), script.menu(), script.nowMs());
            for (Schedule.Load load : schedule.loads(bench.id())) {
                List<Part> parts = new ArrayList<>();
                for (Schedule.Share share : load.shares()) {
                    Part part = kitchen().find(share.part()).orElseThrow();
                    if (canBegin(part)) {
                        parts.add(part);
                    }
                }
                boolean now = !load.started() && load.startByMs() <= script.nowMs() + 1_000;
                if (now && !parts.isEmpty() && free.get(bench.id()) > 0) {
                    begin(bench, parts);
                }
            }
        }
        if (waits && looking.add(bench.id())) {
            after(
                    LOOK_MS / 1000.0,
                    () -> {
                        looking.remove(bench.id());
                        look(bench.id());
                    });
        }
    }

    private boolean canBegin(Part part) {
        if (part.state() == PartState.UP || taken.contains(part.id())) {
            return false;
        }
        for (String first :
                Router.waitsFor(script.menu(), part.making().selection(), part.id().station())) {
            if (!made.contains(new PartId(part.id().order(), part.id().line(), first))) {
                return false;
            }
        }
        return true;
    }

    /** One hand or machine takes these on. */
    private void begin(Station bench, List<Part> load) {
        free.merge(bench.id(), -1, Integer::sum);
        double workSeconds = 0;
        for (Part part : load) {
            taken.add(part.id());
            workSeconds = Math.max(workSeconds, seconds(part));
        }
        SplittableRandom random = on(load.get(0), "reach");
        double reach =
                truth.reachSeconds() == 0
                        ? 0
                        : Draws.logNormal(random, truth.reachSeconds(), Truth.REACH_CV);
        after(reach, () -> load.forEach(this::tapStart));
        after(reach + workSeconds, () -> done(bench, load));
    }

    private void tapStart(Part part) {
        if (on(part, "tap").nextDouble() < truth.startTaps()) {
            tapWhatGoesIn(part);
            script.must(new KitchenCommand.Start(part.id()));
        }
    }

    private void done(Station bench, List<Part> load) {
        for (Part part : load) {
            made.add(part.id());
            SplittableRandom random = on(part, "late");
            boolean late = random.nextDouble() < truth.lateUps();
            double lateSeconds = late ? 60 + 180 * random.nextDouble() : 0;
            if (late) {
                after(lateSeconds, () -> up(part));
            } else {
                up(part);
            }
        }
        if (leaving.getOrDefault(bench.id(), 0) > 0) {
            leaving.merge(bench.id(), -1, Integer::sum);
            watchers.forEach(watcher -> watcher.left(script.nowMs()));
        } else {
            free.merge(bench.id(), 1, Integer::sum);
        }
        script.menu().stations().forEach(station -> look(station.id()));
    }

    /** What is there to be built with is up, whoever forgot to say so. */
    private void tapWhatGoesIn(Part part) {
        for (Part first : kitchen().feeding(part)) {
            up(first);
        }
    }

    private void up(Part made) {
        Part part = kitchen().find(made.id()).orElseThrow();
        if (part.state() == PartState.UP) {
            return;
        }
        tapWhatGoesIn(part);
        script.must(new KitchenCommand.Up(part.id()));
        Order order = script.stand().orders().find(part.id().order()).orElseThrow();
        if (kitchen().stage(order) == OrderStage.UP) {
            SplittableRandom random = draws.on("pass", ordinals.get(order.id()));
            after(
                    Draws.logNormal(random, Truth.PASS_SECONDS, Truth.PASS_CV),
                    () -> hand(order.id()));
        }
    }

    private void hand(String id) {
        script.must(new OrderCommand.Hand(id));
        Order order = script.stand().orders().find(id).orElseThrow();
        List<Long> agesMs = new ArrayList<>();
        for (Part part : kitchen().parts(id)) {
            if (script.menu().item(part.making().selection().item()).isShortLived()) {
                agesMs.add(order.handedAtMs() - part.upAtMs());
            }
        }
        served.add(
                new Served(
                        order.placedAtMs() - beginMs,
                        order.handedAtMs() - order.placedAtMs(),
                        order.quote(),
                        agesMs));
        watchers.forEach(watcher -> watcher.handed(order));
    }

    /** How long a part really takes one hand or one load. */
    private double seconds(Part part) {
        String station = part.id().station();
        Menu menu = script.menu();
        double each = Router.seconds(menu, part.making().selection(), station);
        SplittableRandom random = on(part, "work");
        return switch (station) {
            case "line" -> {
                double sum = 0;
                for (int n = 0; n < part.making().quantity(); n++) {
                    sum += lineSeconds(random, each * truth.lineFactor());
                }
                yield sum;
            }
            case "fryer" -> Draws.logNormal(random, each * Truth.FRY_FACTOR, Truth.FRY_CV);
            case "grill" -> Draws.logNormal(random, each * Truth.GRILL_FACTOR, Truth.GRILL_CV);
            default -> Draws.logNormal(random, each * part.making().quantity(), Truth.DRINKS_CV);
        };
    }

    private double lineSeconds(SplittableRandom random, double mean) {
        return switch (truth.work()) {
            case LOG_NORMAL -> Draws.logNormal(random, mean, Truth.LINE_CV);
            case EXPONENTIAL -> -mean * Math.log(1 - random.nextDouble());
            case FIXED -> mean;
        };
    }

    private SplittableRandom on(Part part, String what) {
        PartId id = part.id();
        return draws.on(what, ordinals.get(id.order()), id.line(), id.station());
    }
}
