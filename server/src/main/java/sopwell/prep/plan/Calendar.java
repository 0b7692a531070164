package sopwell.prep.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Resource;

/** Who is there when, and what is occupied when. Not thread-safe: for one plan. */
final class Calendar {
    /** Under this name the kitchen's hands are booked; no id of a resource can be the same. */
    static final String HANDS = "(hands)";

    private static final int SECONDS = 60;

    private final Map<String, Resource> resources = new HashMap<>();
    private final int hands;

    /** Each date's first minute and its last; two dates that touch are still two. */
    private final long[] attended;

    private final Map<String, Usage> usages = new HashMap<>();

    /** Slots that are taken from a minute until before another. */
    record Booking(long from, long until, int slots) {}

    /**
     * A calendar without bookings.
     *
     * @param ask the book of recipes, the hands and the dates without any
     * @param from the first date on which anybody may work
     * @param to the last one
     */
    Calendar(PlanAsk ask, LocalDate from, LocalDate to) {
        ask.book().resources().forEach(one -> resources.put(one.id(), one));
        this.hands = ask.terms().hands();
        LongStream.Builder ends = LongStream.builder();
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            Optional<KitchenHours.Span> hours = ask.book().hours().on(date.getDayOfWeek());
            if (hours.isPresent() && !ask.terms().away().contains(date)) {
                long start = minute(at(date, hours.get().from(), ask.zone()));
                ends.add(start).add(minute(at(date, hours.get().to(), ask.zone())));
            }
        }
        this.attended = ends.build().toArray();
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
        Usage usage = usages.computeIfAbsent(resource, id -> new Usage());
        usage.change(booking.from(), booking.slots());
        usage.change(booking.until(), -booking.slots());
    }

    void free(String resource, Booking booking) {
        book(resource, new Booking(booking.from(), booking.until(), -booking.slots()));
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

    /** Whether somebody is in the kitchen. */
    boolean isAttended(long minute) {
        return within(0, 0).latest(minute, minute).isPresent();
    }

    /**
     * The first time between two minutes during which fewer slots are free than are wanted; both
     * minutes where they are free all the time.
     */
    long[] taken(String resource, int wanted, long from, long until) {
        Usage usage = usages.get(resource);
        return usage == null
                ? new long[] {from, until}
                : usage.above(slots(resource) - wanted, from, until);
    }

    /** Starts after which both minutes fall into one span of somebody's presence. */
    private Spans within(long first, long last) {
        Spans.Joined joined = new Spans.Joined(attended.length / 2);
        for (int i = 0; i < attended.length; i += 2) {
            joined.and(attended[i] - first, attended[i + 1] - last);
        }
        return joined.spans();
    }

    private Spans whileFree(String resource, long minutes, int wanted) {
        int most = slots(resource) - wanted;
        if (most < 0) {
            return Spans.of(1, 0);
        }
        Usage usage = usages.get(resource);
        return usage == null ? Spans.of(-Spans.FAR, Spans.FAR) : usage.whileAtMost(most, minutes);
    }

    /** What is looked away from, to find what stands in the way. */
    enum Ease {
        NOTHING,
        HOURS,
        RESOURCES,
        HANDS
    }
}
