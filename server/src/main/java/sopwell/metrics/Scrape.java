package sopwell.metrics;

import io.prometheus.metrics.config.EscapingScheme;
import io.prometheus.metrics.expositionformats.PrometheusTextFormatWriter;
import io.prometheus.metrics.model.snapshots.CounterSnapshot;
import io.prometheus.metrics.model.snapshots.CounterSnapshot.CounterDataPointSnapshot;
import io.prometheus.metrics.model.snapshots.GaugeSnapshot;
import io.prometheus.metrics.model.snapshots.GaugeSnapshot.GaugeDataPointSnapshot;
import io.prometheus.metrics.model.snapshots.HistogramSnapshot;
import io.prometheus.metrics.model.snapshots.Labels;
import io.prometheus.metrics.model.snapshots.MetricSnapshot;
import io.prometheus.metrics.model.snapshots.MetricSnapshots;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What is said to one who asks: figure after figure, then all of it as text. Not thread-safe. */
public final class Scrape {
    /** The text's type, with its version. */
    public static final String TYPE = PrometheusTextFormatWriter.CONTENT_TYPE;

    private final List<MetricSnapshot> figures = new ArrayList<>();

    /** What is so now. */
    public Scrape now(String name, String help, Number value) {
        figures.add(
                GaugeSnapshot.builder()
                        .name(name)
                        .help(help)
                        .dataPoint(gauge(value.doubleValue()))
                        .build());
        return this;
    }

    /** What is so now of each of a few things, whose kind is the label. */
    public Scrape now(String name, String help, String label, Map<String, ? extends Number> each) {
        GaugeSnapshot.Builder all = GaugeSnapshot.builder().name(name).help(help);
        each.forEach(
                (of, value) ->
                        all.dataPoint(
                                GaugeDataPointSnapshot.builder()
                                        .value(value.doubleValue())
                                        .labels(Labels.of(label, of))
                                        .build()));
        figures.add(all.build());
        return this;
    }

    /**
     * What only grows.
     *
     * @param name without {@code _total}, which is put behind it
     */
    public Scrape sum(String name, String help, Number value) {
        figures.add(
                CounterSnapshot.builder()
                        .name(name)
                        .help(help)
                        .dataPoint(
                                CounterDataPointSnapshot.builder()
                                        .value(value.doubleValue())
                                        .build())
                        .build());
        return this;
    }

    /** What only grows of each of a few things, whose kind is the label. */
    public Scrape sum(String name, String help, String label, Map<String, ? extends Number> each) {
        CounterSnapshot.Builder all = CounterSnapshot.builder().name(name).help(help);
        each.forEach(
                (of, value) ->
                        all.dataPoint(
                                CounterDataPointSnapshot.builder()
                                        .value(value.doubleValue())
                                        .labels(Labels.of(label, of))
                                        .build()));
        figures.add(all.build());
        return this;
    }

    /** How long something took. */
    public Scrape timings(String name, String help, Timings timings) {
        figures.add(
                HistogramSnapshot.builder()
                        .name(name)
                        .help(help)
                        .dataPoint(timings.point(Labels.EMPTY))
                        .build());
        return this;
    }

    /** How long answers took, and what they came to. */
    public Scrape routes(RouteTimings routes) {
        figures.add(
                routes.timings(
                        "sopwell_request_seconds",
                        "From the first look at a request to the end of its answer, by route."));
        return sum("sopwell_answers", "Answers by class of status.", "status", routes.answers());
    }

    /** All of it in the Prometheus text format. */
    public byte[] text() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            PrometheusTextFormatWriter.create()
                    .write(out, new MetricSnapshots(figures), EscapingScheme.DEFAULT);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static GaugeDataPointSnapshot gauge(double value) {
        return GaugeDataPointSnapshot.builder().value(value).build();
    }
}
