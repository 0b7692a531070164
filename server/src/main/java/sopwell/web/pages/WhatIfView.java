package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import sopwell.mix.HalfHours;
import sopwell.web.T;
import sopwell.whatif.Bench;
import sopwell.whatif.DayWork;
import sopwell.whatif.Tried;
import sopwell.whatif.Waits;

/**
 * A day that was tried again, in one language. Immutable.
 *
 * @param work what was done again
 */
public record WhatIfView(T t, Tried tried, DayWork work, int targetSeconds) {
    private static final int MINUTE = 60;

    /** How the day would have been, in one sentence. */
    public String answer() {
        Tried.Row rush = tried.rush();
        String from = time(rush.begin());
        String to = time(rush.end());
        double before = rush.before().middle().ninetiethSeconds();
        double after = rush.after().middle().ninetiethSeconds();
        if (tried.changes().isNone()) {
            Waits measured = rush.measured();
            return measured.orders() == 0
                    ? t.of("whatif.again-unmeasured", minutes(before), from, to)
                    : t.of(
                            "whatif.again",
                            minutes(before),
                            from,
                            to,
                            minutes(measured.ninetiethSeconds()));
        }
        return tried.verdict() == Tried.Verdict.HARDLY
                ? t.of("whatif.hardly", changed(), minutes(before), from, to)
                : t.of("whatif.answer", changed(), minutes(after), minutes(before), from, to);
    }

    /** What nine of ten waited at most, half hour by half hour. */
    public Chart chart() {
        return WhatIfChart.of(this);
    }

    /** What was changed, in words. */
    public String changed() {
        List<String> words = new ArrayList<>();
        for (Bench bench : work.benches()) {
            int more = tried.changes().hands().getOrDefault(bench.id(), 0);
            if (more != 0) {
                String key = bench.load() > 1 ? "whatif.load" : "whatif.hand";
                String many = Math.abs(more) == 1 ? ".one" : ".several";
                String side = more > 0 ? ".more" : ".fewer";
                String name = t.local(bench.name());
                words.add(t.of(key + side + many, name, Math.abs(more)));
            }
        }
        int guests = tried.changes().guestsPercent();
        if (guests != 0) {
            words.add(
                    t.of(
                            guests > 0 ? "whatif.guests.more" : "whatif.guests.fewer",
                            Math.abs(guests)));
        }
        return t.list(words);
    }

    /** How true the simulation is: the unchanged day again beside what was measured. */
    public String trust() {
        return t.of("whatif.trust", work.measured(), work.tasks(), tried.runs());
    }

    /** Where more was asked than could be done, a sentence each station. */
    public List<String> overloads() {
        Map<String, List<String>> times = new LinkedHashMap<>();
        for (Tried.Overload over : tried.overloads()) {
            times.computeIfAbsent(t.local(over.station()), s -> new ArrayList<>())
                    .add(t.of("whatif.overload.at", time(over.halfHour()), over.percent()));
        }
        List<String> sentences = new ArrayList<>();
        times.forEach(
                (station, at) ->
                        sentences.add(t.of("whatif.overload", station, String.join(", ", at))));
        return sentences;
    }

    /** When a half hour begins. */
    public String time(int halfHour) {
        return HalfHours.begins(halfHour).toString();
    }

    /** A measured wait, or a dash when none was. */
    public String measured(Waits waits, ToDoubleFunction<Waits> figure) {
        return waits.orders() == 0 ? "–" : t.minutes(figure.applyAsDouble(waits));
    }

    /** A share, or a dash when nothing was measured. */
    public String share(Waits waits) {
        return waits.orders() == 0 ? "–" : t.percent(waits.withinShare());
    }

    /** Between what a wait was in eight of ten runs. */
    public String band(Waits.Band band, ToDoubleFunction<Waits> figure) {
        return t.of(
                "whatif.band",
                t.minutes(figure.applyAsDouble(band.low())),
                t.minutes(figure.applyAsDouble(band.high())));
    }

    /** Half of all waits. */
    public ToDoubleFunction<Waits> median() {
        return Waits::medianSeconds;
    }

    /** Nine of ten waits. */
    public ToDoubleFunction<Waits> ninetieth() {
        return Waits::ninetiethSeconds;
    }

    private static long minutes(double seconds) {
        return (long) Math.ceil(seconds / MINUTE);
    }
}
