package sopwell.metrics;

import io.prometheus.metrics.model.snapshots.HistogramSnapshot;
import io.prometheus.metrics.model.snapshots.Labels;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;

/**
 * How long answers took, by the route's template, and what they came to. A path that somebody made
 * up is no route, so there are never more of these than routes. Thread-safe.
 */
public final class RouteTimings {
    private static final int STATUS_PER_CLASS = 100;

    private final Map<String, Timings> routes = new ConcurrentHashMap<>();
    private final Map<String, LongAdder> answers = new ConcurrentHashMap<>();

    /**
     * Counts an answer.
     *
     * @param route {@code METHOD template}
     */
    public void answered(String route, int status, long tookNanos) {
        routes.computeIfAbsent(route, r -> new Timings(0.005, 0.02, 0.1, 0.5, 2.5)).took(tookNanos);
        answers.computeIfAbsent(status / STATUS_PER_CLASS + "xx", c -> new LongAdder()).increment();
    }

    HistogramSnapshot timings(String name, String help) {
        HistogramSnapshot.Builder all = HistogramSnapshot.builder().name(name).help(help);
        routes.forEach(
                (route, timings) -> {
                    int space = route.indexOf(' ');
                    String method = route.substring(0, space);
                    String template = route.substring(space + 1);
                    all.dataPoint(timings.point(Labels.of("method", method, "route", template)));
                });
        return all.build();
    }

    /** How many answers there were of each class of status. */
    Map<String, LongAdder> answers() {
        return answers;
    }
}
