package sopwell.prep.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sopwell.prep.plan.Spans.Span;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Resource;

/** Who is there when, and what is occupied when. Not thread-safe: for one plan. */
final class Calendar {
    /** Under this name the kitchen's hands are booked; no id of a resource can be the same. */
    static final String HANDS = "(hands)";

    private static final int SECONDS = 60;

    private final Map<String, Resource> resources = new HashMap<>();
    private final int hands;
    private final List<Span> attended = new ArrayList<>();
    private final Map<String, List<Booking>> bookings = new HashMap<>();

    /** Slots that are taken from a minute until before another. */
    record Booking(long from, long until, int slots) {}

    /**
     * A calendar without bookings.
     *
     * @param from the first date on which anybody may work
     * @param to the last one
     */
    Calendar(RecipeBook book, ZoneId zone, int hands, LocalDate from, LocalDate to) {
        book.resources().forEach(one -> resources.put(one.id(), one));
        this.hands = hands;
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            Optional<KitchenHours.Span> hours = book.hours().on(date.getDayOfWeek());
            if (hours.isPresent()) {
                long start = minute(at(date, hours.get().from(), zone));
                attended.add(new Span(start, minute(at(date, hours.get().to(), zone))));
            }
        }
    }

    static Instant at(LocalDate date, LocalTime time, ZoneId zone) {
        return date.atTime(time).atZone(zone).toInstant();
    }

    static long minute(Instant instant) {
        return Math.floorDiv(instant.getEpochSecond(), SECONDS);
    }

    static Instant instant(long minute) {
        return Instant.ofEpochSecond(minute * SECONDS);
    }

    void book(String resource, Booking booking) {
        bookings.computeIfAbsent(resource, id -> new ArrayList<>()).add(booking);
    }

    void free(String resource, Booking booking) {
        bookings.get(resource).remove(booking);
    }

    int slots(String resource) {
        return resource.equals(HANDS) ? hands : resources.get(resource).slots();
    }

    int turnaround(String resource) {
        return resource.equals(HANDS) ? 0 : resources.get(resource).turnaroundMinutes();
    }

    /** When a step of so many lots may start, as far as people and resources go. */
    Spans starts(PrepStep step, int lots, Ease ease) {
        Spans starts = Spans.of(-Spans.FAR, Spans.FAR);
        int busy = Load.handsMinutes(step, lots);
        if (ease != Ease.HOURS) {
            if (step.startAttended()) {
                starts = starts.and(within(0, 0));
            }
            if (step.endAttended()) {
                starts = starts.and(within(step.minutes(), step.minutes()));
            }
            if (busy > 0) {
                starts = starts.and(within(0, busy));
            }
        }
        if (ease != Ease.RESOURCES && step.resource().isPresent()) {
            String id = step.resource().get();
            long taken = step.minutes() + (long) turnaround(id);
            starts = starts.and(whileFree(id, taken, step.slotsPerLot() * lots));
        }
        if (ease != Ease.HANDS && busy > 0) {
            starts = starts.and(whileFree(HANDS, busy, Load.hands(step, lots)));
        }
        return starts;
    }

    /** Starts after which both minutes fall into one span of somebody's presence. */
    private Spans within(long first, long last) {
        return Spans.joined(
                attended.stream().map(s -> new Span(s.from() - first, s.to() - last)).toList());
    }

    private Spans whileFree(String resource, long minutes, int wanted) {
        int most = slots(resource) - wanted;
        List<Booking> taken = bookings.getOrDefault(resource, List.of());
        if (most < 0) {
            return Spans.of(1, 0);
        }
        TreeMap<Long, Integer> changes = new TreeMap<>();
        for (Booking one : taken) {
            changes.merge(one.from(), one.slots(), Integer::sum);
            changes.merge(one.until(), -one.slots(), Integer::sum);
        }
        List<Span> full = new ArrayList<>();
        int used = 0;
        long since = 0;
        for (Map.Entry<Long, Integer> change : changes.entrySet()) {
            if (used > most) {
                full.add(new Span(since - minutes + 1, change.getKey() - 1));
            }
            used += change.getValue();
            since = change.getKey();
        }
        return Spans.joined(full).outside();
    }

    /** What is looked away from, to find what stands in the way. */
    enum Ease {
        NOTHING,
        HOURS,
        RESOURCES,
        HANDS
    }
}
