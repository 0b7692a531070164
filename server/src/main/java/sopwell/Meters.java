package sopwell;

import java.util.function.IntConsumer;
import java.util.function.LongSupplier;
import sopwell.metrics.RouteTimings;
import sopwell.metrics.Timings;
import sopwell.web.RequestWatch;

/** Times what a stand does while it does it. Thread-safe. */
final class Meters implements RequestWatch {
    private final LongSupplier nanos;
    private final RouteTimings requests = new RouteTimings();
    private final Timings commits =
            new Timings(0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.25, 1, 5);

    /** By a clock that never jumps, in nanoseconds. */
    Meters(LongSupplier nanos) {
        this.nanos = nanos;
    }

    @Override
    public IntConsumer begins(String route) {
        long from = nanos.getAsLong();
        return status -> requests.answered(route, status, nanos.getAsLong() - from);
    }

    /** How long answers took. */
    RouteTimings requests() {
        return requests;
    }

    /** How long it took to make batches durable. */
    Timings commits() {
        return commits;
    }

    LongSupplier nanos() {
        return nanos;
    }
}
