package sopwell.prep.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.prep.plan.Bound.Kind;
import sopwell.prep.plan.Calendar.Ease;
import sopwell.prep.plan.Scheduler.Placed;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Watch;

/**
 * Finds what keeps a placed load from starting later: each thing is looked away from in turn, and
 * if the latest start moves, that thing stands in the way of the step that moves onto it. For one
 * load, while everything else is booked.
 */
final class Bounds {
    private final Calendar calendar;
    private final Load load;
    private final List<Long> starts;
    private final long now;

    private Bounds(Calendar calendar, Placed placed, long now) {
        this.calendar = calendar;
        this.load = placed.load();
        this.starts = placed.starts();
        this.now = now;
    }

    /** What keeps a load from starting later; waits first, in the order of its steps. */
    static List<Bound> of(Calendar calendar, Placed placed, long now) {
        Placing.free(calendar, placed.load(), placed.starts());
        List<Bound> found = new Bounds(calendar, placed, now).all();
        Placing.book(calendar, placed.load(), placed.starts());
        return found;
    }

    private List<Bound> all() {
        List<Bound> found = new ArrayList<>(waits());
        Optional<Long> free =
                Placing.latest(calendar, load, now)
                        .map(later -> later.get(0))
                        .filter(start -> start > starts.get(0));
        if (free.isPresent()) {
            found.add(at(Kind.EARLY, 0, free.get()));
            return found;
        }
        int waits = found.size();
        add(found, Ease.RESOURCES, Kind.RESOURCE);
        add(found, Ease.HOURS, Kind.HOURS);
        add(found, Ease.HANDS, Kind.HANDS);
        long pure = pure();
        if (found.size() == waits && starts.get(0) < pure) {
            found.add(at(Kind.SEVERAL, 0, pure));
        }
        return found;
    }

    private List<Bound> waits() {
        List<Bound> found = new ArrayList<>();
        List<PrepStep> steps = load.recipe().steps();
        for (int k = 0; k < steps.size(); k++) {
            PrepStep step = steps.get(k);
            boolean alone =
                    step.watch() == Watch.COOL
                            || step.watch() == Watch.CHILL
                            || step.watch() == Watch.MATURE;
            long minutes = (alone ? step.minutes() : 0) + (long) step.minWaitMinutes();
            if (minutes > 0) {
                long from = starts.get(k) + (alone ? 0 : step.minutes());
                found.add(
                        new Bound(
                                Kind.WAIT,
                                step.id(),
                                "",
                                Calendar.instant(from),
                                Calendar.instant(from + minutes),
                                Calendar.instant(starts.get(0))));
            }
        }
        return found;
    }

    /** The latest start if nothing but the steps and their waits took time. */
    private long pure() {
        long minute = load.byMinute();
        for (PrepStep step : load.recipe().steps()) {
            minute -= step.minutes();
        }
        for (int k = 0; k + 1 < load.recipe().steps().size(); k++) {
            minute -= load.recipe().steps().get(k).minWaitMinutes();
        }
        return minute;
    }

    private void add(List<Bound> found, Ease ease, Kind kind) {
        Optional<List<Long>> eased = Placing.latest(calendar, load, now, ease);
        if (eased.isEmpty() || eased.get().get(0) <= starts.get(0)) {
            return;
        }
        List<PrepStep> steps = load.recipe().steps();
        for (int k = steps.size() - 1; k >= 0; k--) {
            long start = eased.get().get(k);
            Spans allowed = calendar.starts(steps.get(k), load.lots(), Ease.NOTHING);
            if (allowed.latest(start, start).isEmpty()) {
                found.add(bound(kind, k, start, eased.get().get(0)));
                return;
            }
        }
    }

    private Bound bound(Kind kind, int k, long start, long otherwise) {
        PrepStep step = load.recipe().steps().get(k);
        return switch (kind) {
            case RESOURCE -> {
                String id = step.resource().orElseThrow();
                long minutes = step.minutes() + (long) calendar.turnaround(id);
                Taken taken = taken(id, step.slotsPerLot() * load.lots(), start, minutes);
                yield new Bound(kind, step.id(), id, taken.from(), taken.until(), at(otherwise));
            }
            case HANDS -> {
                int hands = Load.hands(step, load.lots());
                long minutes = Load.handsMinutes(step, load.lots());
                Taken taken = taken(Calendar.HANDS, hands, start, minutes);
                yield new Bound(kind, step.id(), "", taken.from(), taken.until(), at(otherwise));
            }
            case HOURS -> {
                boolean begins = step.startAttended() || Load.handsMinutes(step, load.lots()) > 0;
                boolean absent = begins && !calendar.isAttended(start);
                long busy = Load.handsMinutes(step, load.lots());
                long end = start + (step.endAttended() ? step.minutes() : busy);
                Instant moment = at(absent ? start : end);
                yield new Bound(kind, step.id(), "", moment, moment, at(otherwise));
            }
            case WAIT, SEVERAL, EARLY -> at(kind, k, otherwise);
        };
    }

    private Bound at(Kind kind, int k, long otherwise) {
        Instant start = at(starts.get(0));
        return new Bound(kind, load.recipe().steps().get(k).id(), "", start, start, at(otherwise));
    }

    private static Instant at(long minute) {
        return Calendar.instant(minute);
    }

    private record Taken(Instant from, Instant until) {}

    private Taken taken(String resource, int wanted, long start, long minutes) {
        long[] span = calendar.taken(resource, wanted, start, start + minutes);
        return new Taken(at(span[0]), at(span[1]));
    }
}
