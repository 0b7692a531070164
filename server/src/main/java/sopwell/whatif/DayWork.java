package sopwell.whatif;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import sopwell.Check;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartState;
import sopwell.kitchen.Router;
import sopwell.kitchen.StationEvent.HandsSet;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Station;
import sopwell.mix.HalfHours;
import sopwell.orders.Order;
import sopwell.orders.Orders;

/**
 * Who came on a day, what each asked of which station, and how long that took. Immutable.
 *
 * <p>A part that was begun and put up by a tap each, once and unaltered, takes as long as it did;
 * any other takes what the stand knew of its kind at the day's end, with the usual spread.
 *
 * @param guests in the order in which they reached the kitchen; void orders are not among them
 */
public record DayWork(List<Bench> benches, List<Guest> guests) {
    private static final int HALF_HOUR_MINUTES = 30;

    public DayWork {
        benches = List.copyOf(benches);
        guests = List.copyOf(guests);
    }

    /**
     * What a day's work is read from.
     *
     * @param menu the menu of the day's last order, whose stations do the work
     * @param menus the menu of a revision that an order of the day names
     * @param said what was said of stations during the day
     */
    public record Sources(
            Orders orders,
            Kitchen kitchen,
            Menu menu,
            Function<String, Menu> menus,
            ZoneId zone,
            List<Recorded> said) {}

    /** The work of the newest day of a kitchen, as it stands at that day's end. */
    public static DayWork of(Sources from) {
        List<Bench> benches = from.menu().stations().stream().map(s -> bench(s, from)).toList();
        Times times = new Times(from.kitchen().learned().learned());
        LocalDate date = from.orders().date().orElse(LocalDate.EPOCH);
        List<Guest> guests = new ArrayList<>();
        for (Order order : from.orders().all()) {
            List<Task> tasks = order.isVoid() ? List.of() : tasks(order, from, times);
            if (!tasks.isEmpty()) {
                guests.add(
                        new Guest(
                                guests.size(),
                                order.placedAtMs(),
                                order.takenAtMs(),
                                HalfHours.of(date, from.zone(), order.takenAtMs()),
                                windowMs(order.placedAtMs(), from.zone()),
                                wholeMs(order, from.kitchen()),
                                tasks));
            }
        }
        guests.sort(Comparator.comparingLong(Guest::atMs));
        return new DayWork(benches, guests);
    }

    /** How many tasks there are. */
    public int tasks() {
        return guests.stream().mapToInt(guest -> guest.tasks().size()).sum();
    }

    /** How many of them take as long as was measured. */
    public int measured() {
        return (int)
                guests.stream()
                        .flatMap(guest -> guest.tasks().stream())
                        .filter(Task::measured)
                        .count();
    }

    private static Bench bench(Station station, Sources from) {
        List<Bench.Shift> hands = new ArrayList<>();
        hands.add(new Bench.Shift(Long.MIN_VALUE, station.hands()));
        for (Recorded one : from.said()) {
            if (one.event() instanceof HandsSet set && set.station().equals(station.id())) {
                hands.add(new Bench.Shift(one.atMs(), set.hands()));
            }
        }
        return new Bench(station.id(), station.name(), station.load(), hands);
    }

    private static List<Task> tasks(Order order, Sources from, Times times) {
        List<Part> parts = new ArrayList<>();
        for (Part part : from.kitchen().parts(order.id())) {
            if (!part.cancelled() && from.menu().hasStation(part.id().station())) {
                parts.add(part);
            }
        }
        List<Task> tasks = new ArrayList<>();
        for (Part part : parts) {
            tasks.add(task(part, parts, from, times));
        }
        return tasks;
    }

    private static Task task(Part part, List<Part> all, Sources from, Times times) {
        Menu menu = from.menus().apply(part.making().menuRevision());
        Selection selection = part.making().selection();
        String id = part.id().station();
        List<String> first = Router.waitsFor(menu, selection, id);
        List<Integer> waitsFor = new ArrayList<>();
        for (int place = 0; place < all.size(); place++) {
            Part other = all.get(place);
            if (other.id().line() == part.id().line() && first.contains(other.id().station())) {
                waitsFor.add(place);
            }
        }
        Station station = from.menu().station(id);
        int pieces = part.making().quantity();
        double known = times.pieceMs(id, selection, Router.seconds(menu, selection, id));
        double took = tookMs(part, station.load());
        boolean measured = took > 0 && Times.isBelieved(took, known);
        return new Task(
                from.menu().stations().indexOf(station),
                pieces,
                waitsFor,
                measured,
                measured ? took : known,
                measured ? 0 : times.spread(id));
    }

    /** How long a piece, or the load that it was in, took; 0 when that is not known. */
    private static double tookMs(Part part, int load) {
        int pieces = part.making().quantity();
        boolean told =
                part.state() == PartState.UP
                        && part.startedAtMs() < part.upAtMs()
                        && part.again().isEmpty()
                        && part.before().isEmpty()
                        && pieces <= (load == 1 ? Shop.RUN_PIECES : load);
        double allMs = told ? part.upAtMs() - part.startedAtMs() : 0;
        return load == 1 ? allMs / pieces : allMs;
    }

    private static long wholeMs(Order order, Kitchen kitchen) {
        boolean whole = kitchen.parts(order.id()).stream().allMatch(Part::isDone);
        return whole ? kitchen.wholeAtMs(order.id()) : 0;
    }

    private static long windowMs(long atMs, ZoneId zone) {
        ZonedDateTime at = Instant.ofEpochMilli(atMs).atZone(zone).truncatedTo(ChronoUnit.MINUTES);
        long begin = at.minusMinutes(at.getMinute() % HALF_HOUR_MINUTES).toInstant().toEpochMilli();
        Check.that(begin <= atMs, "a half hour begins before what is in it");
        return begin;
    }
}
