package sopwell.kitchen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.menu.Menu;
import sopwell.menu.Station;

/**
 * Makes a schedule. List scheduling: whenever a hand is free it takes the oldest work that can be
 * begun; first with everything begun as soon as possible, which says when each order can be whole,
 * then with short-lived parts held back so that they come up with their order's slowest part. Not
 * thread-safe: for one schedule.
 */
final class Planner {
    /** Alike on one line, this many are made by one hand one behind the other; more are shared. */
    static final int RUN_PIECES = 4;

    /** Begun within so short a time, pieces that fit went in together. */
    private static final long SAME_GO_MS = 15_000;

    private static final long NEVER = Long.MAX_VALUE;

    private final Kitchen kitchen;
    private final Menu menu;
    private final long nowMs;
    private final Map<PartId, Job> jobs = new LinkedHashMap<>();
    private final List<Bench> benches = new ArrayList<>();

    Planner(Kitchen kitchen, Menu menu, long nowMs) {
        this.kitchen = kitchen;
        this.menu = menu;
        this.nowMs = nowMs;
    }

    Schedule schedule() {
        for (Station station : menu.stations()) {
            Bench bench = new Bench(station, kitchen.hands(station));
            for (Part part : kitchen.inSight(station.id())) {
                if (!part.cancelled() && part.state() != PartState.UP) {
                    Job job = new Job(part, menuOf(part));
                    jobs.put(part.id(), job);
                    bench.jobs.add(job);
                }
            }
            benches.add(bench);
        }
        for (Job job : jobs.values()) {
            for (String other : job.waitsFor) {
                Job first = jobs.get(new PartId(job.part.id().order(), job.line(), other));
                if (first != null) {
                    job.waits.add(first);
                }
            }
        }
        dispatch();
        if (holdBack()) {
            dispatch();
        }
        return result();
    }

    private Menu menuOf(Part part) {
        return kitchen.menu(part.making().menuRevision());
    }

    /** Whenever a hand is free, anywhere, it takes on the oldest work that can be begun. */
    private void dispatch() {
        jobs.values().forEach(job -> job.begin(nowMs));
        benches.forEach(bench -> bench.begin(nowMs));
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
        Map<String, Long> dueMs = new LinkedHashMap<>();
        Map<String, Long> allMs = new LinkedHashMap<>();
        for (Job job : jobs.values()) {
            allMs.merge(job.part.id().order(), job.upMs, Math::max);
            if (!job.shortLived) {
                dueMs.merge(job.part.id().order(), job.upMs, Math::max);
            }
        }
        boolean any = false;
        for (Job job : jobs.values()) {
            String order = job.part.id().order();
            if (job.shortLived && job.part.state() == PartState.WAITING) {
                long due = Math.max(allMs.get(order), dueMs.getOrDefault(order, 0L));
                long slackMs = due - job.upMs;
                if (slackMs > 0) {
                    job.releaseMs = job.startMs + slackMs;
                    any = true;
                }
            }
        }
        return any;
    }

    private Schedule result() {
        Schedule.Builder result = new Schedule.Builder();
        for (Job job : jobs.values()) {
            result.slot(new Schedule.Slot(job.part.id(), job.startMs, job.upMs));
        }
        for (Bench bench : benches) {
            bench.loads.sort(
                    Comparator.comparing((Schedule.Load load) -> !load.started())
                            .thenComparingLong(Schedule.Load::startByMs));
            result.loads(bench.station.id(), bench.loads);
        }
        return result.done();
    }

    /** One part that is to be made. */
    private static final class Job {
        private final Part part;
        private final long pieceMs;
        private final boolean shortLived;
        private final List<String> waitsFor;
        private final List<Job> waits = new ArrayList<>();
        private long releaseMs;
        private int left;
        private long startMs;
        private long upMs;

        Job(Part part, Menu menu) {
            this.part = part;
            String station = part.id().station();
            this.pieceMs = 1000L * Router.seconds(menu, part.making().selection(), station);
            this.waitsFor = Router.waitsFor(menu, part.making().selection(), station);
            this.shortLived = menu.item(part.making().selection().item()).isShortLived();
        }

        int line() {
            return part.id().line();
        }

        void begin(long nowMs) {
            left = part.pieces();
            startMs = NEVER;
            upMs = nowMs;
        }

        /** From when on it can be worked on; never while that is not known. */
        long readyMs(long nowMs) {
            long readyMs = Math.max(nowMs, releaseMs);
            for (Job first : waits) {
                if (first.left > 0) {
                    return NEVER;
                }
                readyMs = Math.max(readyMs, first.upMs);
            }
            return readyMs;
        }

        void took(int pieces, long fromMs, long toMs) {
            left -= pieces;
            startMs = Math.min(startMs, fromMs);
            upMs = Math.max(upMs, toMs);
        }
    }

    /** One station and its hands. */
    private final class Bench {
        private final Station station;
        private final long[] freeMs;
        private final List<Job> jobs = new ArrayList<>();
        private final List<Schedule.Load> loads = new ArrayList<>();
        private int lastHand;

        Bench(Station station, int hands) {
            this.station = station;
            this.freeMs = new long[hands];
        }

        /** What was begun goes on. */
        void begin(long nowMs) {
            loads.clear();
            Arrays.fill(freeMs, nowMs);
            jobs.stream()
                    .filter(job -> job.part.state() == PartState.STARTED)
                    .sorted(Comparator.comparingLong(job -> job.part.startedAtMs()))
                    .forEach(this::goOn);
        }

        private void goOn(Job job) {
            while (job.left > 0) {
                Schedule.Load last = loads.isEmpty() ? null : loads.get(loads.size() - 1);
                if (last != null && isSameGo(last, job)) {
                    loads.set(loads.size() - 1, joined(last, job));
                } else {
                    goOnAlone(job);
                }
            }
        }

        /** What was begun within a few seconds and fits together is in one load. */
        private boolean isSameGo(Schedule.Load last, Job job) {
            return job.left <= station.load() - last.pieces()
                    && job.part.startedAtMs() - last.startByMs() <= SAME_GO_MS;
        }

        private Schedule.Load joined(Schedule.Load last, Job job) {
            List<Schedule.Share> shares = new ArrayList<>(last.shares());
            shares.add(new Schedule.Share(id(job), job.left));
            long upMs = Math.max(last.upAtMs(), leftMs(job, job.pieceMs));
            freeMs[lastHand] = upMs;
            job.took(job.left, job.part.startedAtMs(), upMs);
            return load(last.startByMs(), upMs, true, shares);
        }

        private void goOnAlone(Job job) {
            lastHand = firstFree();
            boolean single = station.load() == 1;
            int pieces = single ? job.left : Math.min(job.left, station.load());
            long upMs = leftMs(job, single ? job.pieceMs * pieces : job.pieceMs);
            freeMs[lastHand] = upMs;
            long startedMs = job.part.startedAtMs();
            job.took(pieces, startedMs, upMs);
            loads.add(load(startedMs, upMs, true, List.of(new Schedule.Share(id(job), pieces))));
        }

        /** What takes longer than expected is expected to take a quarter of its time more. */
        private long leftMs(Job job, long workMs) {
            return Math.max(job.part.startedAtMs() + workMs, nowMs + workMs / 4);
        }

        long nextAtMs() {
            long readyMs = NEVER;
            for (Job job : jobs) {
                if (job.left > 0) {
                    readyMs = Math.min(readyMs, job.readyMs(nowMs));
                }
            }
            return readyMs == NEVER ? NEVER : Math.max(readyMs, freeMs[firstFree()]);
        }

        void take(long atMs) {
            int hand = firstFree();
            boolean single = station.load() == 1;
            int room = single ? RUN_PIECES : station.load();
            long workMs = 0;
            List<Job> taken = new ArrayList<>();
            List<Schedule.Share> shares = new ArrayList<>();
            for (Job job : jobs) {
                boolean fits = job.left <= room || (taken.isEmpty() && room > 0);
                if (job.left > 0 && fits && job.readyMs(nowMs) <= atMs) {
                    int pieces = Math.min(job.left, room);
                    room = single ? 0 : room - pieces;
                    workMs = Math.max(workMs, single ? job.pieceMs * pieces : job.pieceMs);
                    taken.add(job);
                    shares.add(new Schedule.Share(id(job), pieces));
                }
            }
            long upMs = atMs + workMs;
            for (int n = 0; n < taken.size(); n++) {
                taken.get(n).took(shares.get(n).pieces(), atMs, upMs);
            }
            freeMs[hand] = upMs;
            loads.add(load(atMs, upMs, false, shares));
        }

        private Schedule.Load load(
                long fromMs, long toMs, boolean started, List<Schedule.Share> shares) {
            return new Schedule.Load(station.id(), fromMs, toMs, started, shares);
        }

        private PartId id(Job job) {
            return job.part.id();
        }

        private int firstFree() {
            int first = 0;
            for (int hand = 1; hand < freeMs.length; hand++) {
                if (freeMs[hand] < freeMs[first]) {
                    first = hand;
                }
            }
            return first;
        }
    }
}
