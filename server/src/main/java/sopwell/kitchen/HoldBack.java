package sopwell.kitchen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Says how late short-lived parts of one station may be begun so that none is the last of its order
 * to come up: the latest due is put into a load first, each load as late as its earliest due and
 * its machine allow, back from the end. Loads are made fuller, and so earlier for some, only when
 * there are not enough of them otherwise. (Backward scheduling against due times; with more than
 * one machine and loads it is a heuristic, not an optimum.) Not thread-safe: for one use.
 */
final class HoldBack {
    /** How far apart the dues of one load may be; each is tried in turn until all is in time. */
    private static final long[] WINDOWS_MS = {0, 20_000, 45_000, 90_000, 180_000, 400_000};

    /** Rather a little early than the last thing missing. */
    private static final long SAFETY_MS = 5_000;

    /** What is far off is uncertain: of the time until then a twenty-fifth comes on top. */
    private static final long SAFETY_SHARE = 25;

    private final Bench bench;
    private final List<Job> held;
    private final long nowMs;

    HoldBack(Bench bench, List<Job> held, long nowMs) {
        this.bench = bench;
        this.held = held;
        this.nowMs = nowMs;
    }

    /** Parts that go into one machine together. */
    private static final class Go {
        private final List<Job> jobs = new ArrayList<>();
        private final int machine;
        private int room;
        private long endMs;
        private long workMs;

        Go(int machine, int room, long endMs) {
            this.machine = machine;
            this.room = room;
            this.endMs = endMs;
        }

        void add(Job job) {
            jobs.add(job);
            room -= job.left();
            workMs = Math.max(workMs, job.pieceMs());
        }

        long startMs() {
            return endMs - workMs;
        }
    }

    /**
     * Sets from when on each part may be begun.
     *
     * @param othersMs when the last other part of each order that has others is expected to be up
     */
    void set(Map<String, Long> othersMs) {
        bench.begin();
        long[] freeMs = bench.freeMs();
        long firstMs = Arrays.stream(freeMs).min().orElseThrow();
        for (Job job : held) {
            long othersUpMs = othersMs.getOrDefault(job.order(), 0L);
            long dueMs = othersUpMs - SAFETY_MS - (othersUpMs - nowMs) / SAFETY_SHARE;
            job.dueBy(Math.max(dueMs, firstMs + job.pieceMs()));
        }
        held.sort(Comparator.comparingLong(Job::dueMs).reversed());
        List<Go> best = List.of();
        long leastMs = Planner.NEVER;
        for (int n = 0; n < WINDOWS_MS.length && leastMs > 0; n++) {
            List<Go> goes = packed(WINDOWS_MS[n]);
            long lateMs = lateMs(goes, freeMs);
            if (lateMs < leastMs) {
                leastMs = lateMs;
                best = goes;
            }
        }
        for (Go go : best) {
            go.jobs.forEach(job -> job.releaseAt(Math.max(nowMs, go.startMs())));
        }
    }

    /**
     * How late parts would be in all, each as often as it has pieces, on the machines there are.
     */
    private long lateMs(List<Go> goes, long[] freeNowMs) {
        long[] freeMs = freeNowMs.clone();
        long lateMs = 0;
        for (int n = goes.size() - 1; n >= 0; n--) {
            Go go = goes.get(n);
            int machine = earliest(freeMs);
            long upMs = Math.max(go.startMs(), freeMs[machine]) + go.workMs;
            freeMs[machine] = upMs;
            for (Job job : go.jobs) {
                lateMs += job.left() * Math.max(0, upMs - job.dueMs());
            }
        }
        return lateMs;
    }

    private static int earliest(long[] freeMs) {
        int earliest = 0;
        for (int machine = 1; machine < freeMs.length; machine++) {
            if (freeMs[machine] < freeMs[earliest]) {
                earliest = machine;
            }
        }
        return earliest;
    }

    private List<Go> packed(long windowMs) {
        long[] backMs = new long[bench.hands()];
        Arrays.fill(backMs, Planner.NEVER);
        List<Go> goes = new ArrayList<>();
        for (Job job : held) {
            Go last = joinable(goes, job, windowMs);
            if (last == null) {
                int machine = latest(backMs);
                last = new Go(machine, bench.load(), Math.min(job.dueMs(), backMs[machine]));
                goes.add(last);
            } else {
                last.endMs = Math.min(last.endMs, job.dueMs());
            }
            last.add(job);
            backMs[last.machine] = last.startMs();
        }
        return goes;
    }

    /** The load that was put in place last, if this fits in and is due at about that time. */
    private static Go joinable(List<Go> goes, Job job, long windowMs) {
        if (goes.isEmpty()) {
            return null;
        }
        Go last = goes.get(goes.size() - 1);
        return last.room >= job.left() && Math.abs(last.endMs - job.dueMs()) <= windowMs
                ? last
                : null;
    }

    private static int latest(long[] backMs) {
        int latest = 0;
        for (int machine = 1; machine < backMs.length; machine++) {
            if (backMs[machine] > backMs[latest]) {
                latest = machine;
            }
        }
        return latest;
    }
}
