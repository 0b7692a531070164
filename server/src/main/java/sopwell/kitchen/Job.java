package sopwell.kitchen;

import java.util.ArrayList;
import java.util.List;

/** One part in a schedule that is being made. Not thread-safe. */
final class Job {
    private final Work work;
    private final long pieceMs;
    private final List<Job> waits = new ArrayList<>(1);
    private long releaseMs;
    private long dueMs;
    private int left;
    private long startMs;
    private long upMs;

    /** A part one piece of which, or one load, takes one hand so long. */
    Job(Work work, long pieceMs) {
        this.work = work;
        this.pieceMs = pieceMs;
    }

    Work work() {
        return work;
    }

    PartId id() {
        return work.part().id();
    }

    String order() {
        return id().order();
    }

    long pieceMs() {
        return pieceMs;
    }

    long startedAtMs() {
        return work.part().startedAtMs();
    }

    /** Whether it should come up late rather than early, and can still be begun late. */
    boolean isHeld() {
        return work.shortLived() && !work.isStarted();
    }

    void waitFor(Job first) {
        waits.add(first);
    }

    void dueBy(long newDueMs) {
        dueMs = newDueMs;
    }

    long dueMs() {
        return dueMs;
    }

    void releaseAt(long newReleaseMs) {
        releaseMs = newReleaseMs;
    }

    void begin(long nowMs) {
        left = work.pieces();
        startMs = Planner.NEVER;
        upMs = nowMs;
    }

    int left() {
        return left;
    }

    /** From when on it can be worked on; never while that is not known. */
    long readyMs(long nowMs) {
        long readyMs = Math.max(nowMs, releaseMs);
        for (Job first : waits) {
            if (first.left > 0) {
                return Planner.NEVER;
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

    long startMs() {
        return startMs;
    }

    long upMs() {
        return upMs;
    }
}
