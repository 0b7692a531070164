package sopwell.kitchen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sopwell.menu.Station;

/** One station and its hands in a schedule that is being made. Not thread-safe. */
final class Bench {
    /** Begun within so short a time, pieces that fit went in together. */
    private static final long SAME_GO_MS = 15_000;

    private final Station station;
    private final double slowness;
    private final long nowMs;
    private final long[] freeMs;
    private final List<Job> jobs = new ArrayList<>();
    private final List<Schedule.Load> loads = new ArrayList<>();
    private int first;
    private int lastHand;
    private long busyMs;

    /** A station with so many hands, on average over what is believed. */
    Bench(Station station, double hands, long nowMs) {
        int whole = Math.max(1, (int) Math.round(hands));
        this.station = station;
        this.slowness = whole / hands;
        this.nowMs = nowMs;
        this.freeMs = new long[whole];
    }

    String id() {
        return station.id();
    }

    int hands() {
        return freeMs.length;
    }

    /** When each hand is free of what has begun. */
    long[] freeMs() {
        return freeMs.clone();
    }

    int load() {
        return station.load();
    }

    /** So long as one of these hands takes, as many whole ones stand for the believed number. */
    long pace(long pieceMs) {
        return Math.round(pieceMs * slowness);
    }

    void add(Job job) {
        jobs.add(job);
    }

    /** Work in no order, in milliseconds of one hand and one piece at a time. */
    void busy(long workMs) {
        busyMs = workMs / ((long) freeMs.length * station.load());
    }

    List<Job> jobs() {
        return jobs;
    }

    Optional<Job> find(PartId id) {
        for (Job job : jobs) {
            if (job.id().equals(id)) {
                return Optional.of(job);
            }
        }
        return Optional.empty();
    }

    /** What it takes on, what has begun first, then by when it is to be begun. */
    List<Schedule.Load> loads() {
        loads.sort(
                Comparator.comparing((Schedule.Load load) -> !load.started())
                        .thenComparingLong(Schedule.Load::startByMs));
        return loads;
    }

    /** What was begun goes on; everything else is to be taken. */
    void begin() {
        loads.clear();
        first = 0;
        Arrays.fill(freeMs, nowMs + busyMs);
        List<Job> started = new ArrayList<>();
        for (Job job : jobs) {
            job.begin(nowMs);
            if (job.work().isStarted()) {
                started.add(job);
            }
        }
        started.sort(Comparator.comparingLong(Job::startedAtMs));
        started.forEach(this::goOn);
    }

    /** When it will take something on next. */
    long nextAtMs() {
        long freeAtMs = freeMs[firstFree()];
        long readyMs = Planner.NEVER;
        while (first < jobs.size() && jobs.get(first).left() == 0) {
            first++;
        }
        for (int n = first; n < jobs.size() && readyMs > freeAtMs; n++) {
            if (jobs.get(n).left() > 0) {
                readyMs = Math.min(readyMs, jobs.get(n).readyMs(nowMs));
            }
        }
        return readyMs == Planner.NEVER ? readyMs : Math.max(readyMs, freeAtMs);
    }

    /** A free hand takes the oldest that is ready, and with it what fits. */
    void take(long atMs) {
        boolean single = load() == 1;
        int room = single ? Planner.RUN_PIECES : load();
        long workMs = 0;
        List<Job> taken = new ArrayList<>(load());
        List<Schedule.Share> shares = new ArrayList<>(load());
        for (int n = first; n < jobs.size() && room > 0; n++) {
            Job job = jobs.get(n);
            boolean fits = taken.isEmpty() || job.left() <= room;
            if (job.left() > 0 && fits && job.readyMs(nowMs) <= atMs) {
                int pieces = Math.min(job.left(), room);
                room = single ? 0 : room - pieces;
                workMs = Math.max(workMs, single ? job.pieceMs() * pieces : job.pieceMs());
                taken.add(job);
                shares.add(new Schedule.Share(job.id(), pieces));
            }
        }
        long upMs = atMs + workMs;
        for (int n = 0; n < taken.size(); n++) {
            taken.get(n).took(shares.get(n).pieces(), atMs, upMs);
        }
        freeMs[firstFree()] = upMs;
        loads.add(new Schedule.Load(id(), atMs, upMs, false, shares));
    }

    private void goOn(Job job) {
        while (job.left() > 0) {
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
        return job.left() <= load() - last.pieces()
                && job.startedAtMs() - last.startByMs() <= SAME_GO_MS;
    }

    private Schedule.Load joined(Schedule.Load last, Job job) {
        List<Schedule.Share> shares = new ArrayList<>(last.shares());
        shares.add(new Schedule.Share(job.id(), job.left()));
        long upMs = Math.max(last.upAtMs(), leftMs(job, job.pieceMs()));
        freeMs[lastHand] = upMs;
        job.took(job.left(), job.startedAtMs(), upMs);
        return new Schedule.Load(id(), last.startByMs(), upMs, true, shares);
    }

    private void goOnAlone(Job job) {
        lastHand = firstFree();
        boolean single = load() == 1;
        int pieces = single ? job.left() : Math.min(job.left(), load());
        long upMs = leftMs(job, single ? job.pieceMs() * pieces : job.pieceMs());
        freeMs[lastHand] = upMs;
        job.took(pieces, job.startedAtMs(), upMs);
        loads.add(
                new Schedule.Load(
                        id(),
                        job.startedAtMs(),
                        upMs,
                        true,
                        List.of(new Schedule.Share(job.id(), pieces))));
    }

    /** What takes longer than expected is expected to take a quarter of its time more. */
    private long leftMs(Job job, long workMs) {
        return Math.max(job.startedAtMs() + workMs, nowMs + workMs / 4);
    }

    private int firstFree() {
        int free = 0;
        for (int hand = 1; hand < freeMs.length; hand++) {
            if (freeMs[hand] < freeMs[free]) {
                free = hand;
            }
        }
        return free;
    }
}
