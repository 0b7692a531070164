package sopwell.lunch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.PartState;
import sopwell.menu.Station;
import sopwell.orders.Order;

/**
 * What the stand believes of its hands when one of three leaves a busy line and nobody says so. A
 * hand has left when it has put up its last part; the line is busy when two parts more wait then
 * than there are hands left to take them. Not thread-safe.
 */
final class Leavings {
    /** Orders placed after the leaving that are looked at. */
    static final int ORDERS = 6;

    private static final int HANDS = 3;

    private final double[] sum = new double[ORDERS + 1];
    private final int[] fewer = new int[ORDERS + 1];
    private final List<Served> after = new ArrayList<>();
    private double sumBefore;
    private int before;
    private int falselyFewer;
    private int times;

    /** Rounds of these seeds at one stand, with this share of starts tapped. */
    static Leavings of(double startTaps, long fromSeed, int rounds) {
        Leavings all = new Leavings();
        Season season = new Season(Truth.leaving(startTaps), true);
        for (int round = 0; round < rounds; round++) {
            Watch watch = all.new Watch(season);
            List<Served> served = season.next(fromSeed + round, lunch -> lunch.watch(watch));
            if (watch.placed > ORDERS) {
                served.stream()
                        .filter(s -> s.sinceMs() >= watch.thirdMs)
                        .filter(s -> s.sinceMs() <= watch.lastMs)
                        .forEach(all.after::add);
            }
        }
        return all;
    }

    int times() {
        return times;
    }

    /** The number believed, on average, when so many orders were placed after a leaving. */
    double mean(int orders) {
        return sum[orders] / times;
    }

    /** In which share of leavings fewer hands than before were believed in by then. */
    double known(int orders) {
        return fewer[orders] / (double) times;
    }

    /** The number believed before anybody left, on average over the orders placed. */
    double meanBefore() {
        return sumBefore / before;
    }

    /** The share of orders placed before anybody left at which too few were believed in. */
    double falselyFewer() {
        return falselyFewer / (double) before;
    }

    /** The third to the twentieth order placed after a leaving. */
    List<Served> after() {
        return after;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        text.append(
                String.format(
                        Locale.ROOT,
                        "%d leavings; hands believed before %.2f (too few at %.1f %% of orders);"
                                + " orders after: mean (known)",
                        times,
                        meanBefore(),
                        100 * falselyFewer()));
        for (int orders = 0; orders <= ORDERS; orders++) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            " %d: %.2f (%.0f %%)",
                            orders,
                            mean(orders),
                            100 * known(orders)));
        }
        return text.toString();
    }

    /** Watches one round. */
    private final class Watch implements Lunch.Watcher {
        private static final int LAST = 20;

        private final Season season;
        private final long beginMs;
        private boolean left;
        private int placed;
        private long thirdMs = Long.MAX_VALUE;
        private long lastMs = Long.MAX_VALUE;

        Watch(Season season) {
            this.season = season;
            this.beginMs = season.nextBeginMs();
        }

        @Override
        public void left(long nowMs) {
            long waiting =
                    kitchen().inSight("line").stream()
                            .filter(part -> part.state() == PartState.WAITING)
                            .count();
            left = waiting >= HANDS - 1 + 2;
            if (left) {
                times++;
                note(0, believed(nowMs));
            }
        }

        @Override
        public void placed(Order order) {
            double hands = believed(order.placedAtMs());
            long sinceMs = order.placedAtMs() - beginMs;
            if (left) {
                placed++;
                thirdMs = placed == 3 ? sinceMs : thirdMs;
                lastMs = placed == LAST ? sinceMs : lastMs;
                if (placed <= ORDERS) {
                    note(placed, hands);
                }
            } else if (sinceMs < 30 * 60_000) {
                sumBefore += hands;
                before++;
                falselyFewer += hands < HANDS - 0.5 ? 1 : 0;
            }
        }

        private void note(int orders, double hands) {
            sum[orders] += hands;
            fewer[orders] += hands < HANDS - 0.5 ? 1 : 0;
        }

        private double believed(long nowMs) {
            Station line = season.script().menu().station("line");
            return kitchen().handsAtWork(line, nowMs);
        }

        private Kitchen kitchen() {
            return season.script().stand().kitchen();
        }
    }
}
