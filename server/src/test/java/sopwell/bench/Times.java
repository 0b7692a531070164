package sopwell.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import sopwell.mix.Percentile;

/** Measured durations. Immutable. */
final class Times {
    private final double[] sortedMicros;

    private Times(double[] sortedMicros) {
        this.sortedMicros = sortedMicros;
    }

    static Times ofNanos(List<Long> nanos) {
        double[] micros = nanos.stream().mapToDouble(n -> n / 1000.0).toArray();
        Arrays.sort(micros);
        return new Times(micros);
    }

    double median() {
        return Percentile.of(sortedMicros, 0.5);
    }

    double ninetyNinth() {
        return Percentile.of(sortedMicros, 0.99);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "p50 %.2f ms, p99 %.2f ms (%d)",
                median() / 1000,
                ninetyNinth() / 1000,
                sortedMicros.length);
    }
}
