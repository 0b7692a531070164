package sopwell.lunch;

import java.util.List;
import java.util.Locale;

/**
 * What lunches come to. Immutable.
 *
 * @param ageSeconds how old fries and dogs were on average when they were handed
 * @param within the share of orders that were handed within what their guests were told
 * @param sooner the share that was handed sooner
 * @param widthSeconds how wide the told ranges were on average
 * @param fixedSeconds how wide the narrowest range is that, told to everybody, would have held as
 *     many of these very orders
 */
record Figures(
        int orders,
        double medianSeconds,
        double p90Seconds,
        double ageSeconds,
        double within,
        double sooner,
        double widthSeconds,
        double fixedSeconds) {
    static Figures of(List<Served> all) {
        long[] waits = all.stream().mapToLong(Served::waitMs).sorted().toArray();
        double within = share(all, Served::isWithin);
        return new Figures(
                all.size(),
                waits[waits.length / 2] / 1000.0,
                waits[waits.length * 9 / 10] / 1000.0,
                all.stream()
                                .flatMap(served -> served.agesMs().stream())
                                .mapToLong(Long::longValue)
                                .average()
                                .orElse(0)
                        / 1000,
                within,
                share(all, s -> s.waitMs() / 1000 < s.quote().fromSeconds()),
                all.stream().mapToInt(Served::widthSeconds).average().orElse(0),
                fixedMs(waits, (int) Math.ceil(within * waits.length)) / 1000.0);
    }

    private static double share(List<Served> all, java.util.function.Predicate<Served> what) {
        return all.stream().filter(what).count() / (double) all.size();
    }

    private static long fixedMs(long[] waits, int held) {
        long narrowest = Long.MAX_VALUE;
        for (int from = 0; from + held <= waits.length; from++) {
            narrowest = Math.min(narrowest, waits[from + Math.max(held, 1) - 1] - waits[from]);
        }
        return narrowest;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d orders: wait median %.0f s, 90th %.0f s; fries and dogs %.1f s old; within the"
                        + " quote %.1f %%, sooner %.1f %%; width %.0f s, fixed %.0f s, ratio %.2f",
                orders,
                medianSeconds,
                p90Seconds,
                ageSeconds,
                100 * within,
                100 * sooner,
                widthSeconds,
                fixedSeconds,
                widthSeconds / fixedSeconds);
    }
}
