package sopwell.prep.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import sopwell.prep.plan.Calendar.Booking;
import sopwell.prep.plan.Calendar.Ease;
import sopwell.stock.recipes.PrepStep;

/**
 * Finds times for the steps of one load. Stateless.
 *
 * <p>Forward, from the first step: at which minutes each step may start so that all before it can
 * be done. Backward, from the last: of those, the latest that the step after it allows. Since both
 * are whole sets of minutes, no waiting time and no gap is missed.
 */
final class Placing {
    private Placing() {}

    /** The latest starts with which the load is ready in time; empty when there are none. */
    static Optional<List<Long>> latest(Calendar calendar, Load load, long now) {
        return latest(calendar, load, now, Ease.NOTHING);
    }

    /** The same if one thing did not stand in the way. */
    static Optional<List<Long>> latest(Calendar calendar, Load load, long now, Ease ease) {
        List<Spans> reach = reach(calendar, load, now, ease);
        return back(calendar, load, reach, load.byMinute() - last(load));
    }

    /** The starts with which the load is ready as soon as can be; empty when it never is. */
    static Optional<List<Long>> soonest(Calendar calendar, Load load, long now) {
        List<Spans> reach = reach(calendar, load, now, Ease.NOTHING);
        OptionalLong end = reach.get(reach.size() - 1).earliest();
        return end.isPresent() ? back(calendar, load, reach, end.getAsLong()) : Optional.empty();
    }

    /** Whether the load could be ready in time if one thing did not stand in the way. */
    static boolean possible(Calendar calendar, Load load, long now, Ease ease) {
        return latest(calendar, load, now, ease).isPresent();
    }

    /** Occupies what the steps occupy. */
    static void book(Calendar calendar, Load load, List<Long> starts) {
        bookings(calendar, load, starts).forEach(b -> calendar.book(b.resource(), b.booking()));
    }

    /** Gives back what the steps occupied. */
    static void free(Calendar calendar, Load load, List<Long> starts) {
        bookings(calendar, load, starts).forEach(b -> calendar.free(b.resource(), b.booking()));
    }

    private record Taken(String resource, Booking booking) {}

    private static List<Taken> bookings(Calendar calendar, Load load, List<Long> starts) {
        List<Taken> found = new ArrayList<>();
        for (int k = 0; k < starts.size(); k++) {
            PrepStep step = load.recipe().steps().get(k);
            long from = starts.get(k);
            if (step.resource().isPresent()) {
                String id = step.resource().get();
                long until = from + step.minutes() + calendar.turnaround(id);
                int slots = step.slotsPerLot() * load.lots();
                found.add(new Taken(id, new Booking(from, until, slots)));
            }
            int busy = Load.handsMinutes(step, load.lots());
            if (busy > 0) {
                int hands = Load.hands(step, load.lots());
                found.add(new Taken(Calendar.HANDS, new Booking(from, from + busy, hands)));
            }
        }
        return found;
    }

    private static List<Spans> reach(Calendar calendar, Load load, long now, Ease ease) {
        List<Spans> reach = new ArrayList<>();
        Spans before = Spans.of(now, Spans.FAR);
        List<PrepStep> steps = load.recipe().steps();
        for (int k = 0; k < steps.size(); k++) {
            PrepStep step = steps.get(k);
            Spans starts = calendar.starts(step, load.lots(), ease).and(before);
            if (step.id().equals(load.recipe().datedFrom())) {
                starts = starts.and(Spans.of(load.freshMinute() - step.minutes(), Spans.FAR));
            }
            reach.add(starts);
            long least = step.minutes() + leastWait(calendar, load, k);
            before = starts.shifted(least, step.minutes() + load.mostWait(k));
        }
        return reach;
    }

    private static Optional<List<Long>> back(
            Calendar calendar, Load load, List<Spans> reach, long latest) {
        List<PrepStep> steps = load.recipe().steps();
        List<Long> starts = new ArrayList<>();
        long from = -Spans.FAR;
        long to = latest;
        for (int k = steps.size() - 1; k >= 0; k--) {
            OptionalLong start = reach.get(k).latest(from, to);
            if (start.isEmpty()) {
                return Optional.empty();
            }
            starts.add(0, start.getAsLong());
            if (k > 0) {
                PrepStep step = steps.get(k - 1);
                to = start.getAsLong() - step.minutes() - leastWait(calendar, load, k - 1);
                from = start.getAsLong() - step.minutes() - load.mostWait(k - 1);
            }
        }
        return Optional.of(starts);
    }

    /** A run that comes back to a resource finds it turned round like any other. */
    private static long leastWait(Calendar calendar, Load load, int before) {
        List<PrepStep> steps = load.recipe().steps();
        long least = steps.get(before).minWaitMinutes();
        if (before + 1 == steps.size() || steps.get(before + 1).resource().isEmpty()) {
            return least;
        }
        String id = steps.get(before + 1).resource().get();
        long since = 0;
        for (int j = before; j >= 0; j--) {
            if (steps.get(j).resource().filter(id::equals).isPresent()) {
                return Math.max(least, calendar.turnaround(id) - since);
            }
            since += steps.get(j).minutes();
            since += j > 0 ? steps.get(j - 1).minWaitMinutes() : 0;
        }
        return least;
    }

    private static int last(Load load) {
        List<PrepStep> steps = load.recipe().steps();
        return steps.get(steps.size() - 1).minutes();
    }
}
