package sopwell.desk;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import sopwell.Limits;
import sopwell.audit.AuditEvent.DoneBy;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.audit.Who;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.StandSettings;
import sopwell.till.TillEvent.OrderRefunded;

/** Who did what, as the log has it. Reads the log anew each time; thread-safe. */
public final class AuditTrail {
    /** What nobody asked for. */
    public static final Who BY_ITSELF = new Who("", "", "", "");

    private final EventLog log;
    private final StandSettings settings;

    /** What a stand's log has. */
    public AuditTrail(EventLog log, StandSettings settings) {
        this.log = log;
        this.settings = settings;
    }

    /**
     * Something that was done. Immutable.
     *
     * @param events what must be answered for, in order
     * @param order the order that it was done to, as it was when its day was left, if it was one
     */
    public record Deed(long atMs, Who who, List<Event> events, Optional<Order> order) {
        public Deed {
            events = List.copyOf(events);
        }
    }

    /**
     * A date's deeds. Immutable.
     *
     * @param deeds newest first
     * @param more whether there were more than are listed
     */
    public record Day(List<Deed> deeds, boolean more) {
        public Day {
            deeds = List.copyOf(deeds);
        }
    }

    /** What was done on a date of the stand's calendar. */
    public Day day(LocalDate date) {
        ZoneId zone = settings.zone();
        List<Long> places = places();
        int from = firstAt(places, date.atStartOfDay(zone).toInstant().toEpochMilli());
        int to = firstAt(places, date.plusDays(1).atStartOfDay(zone).toInstant().toEpochMilli());
        int begin = Math.max(from, to - Limits.AUDIT_DEEDS_MAX);
        List<List<Recorded>> commands = new ArrayList<>();
        for (long place : places.subList(begin, to)) {
            commands.add(command(place));
        }
        Map<String, Order> orders = orders(commands);
        List<Deed> deeds = new ArrayList<>();
        for (List<Recorded> command : commands) {
            deeds.add(deed(command, orders));
        }
        Collections.reverse(deeds);
        return new Day(deeds, begin > from);
    }

    /** Where it is said by whom something was done, and where Sopwell took out names by itself. */
    private List<Long> places() {
        List<Long> doneBy = log.placesOf(DoneBy.class);
        Set<Long> said = new HashSet<>(doneBy);
        List<Long> places = new ArrayList<>(doneBy);
        log.placesOf(NamesErased.class).stream()
                .filter(place -> !said.contains(place + 1))
                .forEach(places::add);
        Collections.sort(places);
        return places;
    }

    private static Deed deed(List<Recorded> command, Map<String, Order> orders) {
        Recorded last = command.get(command.size() - 1);
        List<Event> events = command.stream().map(Recorded::event).filter(Answerable::is).toList();
        Optional<Order> order =
                events.stream()
                        .flatMap(event -> orderOf(event).stream())
                        .findFirst()
                        .map(orders::get);
        Who who = last.event() instanceof DoneBy done ? done.who() : BY_ITSELF;
        return new Deed(last.atMs(), who, events, order);
    }

    /** Everything of the command that ends at a place. */
    private List<Recorded> command(long place) {
        Recorded last = at(place);
        List<Recorded> command = new ArrayList<>();
        log.read(place - last.ordinal(), place, command::add);
        return command;
    }

    /** The orders that commands are about. They are of the day that was open, or closed last. */
    private Map<String, Order> orders(List<List<Recorded>> commands) {
        Map<String, Order> orders = new HashMap<>();
        Set<LocalDate> read = new HashSet<>();
        for (List<Recorded> command : commands) {
            for (Recorded recorded : command) {
                if (orderOf(recorded.event()).isPresent()) {
                    dateAt(recorded.seq()).filter(read::add).ifPresent(date -> add(orders, date));
                }
            }
        }
        return orders;
    }

    private void add(Map<String, Order> orders, LocalDate date) {
        Replay.day(log, settings, date)
                .ifPresent(
                        stand ->
                                stand.orders()
                                        .all()
                                        .forEach(order -> orders.put(order.id(), order)));
    }

    private Optional<LocalDate> dateAt(long place) {
        OptionalLong opened = log.lastOf(DayOpened.class, place);
        return opened.isEmpty()
                ? Optional.empty()
                : Optional.of(((DayOpened) at(opened.getAsLong()).event()).date());
    }

    private static Optional<String> orderOf(Event event) {
        if (event instanceof OrderRefunded refunded) {
            return Optional.of(refunded.order());
        }
        return event instanceof OrderEvent order ? order.about() : Optional.empty();
    }

    /** The first of some places whose event is not before a time; their number when all are. */
    private int firstAt(List<Long> places, long atMs) {
        int low = 0;
        int high = places.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (at(places.get(middle)).atMs() < atMs) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private Recorded at(long place) {
        List<Recorded> found = new ArrayList<>(1);
        log.read(place, place, found::add);
        return found.get(0);
    }
}
