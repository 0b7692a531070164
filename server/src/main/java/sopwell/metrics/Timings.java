package sopwell.metrics;

import io.prometheus.metrics.model.snapshots.ClassicHistogramBuckets;
import io.prometheus.metrics.model.snapshots.HistogramSnapshot.HistogramDataPointSnapshot;
import io.prometheus.metrics.model.snapshots.Labels;
import java.util.Arrays;
import java.util.concurrent.atomic.LongAdder;

/** How long something took, counted by how long. Thread-safe. */
public final class Timings {
    private static final double NANOS_PER_SECOND = 1e9;

    private final double[] seconds;
    private final LongAdder[] counts;
    private final LongAdder nanos = new LongAdder();

    /**
     * Nothing was counted yet.
     *
     * @param seconds where one count ends and the next begins, rising
     */
    public Timings(double... seconds) {
        this.seconds = seconds.clone();
        this.counts = new LongAdder[seconds.length + 1];
        Arrays.setAll(counts, place -> new LongAdder());
    }

    /** Counts one. */
    public void took(long tookNanos) {
        int place = 0;
        while (place < seconds.length && tookNanos > seconds[place] * NANOS_PER_SECOND) {
            place++;
        }
        counts[place].increment();
        nanos.add(tookNanos);
    }

    /** What was counted so far. */
    HistogramDataPointSnapshot point(Labels labels) {
        double[] bounds = Arrays.copyOf(seconds, counts.length);
        bounds[seconds.length] = Double.POSITIVE_INFINITY;
        long[] counted = Arrays.stream(counts).mapToLong(LongAdder::sum).toArray();
        return HistogramDataPointSnapshot.builder()
                .classicHistogramBuckets(ClassicHistogramBuckets.of(bounds, counted))
                .sum(nanos.sum() / NANOS_PER_SECOND)
                .labels(labels)
                .build();
    }
}
