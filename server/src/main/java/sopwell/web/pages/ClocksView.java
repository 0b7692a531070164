package sopwell.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.orders.Safety;
import sopwell.stock.larder.BatchRow;
import sopwell.stock.larder.TimeClock;
import sopwell.stock.recipes.Watch;
import sopwell.stock.safety.Reading;
import sopwell.stock.safety.Standing;
import sopwell.web.T;

/**
 * Every clock that runs, what is due first on top, in one language. Immutable.
 *
 * @param batches what is being made, with the words and the time
 */
public record ClocksView(BatchesView batches, Menu menu) {
    private static final int MINUTES_HOUR = 60;

    /** The texts. */
    public T t() {
        return batches.t();
    }

    private StockWords words() {
        return batches.words();
    }

    private Safety safety() {
        return words().safety();
    }

    /**
     * One clock.
     *
     * @param id of the batch or of the clock; empty for the slicer
     * @param kind what it watches
     * @param link where more is to be seen and done; empty where it is done here
     * @param last the temperature that was measured last; empty without one
     */
    public record Row(
            String id, String name, String kind, Standing standing, String link, String last) {
        /** Whether something must be done now, or it is too late. */
        public boolean isUrgent() {
            return standing.state() == Standing.State.ACT
                    || standing.state() == Standing.State.FAILED;
        }

        /** Whether it is the clock of food that is held by time alone. */
        public boolean isTime() {
            return id.startsWith("t");
        }
    }

    /** The clocks that run, what is due first on top; without a time, and reached, last. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (BatchRow batch : batches.now().batches()) {
            batch.standing().ifPresent(standing -> rows.add(row(batch, standing)));
        }
        for (TimeClock clock : batches.now().clocks()) {
            rows.add(row(clock));
        }
        batches.now()
                .slicer()
                .ifPresent(
                        standing ->
                                rows.add(
                                        new Row(
                                                "",
                                                t().get("batches.slicer"),
                                                t().get("clocks.kind.slicer"),
                                                standing,
                                                "",
                                                "")));
        rows.sort(Comparator.comparingLong(row -> due(row.standing())));
        return rows;
    }

    private static long due(Standing standing) {
        return standing.byMs() == 0 ? Long.MAX_VALUE : standing.byMs();
    }

    private Row row(BatchRow batch, Standing standing) {
        Watch watch = batch.step().map(step -> step.watch()).orElse(Watch.NONE);
        return new Row(
                batch.batch().id(),
                batches.what(batch),
                t().under("clocks.kind", watch.name()),
                standing,
                "/prep/batches/" + batch.batch().id(),
                batches.last(batch));
    }

    private Row row(TimeClock clock) {
        Reading last = clock.last();
        return new Row(
                clock.id(),
                clock.what(),
                t().of("clocks.kind.time", hours(clock.isLonger()), time(clock.startedAtMs())),
                clock.standing(safety(), batches.nowMs()),
                "",
                t().of("batches.last", words().degrees(last.temperature()), time(last.atMs())));
    }

    private String time(long ms) {
        return words().time(ms);
    }

    /** How many hours one of the two times is. */
    public String hours(boolean isLonger) {
        int minutes =
                isLonger
                        ? safety().food().time().longMinutes()
                        : safety().food().time().shortMinutes();
        return minutes % MINUTES_HOUR == 0
                ? t().of("clocks.hours", minutes / MINUTES_HOUR)
                : t().of("stock.minutes", minutes);
    }

    /** How long is left, or what has become of it. */
    public String left(Row row) {
        return batches.left(row.standing());
    }

    /** What to do before it is too late. */
    public String advice(Row row) {
        Standing standing = row.standing();
        return row.isTime() && standing.state() == Standing.State.FAILED
                ? t().get("clocks.over")
                : words().advice(standing);
    }

    /** The clocks of food that is held by time alone. */
    public List<TimeClock> time() {
        return batches.now().clocks();
    }

    /** What may stand out: pans and what is kept, for a list to choose from. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        menu.pans().forEach(pan -> names.add(t().local(pan.name())));
        batches.now().left().forEach(left -> names.add(t().local(left.ingredient().name())));
        return names.stream().distinct().sorted(String::compareToIgnoreCase).toList();
    }

    /** The two rules with their limits and source. */
    public List<String> limits() {
        String cold = degrees(safety().food().coldF());
        return List.of(
                t().of(
                                "clocks.rule.short",
                                hours(false),
                                cold,
                                degrees(safety().holdF()),
                                safety().source()),
                t().of(
                                "clocks.rule.long",
                                hours(true),
                                cold,
                                degrees(safety().food().time().longMaxF()),
                                safety().source()));
    }

    private String degrees(int f) {
        return words().degrees(sopwell.stock.safety.Temperature.fahrenheit(f));
    }

    /** The sign of the degrees that are typed. */
    public String unit() {
        return safety().food().celsius() ? "°C" : "°F";
    }

    /** The clock that should be measured first: of the longer ones, that measured longest ago. */
    public Optional<String> toMeasure() {
        return time().stream()
                .filter(TimeClock::isLonger)
                .min(Comparator.comparingLong(clock -> clock.last().atMs()))
                .map(TimeClock::id);
    }
}
