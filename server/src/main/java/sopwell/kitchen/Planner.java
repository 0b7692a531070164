package sopwell.kitchen;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.menu.Station;

/**
 * Makes a schedule by list scheduling (Graham 1966): whenever a hand is free it takes the oldest
 * work that can be begun. First everything is begun as soon as possible, which says when each order
 * can be whole; then short-lived parts are held back so that they come up with their order's
 * slowest part, and the rest is dispatched again around them. Not thread-safe: for one schedule.
 */
final class Planner {
    /** Alike on one line, this many are made by one hand one behind the other; more are shared. */
    static final int RUN_PIECES = 4;

    static final long NEVER = Long.MAX_VALUE;

    /** Beyond so many parts at a station their order does not matter, only how much they are. */
    private static final int PARTS_MAX = 150;

    private final Kitchen kitchen;
    private final long nowMs;
    private final List<Bench> benches = new ArrayList<>();

    private Planner(Kitchen kitchen, Menu menu, long nowMs) {
        this.kitchen = kitchen;
        this.nowMs = nowMs;
        for (Station station : menu.stations()) {
            benches.add(new Bench(station, kitchen.handsAtWork(station, nowMs), nowMs));
        }
    }

    /** What is to be begun when; of very long queues only the beginning. */
    static Schedule schedule(Kitchen kitchen, Menu menu, long nowMs) {
        Planner planner = new Planner(kitchen, menu, nowMs);
        for (Bench bench : planner.benches) {
            for (Work work : kitchen.open().at(bench.id())) {
                if (bench.jobs().size() == PARTS_MAX) {
                    break;
                }
                bench.add(planner.job(work, bench));
            }
        }
        planner.join();
        planner.dispatch();
        if (planner.holdBack()) {
            planner.dispatch();
        }
        return planner.result();
    }

    /** How long it will be until these parts are all up if they come behind everything open. */
    static long wholeMs(Kitchen kitchen, Menu menu, List<Work> parts, long nowMs) {
        Planner planner = new Planner(kitchen, menu, nowMs);
        for (Bench bench : planner.benches) {
            if (kitchen.open().count(bench.id()) > PARTS_MAX) {
                bench.busy(1000 * kitchen.backlogSeconds(bench.id()));
            } else {
                for (Work work : kitchen.open().at(bench.id())) {
                    bench.add(planner.job(work, bench));
                }
            }
        }
        List<Job> own = new ArrayList<>();
        for (Work work : parts) {
            Bench bench = planner.bench(work.part().id().station()).orElseThrow();
            Job job = planner.job(work, bench);
            own.add(job);
            bench.add(job);
        }
        planner.join();
        planner.dispatch();
        long upMs = nowMs;
        for (Job job : own) {
            upMs = Math.max(upMs, job.upMs());
        }
        return upMs - nowMs;
    }

    private Job job(Work work, Bench bench) {
        return new Job(work, bench.pace(kitchen.pace().times().pieceMs(work)));
    }

    /**
     * Tells every job which others it waits for. What an earlier menu had made at a station that is
     * no more can't be scheduled, and so is not waited for.
     */
    private void join() {
        for (Bench bench : benches) {
            for (Job job : bench.jobs()) {
                for (PartId first : job.work().waitsFor()) {
                    bench(first.station()).flatMap(b -> b.find(first)).ifPresent(job::waitFor);
                }
            }
        }
    }

    private Optional<Bench> bench(String station) {
        for (Bench bench : benches) {
            if (bench.id().equals(station)) {
                return Optional.of(bench);
            }
        }
        return Optional.empty();
    }

    /** Whenever a hand is free, anywhere, it takes on the oldest work that can be begun. */
    private void dispatch() {
        benches.forEach(Bench::begin);
        while (true) {
            Bench next = null;
            long atMs = NEVER;
            for (Bench bench : benches) {
                long benchAtMs = bench.nextAtMs();
                if (benchAtMs < atMs) {
                    atMs = benchAtMs;
                    next = bench;
                }
            }
            if (next == null) {
                return;
            }
            next.take(atMs);
        }
    }

    /** Answers whether anything is to be begun later than it could be. */
    private boolean holdBack() {
        Map<String, Long> dueMs = new HashMap<>();
        for (Bench bench : benches) {
            for (Job job : bench.jobs()) {
                if (!job.isHeld()) {
                    dueMs.merge(job.order(), job.upMs(), Math::max);
                }
            }
        }
        boolean any = false;
        for (Bench bench : benches) {
            List<Job> held = new ArrayList<>();
            for (Job job : bench.jobs()) {
                if (job.isHeld()) {
                    held.add(job);
                }
            }
            if (!held.isEmpty()) {
                new HoldBack(bench, held, nowMs).set(dueMs);
                any = true;
            }
        }
        return any;
    }

    private Schedule result() {
        Schedule.Builder result = new Schedule.Builder();
        for (Bench bench : benches) {
            for (Job job : bench.jobs()) {
                result.slot(new Schedule.Slot(job.id(), job.startMs(), job.upMs()));
            }
            result.loads(bench.id(), bench.loads());
        }
        return result.done();
    }
}
