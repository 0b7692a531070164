package sopwell.orders;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sopwell.Check;
import sopwell.Limits;
import sopwell.audit.Who;

/** The orders of the newest business day. Not thread-safe: its owner is one thread. */
public final class Orders {
    /** Ids of one day differ only in their running number; a longer one is a later one. */
    private static final Comparator<String> BY_AGE =
            Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder());

    private final Map<String, Order> orders = new LinkedHashMap<>();
    private final Map<Integer, Order> openByNumber = new HashMap<>();
    private final TreeMap<String, Order> open = new TreeMap<>(BY_AGE);
    private final Deque<String> lastHanded = new ArrayDeque<>();
    private final Map<String, Deque<Order>> earlier = new HashMap<>();
    private final List<Reopening> reopenings = new ArrayList<>();
    private LocalDate date;
    private long closedAtMs;
    private boolean dayOpen;
    private long cutAtMs;
    private int nextNumber = 1;
    private int nextOrdinal = 1;

    /** Takes in what happened; never refuses. */
    public void apply(OrderEvent event, long atMs) {
        switch (event.kind()) {
            case DAY_OPENED -> openDay((OrderEvent.DayOpened) event);
            case DAY_CLOSED -> closeDay(atMs);
            case DAY_REOPENED ->
                    reopenings.add(new Reopening(atMs, ((OrderEvent.DayReopened) event).reason()));
            case PLACED -> place((OrderEvent.OrderPlaced) event, atMs);
            case TOLD -> {
                OrderEvent.OrderTold told = (OrderEvent.OrderTold) event;
                put(get(told.order()).told(told));
            }
            case CHANGED -> {
                OrderEvent.OrderChanged changed = (OrderEvent.OrderChanged) event;
                remember(get(changed.order()));
                put(get(changed.order()).changed(changed));
            }
            case DISCOUNTED -> {
                OrderEvent.OrderDiscounted less = (OrderEvent.OrderDiscounted) event;
                remember(get(less.order()));
                put(get(less.order()).discounted(less));
            }
            case VOIDED -> {
                OrderEvent.OrderVoided voided = (OrderEvent.OrderVoided) event;
                put(get(voided.order()).voided(voided));
            }
            case HANDED -> {
                Order handed = get(((OrderEvent.OrderHanded) event).order()).handed(atMs);
                put(handed);
                rememberHanded(handed.id());
            }
            case BROUGHT_BACK -> {
                Order back = get(((OrderEvent.OrderBroughtBack) event).order()).handed(0);
                enter(back);
                lastHanded.remove(back.id());
            }
        }
    }

    /** The date of the newest day, open or closed, if there ever was one. */
    public Optional<LocalDate> date() {
        return Optional.ofNullable(date);
    }

    public boolean isDayOpen() {
        return dayOpen;
    }

    /** When the open day closes by itself, milliseconds since 1970-01-01 UTC. */
    public long cutAtMs() {
        return cutAtMs;
    }

    /** When the day was closed, milliseconds since 1970-01-01 UTC; 0 while it is open. */
    public long closedAtMs() {
        return closedAtMs;
    }

    /** How often the newest day went on after it was closed, and why; oldest first. */
    public List<Reopening> reopenings() {
        return List.copyOf(reopenings);
    }

    /**
     * The newest day went on.
     *
     * @param atMs when, milliseconds since 1970-01-01 UTC
     * @param reason why
     * @param by who had it go on, if that was noted
     */
    public record Reopening(long atMs, String reason, Optional<Who> by) {
        /** One of which nobody noted who it was. */
        public Reopening(long atMs, String reason) {
            this(atMs, reason, Optional.empty());
        }
    }

    /** Notes who it was that had the day go on, the last time that it did. */
    public void reopenedBy(Who who) {
        Reopening last = reopenings.remove(reopenings.size() - 1);
        reopenings.add(new Reopening(last.atMs(), last.reason(), Optional.of(who)));
    }

    /** Every order of the newest day in the order in which they were placed. */
    public Collection<Order> all() {
        return Collections.unmodifiableCollection(orders.values());
    }

    /** The orders that guests still wait for, oldest first. */
    public Collection<Order> open() {
        return Collections.unmodifiableCollection(open.values());
    }

    /** The orders that guests still wait for, newest first. */
    public Collection<Order> openNewestFirst() {
        return Collections.unmodifiableCollection(open.descendingMap().values());
    }

    /** The orders handed last, newest first; only a few are remembered. */
    public Collection<Order> lastHanded() {
        return lastHanded.stream().map(orders::get).toList();
    }

    public int openCount() {
        return open.size();
    }

    public Optional<Order> find(String id) {
        return Optional.ofNullable(orders.get(id));
    }

    /** What became of an order since a version of it, unless that is longer ago than is kept. */
    public Optional<Meanwhile> since(String id, int version) {
        Order now = orders.get(id);
        return earlier.getOrDefault(id, new ArrayDeque<>()).stream()
                .filter(order -> order.version() == version)
                .findFirst()
                .map(seen -> Meanwhile.between(seen, now));
    }

    /**
     * Whether somebody waits for an order: it is open, and no closing of the day has left it
     * behind.
     */
    public boolean isWaitedFor(String id) {
        return open.containsKey(id);
    }

    /** The open order that has this number now. */
    public Optional<Order> findOpen(int number) {
        return Optional.ofNullable(openByNumber.get(number));
    }

    /** The number for the next order, or empty when all are on open orders. */
    public Optional<Integer> freeNumber(int numberMax) {
        for (int tried = 0; tried < numberMax; tried++) {
            int number = (nextNumber - 1 + tried) % numberMax + 1;
            if (!openByNumber.containsKey(number)) {
                return Optional.of(number);
            }
        }
        return Optional.empty();
    }

    int nextNumber() {
        return nextNumber;
    }

    int nextOrdinal() {
        return nextOrdinal;
    }

    private void openDay(OrderEvent.DayOpened opened) {
        Check.that(!dayOpen, "a day opens only when none is open");
        if (!opened.date().equals(date)) {
            orders.clear();
            earlier.clear();
            reopenings.clear();
        }
        openByNumber.clear();
        open.clear();
        date = opened.date();
        dayOpen = true;
        closedAtMs = 0;
        cutAtMs = opened.cutAtMs();
        nextNumber = opened.firstNumber();
        nextOrdinal = opened.firstOrdinal();
    }

    private void closeDay(long atMs) {
        Check.that(dayOpen, "only an open day closes");
        dayOpen = false;
        closedAtMs = atMs;
        lastHanded.clear();
        openByNumber.clear();
        open.clear();
    }

    private void place(OrderEvent.OrderPlaced placed, long atMs) {
        Check.that(dayOpen, "orders belong to an open day");
        Check.that(!orders.containsKey(placed.order()), "an order's id is its own");
        Check.that(!openByNumber.containsKey(placed.number()), "a number is on one open order");
        enter(Order.placed(placed, atMs));
        nextNumber = placed.number() + 1;
        nextOrdinal++;
    }

    /** A guest waits for it from now on. */
    private void enter(Order order) {
        orders.put(order.id(), order);
        openByNumber.put(order.number(), order);
        open.put(order.id(), order);
    }

    /** An order that its day's closing left open stays off the list whatever is noted on it. */
    private void put(Order order) {
        orders.put(order.id(), order);
        if (!open.containsKey(order.id())) {
            return;
        }
        if (order.isOpen()) {
            openByNumber.put(order.number(), order);
            open.put(order.id(), order);
        } else {
            open.remove(order.id());
            openByNumber.remove(order.number());
        }
    }

    private void remember(Order before) {
        Deque<Order> versions = earlier.computeIfAbsent(before.id(), id -> new ArrayDeque<>());
        versions.addLast(before);
        if (versions.size() > Limits.ORDER_VERSIONS_MAX) {
            versions.removeFirst();
        }
    }

    private void rememberHanded(String id) {
        lastHanded.addFirst(id);
        if (lastHanded.size() > Limits.LAST_HANDED_ORDERS_MAX) {
            lastHanded.removeLast();
        }
    }

    private Order get(String id) {
        Order order = orders.get(id);
        Check.that(order != null, "an event names an order of its day");
        return order;
    }
}
