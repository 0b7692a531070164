package sopwell.web;

import java.util.concurrent.atomic.LongAdder;

/** Connections that the server closed to protect itself, counted. Thread-safe. */
public final class Cuts {
    private final LongAdder turnedAway = new LongAdder();
    private final LongAdder slow = new LongAdder();

    /** Connections that were closed at once because there were too many. */
    public long turnedAway() {
        return turnedAway.sum();
    }

    /** Requests whose connection was closed because it sent or took too slowly. */
    public long slow() {
        return slow.sum();
    }

    void countTurnedAway() {
        turnedAway.increment();
    }

    void countSlow() {
        slow.increment();
    }
}
