package sopwell.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.Check;
import sopwell.mix.Percentile;
import sopwell.whatif.Tried.Row;
import sopwell.whatif.Tried.Verdict;

/** Does a day again, as it was and with something changed. Not thread-safe: for one trial. */
public final class Trial {
    /** Less than this is no difference to a guest. */
    private static final double NOTICED_SECONDS = 10;

    private static final double PERCENT = 100;
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    private final DayWork day;
    private final Changes changes;
    private final int targetSeconds;
    private final List<List<Wait>> before = new ArrayList<>();
    private final List<List<Wait>> after = new ArrayList<>();

    /** One order's wait, and the half hour in which its guest came. */
    private record Wait(int halfHour, long ms) {}

    private Trial(DayWork day, Changes changes, int targetSeconds) {
        this.day = day;
        this.changes = changes;
        this.targetSeconds = targetSeconds;
    }

    /**
     * Tries a day; the same seed gives the same answer.
     *
     * @param day with at least one guest
     * @param runs how often, at least one
     */
    public static Tried of(DayWork day, Changes changes, int targetSeconds, int runs, long seed) {
        Check.that(!day.guests().isEmpty() && runs > 0, "a trial needs a guest and a run");
        Trial trial = new Trial(day, changes, targetSeconds);
        List<Bench> benches =
                day.benches().stream().map(b -> b.with(changes.more(b.id()))).toList();
        for (int run = 0; run < runs; run++) {
            Draws draws = new Draws(seed + run);
            List<Guest> guests = Arrivals.of(day.guests(), changes.guestsPercent(), draws);
            trial.before.add(waits(day.guests(), Shop.run(day.benches(), day.guests(), draws)));
            trial.after.add(waits(guests, Shop.run(benches, guests, draws)));
        }
        return trial.tried(benches);
    }

    private static List<Wait> waits(List<Guest> guests, long[] upMs) {
        List<Wait> waits = new ArrayList<>();
        for (int n = 0; n < upMs.length; n++) {
            waits.add(new Wait(guests.get(n).halfHour(), upMs[n] - guests.get(n).sinceMs()));
        }
        return waits;
    }

    private Tried tried(List<Bench> benches) {
        TreeMap<Integer, Integer> came = new TreeMap<>();
        day.guests().forEach(guest -> came.merge(guest.halfHour(), 1, Integer::sum));
        List<Row> rows = came.keySet().stream().map(half -> row(half, half + 1)).toList();
        int rush = came.firstKey();
        int most = 0;
        for (int half : came.keySet()) {
            int two = came.get(half) + came.getOrDefault(half + 1, 0);
            if (two > most) {
                most = two;
                rush = half;
            }
        }
        int end = came.containsKey(rush + 1) ? rush + 2 : rush + 1;
        return new Tried(
                changes,
                rows,
                row(rush, end),
                verdict(rush, end),
                overloads(benches),
                before.size());
    }

    private Row row(int begin, int end) {
        List<Long> measured = new ArrayList<>();
        for (Guest guest : day.guests()) {
            if (guest.upMs() > 0 && guest.halfHour() >= begin && guest.halfHour() < end) {
                measured.add(Math.max(0, guest.upMs() - guest.sinceMs()));
            }
        }
        return new Row(
                begin,
                end,
                Waits.of(measured, targetSeconds),
                Waits.Band.of(each(before, begin, end)),
                Waits.Band.of(each(after, begin, end)));
    }

    private List<Waits> each(List<List<Wait>> runs, int begin, int end) {
        List<Waits> all = new ArrayList<>();
        for (List<Wait> run : runs) {
            List<Long> some =
                    run.stream()
                            .filter(wait -> wait.halfHour() >= begin && wait.halfHour() < end)
                            .map(Wait::ms)
                            .toList();
            all.add(Waits.of(some, targetSeconds));
        }
        return all;
    }

    private Verdict verdict(int begin, int end) {
        List<Waits> was = each(before, begin, end);
        List<Waits> is = each(after, begin, end);
        double[] more = new double[was.size()];
        for (int run = 0; run < more.length; run++) {
            more[run] = is.get(run).ninetiethSeconds() - was.get(run).ninetiethSeconds();
        }
        Arrays.sort(more);
        if (Percentile.of(more, HIGH) < -NOTICED_SECONDS) {
            return Verdict.SHORTER;
        }
        return Percentile.of(more, LOW) > NOTICED_SECONDS ? Verdict.LONGER : Verdict.HARDLY;
    }

    /** Half hours in which a station is asked for as much as its hands can do, or more. */
    private List<Tried.Overload> overloads(List<Bench> benches) {
        List<Tried.Overload> found = new ArrayList<>();
        TreeSet<Long> windows = new TreeSet<>();
        day.guests().forEach(guest -> windows.add(guest.windowMs()));
        for (int place = 0; place < benches.size(); place++) {
            Bench bench = benches.get(place);
            for (long window : windows) {
                double capacity =
                        bench.at(window + Arrivals.HALF_HOUR_MS / 2) * Arrivals.HALF_HOUR_MS;
                double share = workMs(place, window) / capacity;
                if (share >= 1) {
                    found.add(
                            new Tried.Overload(
                                    bench.name(),
                                    halfHour(window),
                                    (int) Math.round(PERCENT * share)));
                }
            }
        }
        return found;
    }

    /** Whoever waited since before the stand could be asked came earlier than the others. */
    private int halfHour(long window) {
        return day.guests().stream()
                .filter(guest -> guest.windowMs() == window)
                .mapToInt(Guest::halfHour)
                .max()
                .orElseThrow();
    }

    /** What a half hour's guests ask of a station, in milliseconds of one hand or full load. */
    private double workMs(int place, long window) {
        double workMs = 0;
        for (Guest guest : day.guests()) {
            for (Task task : guest.windowMs() == window ? guest.tasks() : List.<Task>of()) {
                if (task.station() == place) {
                    double loads = (double) task.pieces() / day.benches().get(place).load();
                    double mean = Math.exp(task.spread() * task.spread() / 2);
                    workMs += loads * task.pieceMs() * mean;
                }
            }
        }
        return workMs * (1 + changes.guestsPercent() / PERCENT);
    }
}
