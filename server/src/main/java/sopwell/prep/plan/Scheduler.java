package sopwell.prep.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import sopwell.prep.plan.Calendar.Ease;

/**
 * Places loads one after another, each as late as can be, those that may start latest first. When
 * some find no place, other orders are tried: all of them for a few loads, exchanges of two for
 * many. Not thread-safe: for one plan.
 */
final class Scheduler {
    /** So many loads are tried in every order, and each both late and soon. */
    private static final int EVERY_ORDER_MAX = 5;

    /** So many other orders are tried for more. */
    private static final int EXCHANGES_MAX = 300;

    private final Calendar calendar;
    private final long now;
    private List<Placed> best = List.of();
    private int bestLots;

    Scheduler(Calendar calendar, long now) {
        this.calendar = calendar;
        this.now = now;
    }

    /** A load and the minutes at which its steps start. */
    record Placed(Load load, List<Long> starts) {
        long ready() {
            int last = starts.size() - 1;
            return starts.get(last) + load.recipe().steps().get(last).minutes();
        }
    }

    /** Lots that can't be ready in time, what stands in the way, and when they could be. */
    record Missed(Load load, Hindrance hindrance, OptionalLong readyMinute) {}

    /** What became of the loads; what is placed is booked. */
    record Result(List<Placed> placed, List<Missed> missed) {}

    Result place(List<Load> loads) {
        Map<Load, Long> alone = new HashMap<>();
        loads.forEach(load -> alone.computeIfAbsent(load, this::aloneLatest));
        List<Load> order = new ArrayList<>(loads);
        order.sort(Comparator.<Load>comparingLong(alone::get).reversed());
        List<Load> hopeful = order.stream().filter(load -> alone.get(load) > -Spans.FAR).toList();
        int all = hopeful.stream().mapToInt(Load::lots).sum();
        best = List.of();
        bestLots = -1;
        attempt(hopeful, 0);
        if (bestLots < all) {
            search(hopeful, all);
        }
        best.forEach(one -> Placing.book(calendar, one.load(), one.starts()));
        List<Placed> placed = new ArrayList<>(best);
        List<Load> left = new ArrayList<>(order);
        best.forEach(one -> left.remove(one.load()));
        List<Rest> rests = left.stream().map(load -> reduce(load, placed)).toList();
        return new Result(placed, missed(rests));
    }

    /** What is left of a load, and what stood in the way. */
    private record Rest(Load load, Hindrance hindrance) {}

    /** When what is left could be ready: one after another, since they share the resources. */
    private List<Missed> missed(List<Rest> rests) {
        List<Missed> missed = new ArrayList<>();
        List<Placed> late = new ArrayList<>();
        for (Rest rest : rests) {
            Optional<Placed> soonest =
                    Placing.soonest(calendar, rest.load(), now)
                            .map(starts -> new Placed(rest.load(), starts));
            soonest.ifPresent(
                    one -> {
                        Placing.book(calendar, one.load(), one.starts());
                        late.add(one);
                    });
            OptionalLong ready =
                    soonest.isPresent()
                            ? OptionalLong.of(soonest.get().ready())
                            : OptionalLong.empty();
            missed.add(new Missed(rest.load(), rest.hindrance(), ready));
        }
        late.forEach(one -> Placing.free(calendar, one.load(), one.starts()));
        return missed;
    }

    private long aloneLatest(Load load) {
        return Placing.latest(calendar, load, now).map(s -> s.get(0)).orElse(-Spans.FAR);
    }

    private void search(List<Load> order, int all) {
        int count = order.size();
        if (count <= EVERY_ORDER_MAX) {
            orders(new ArrayList<>(order), 0, all);
            return;
        }
        int tries = 0;
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count && tries < EXCHANGES_MAX && bestLots < all; j++) {
                List<Load> other = new ArrayList<>(order);
                Collections.swap(other, i, j);
                attempt(other, 0);
                tries++;
            }
        }
    }

    private void orders(List<Load> order, int at, int all) {
        if (bestLots >= all) {
            return;
        }
        if (at == order.size()) {
            for (int soon = 0; soon < 1 << order.size() && bestLots < all; soon++) {
                attempt(order, soon);
            }
            return;
        }
        Set<Load> tried = new HashSet<>();
        for (int i = at; i < order.size(); i++) {
            if (!tried.add(order.get(i))) {
                continue;
            }
            Collections.swap(order, at, i);
            orders(order, at + 1, all);
            Collections.swap(order, at, i);
        }
    }

    /** Places in this order and takes it all back; the bits say which loads go soon, not late. */
    private void attempt(List<Load> order, int soon) {
        List<Placed> placed = new ArrayList<>();
        int lots = 0;
        for (int i = 0; i < order.size(); i++) {
            Load load = order.get(i);
            boolean early = i < EVERY_ORDER_MAX && (soon >> i & 1) == 1;
            Optional<Placed> one =
                    (early
                                    ? Placing.soonest(calendar, load, now)
                                    : Placing.latest(calendar, load, now))
                            .map(starts -> new Placed(load, starts))
                            .filter(found -> found.ready() <= load.byMinute());
            if (one.isPresent()) {
                Placing.book(calendar, load, one.get().starts());
                placed.add(one.get());
                lots += load.lots();
            }
        }
        placed.forEach(one -> Placing.free(calendar, one.load(), one.starts()));
        if (lots > bestLots) {
            bestLots = lots;
            best = placed;
        }
    }

    /** Places the most lots of a load that can be ready in time, and gives the others. */
    private Rest reduce(Load load, List<Placed> placed) {
        Hindrance hindrance = hindrance(load);
        int lots = load.lots() - 1;
        while (lots > 0) {
            Load less = load.withLots(lots);
            Optional<List<Long>> starts = Placing.latest(calendar, less, now);
            if (starts.isPresent()) {
                Placing.book(calendar, less, starts.get());
                placed.add(new Placed(less, starts.get()));
                break;
            }
            lots--;
        }
        return new Rest(load.withLots(load.lots() - lots), hindrance);
    }

    private Hindrance hindrance(Load load) {
        if (Placing.possible(calendar, load, now, Ease.RESOURCES)) {
            return Hindrance.RESOURCE;
        }
        if (Placing.possible(calendar, load, now, Ease.HOURS)) {
            return Hindrance.HOURS;
        }
        if (Placing.possible(calendar, load, now, Ease.HANDS)) {
            return Hindrance.HANDS;
        }
        return Placing.possible(calendar, load, -Spans.FAR / 2, Ease.NOTHING)
                ? Hindrance.TIME
                : Hindrance.ROUTE;
    }
}
