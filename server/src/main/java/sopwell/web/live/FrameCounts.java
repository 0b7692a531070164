package sopwell.web.live;

import java.util.concurrent.atomic.LongAdder;

/** What became of frames and of screens that could not keep up. Thread-safe. */
public final class FrameCounts {
    private final LongAdder sent = new LongAdder();
    private final LongAdder missed = new LongAdder();
    private final LongAdder slow = new LongAdder();
    private final LongAdder silent = new LongAdder();
    private final LongAdder tooMany = new LongAdder();

    /** Frames with something on a board that were handed to a screen's connection. */
    public long sent() {
        return sent.sum();
    }

    /** Frames that were not, because the screen was still busy with one before. */
    public long missed() {
        return missed.sum();
    }

    /** Screens that were closed because a frame did not get through in time. */
    public long slow() {
        return slow.sum();
    }

    /** Screens that were closed because nothing was heard from them. */
    public long silent() {
        return silent.sum();
    }

    /** Screens that were sent away because there were too many. */
    public long tooMany() {
        return tooMany.sum();
    }

    void countSent() {
        sent.increment();
    }

    void countMissed() {
        missed.increment();
    }

    void countSlow() {
        slow.increment();
    }

    void countSilent() {
        silent.increment();
    }

    void countTooMany() {
        tooMany.increment();
    }
}
