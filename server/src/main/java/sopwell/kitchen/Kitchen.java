package sopwell.kitchen;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import sopwell.Check;
import sopwell.Limits;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;

/**
 * The parts of the open day's orders and how far each is. Not thread-safe: its owner is one thread.
 *
 * <p>A part is in sight of its station from the moment it is ordered until it is up with nothing
 * about it unseen; a part that was begun and then taken off its order stays until it is seen.
 */
public final class Kitchen {
    private final Map<String, Map<PartId, Part>> byOrder = new HashMap<>();
    private final Map<String, TreeMap<PartId, Part>> inSight = new HashMap<>();
    private final Map<String, Deque<PartId>> lastUp = new HashMap<>();
    private final Queries queries = new Queries();
    private final LateEdits lateEdits = new LateEdits();
    private final Hands hands = new Hands();
    private final OpenWork open = new OpenWork();
    private final Pace pace = new Pace(open, hands);
    private final Remakes remakes = new Remakes();
    private final Function<String, Menu> menus;
    private long atMs;

    /**
     * An empty kitchen.
     *
     * @param menus the menu of a revision; knows every revision that an order of the day names
     */
    public Kitchen(Function<String, Menu> menus) {
        this.menus = menus;
    }

    /**
     * Takes in what happened to an order; never refuses.
     *
     * @param order the order as it is after the event, if the event is about one
     */
    public void apply(OrderEvent event, Optional<Order> order, long atMs) {
        this.atMs = atMs;
        switch (event.kind()) {
            case DAY_OPENED -> {
                leaveDay();
                if (queries.begin(((OrderEvent.DayOpened) event).date())) {
                    byOrder.clear();
                }
                lateEdits.begin(((OrderEvent.DayOpened) event).date());
                hands.begin(((OrderEvent.DayOpened) event).date());
                pace.begin(((OrderEvent.DayOpened) event).date());
                remakes.begin(((OrderEvent.DayOpened) event).date());
            }
            case DAY_CLOSED -> {
                leaveDay();
                queries.lapseAll(atMs);
            }
            case PLACED -> refit(order.orElseThrow(), atMs);
            case CHANGED -> lateEdits.changed(refit(order.orElseThrow(), atMs));
            case TOLD -> {
                Order told = order.orElseThrow();
                List<Part> parts = List.copyOf(parts(told.id()));
                parts.forEach(part -> put(part.since(told.takenAtMs())));
            }
            case VOIDED -> {
                Order voided = order.orElseThrow();
                boolean late = false;
                for (PartId id : List.copyOf(partsOf(voided.id()).keySet())) {
                    late |= withdraw(voided.id(), id, atMs);
                }
                lateEdits.voided(late);
            }
            case HANDED -> {
                Order handed = order.orElseThrow();
                pace.handed(handed, wholeAtMs(handed.id()));
            }
            case DAY_REOPENED, DISCOUNTED, BROUGHT_BACK -> {}
        }
        order.ifPresent(about -> pace.worked(menu(about.menuRevision()), atMs));
    }

    /** Takes in what happened at a station; never refuses. */
    public void apply(KitchenEvent event, long atMs) {
        this.atMs = atMs;
        Part part = find(event.part()).orElse(null);
        Check.that(part != null, "an event names a part of its day");
        switch (event.kind()) {
            case STARTED -> {
                put(part.started(atMs));
                open.find(part.id()).ifPresent(w -> pace.started(w, menu(part), atMs));
            }
            case UP -> {
                // What came back from the pass and is up again says nothing about times.
                boolean first = !lastUp(part.id().station()).contains(part.id());
                Optional<Work> work = open.find(part.id()).filter(w -> first);
                put(part.up(atMs));
                work.ifPresent(w -> pace.up(w, menu(part), atMs));
                queries.lapse(part.id(), atMs);
                rememberUp(part.id());
            }
            case BROUGHT_BACK -> put(part.broughtBack());
            case REMADE -> {
                KitchenEvent.PartRemade remade = (KitchenEvent.PartRemade) event;
                put(part.again(remade.pieces(), remade.reason()));
                remakes.add(remade);
            }
            case SEEN -> {
                queries.seen(part.id());
                if (part.cancelled()) {
                    drop(part);
                } else {
                    put(part.seen());
                }
            }
        }
    }

    /** Takes in what was learned on earlier days; never refuses. */
    public void apply(PaceEvent event) {
        switch (event.kind()) {
            case CARRIED -> pace.apply((PaceEvent.PaceCarried) event);
        }
    }

    /** Takes in what was asked or answered; never refuses. */
    public void apply(QueryEvent event, long atMs) {
        queries.apply(event, atMs);
    }

    /** Takes in what happened to a station as a whole; never refuses. */
    public void apply(StationEvent event) {
        switch (event.kind()) {
            case HANDS_SET -> {
                hands.apply((StationEvent.HandsSet) event);
                pace.handsSet(event.station());
            }
        }
    }

    /** How many hands are on duty at a station: what was said today, else what its menu says. */
    public int hands(Station station) {
        return hands.at(station);
    }

    /**
     * How many hands are really at work at a station, as the taps show it: by and by fewer when
     * some of those on duty get nothing done although there is work. Where one machine makes
     * several pieces in one go it is what {@link #hands} says.
     */
    public double handsAtWork(Station station, long nowMs) {
        return pace.hands(station, nowMs);
    }

    /** What the stand has learned of its pace, to be carried into the next day. */
    public PaceEvent.PaceCarried learned() {
        return pace.carried();
    }

    /** How good the quotes were. */
    public Quoted quoted() {
        return pace.quoted();
    }

    /** What stations have asked the counter. */
    public Queries queries() {
        return queries;
    }

    /** When an order or a part last changed, milliseconds since 1970-01-01 UTC. */
    public long atMs() {
        return atMs;
    }

    /** What was made again today. */
    public Remakes remakes() {
        return remakes;
    }

    /** The parts of the same line that go into this one: the sausage that the roll waits for. */
    public List<Part> feeding(Part part) {
        Making making = part.making();
        return Router.waitsFor(menu(making.menuRevision()), making.selection(), part.id().station())
                .stream()
                .map(other -> find(new PartId(part.id().order(), part.id().line(), other)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Whether a part goes into another one of its line, not to the guest. */
    public boolean feedsAnother(Part part) {
        Making making = part.making();
        return Router.feedsAnother(
                menu(making.menuRevision()), making.selection(), part.id().station());
    }

    /** What a part waits for: what goes into it and is not up. */
    public List<Part> awaited(Part part) {
        return feeding(part).stream()
                .filter(feed -> feed.state() != PartState.UP && !feed.cancelled())
                .toList();
    }

    /** How many edits came late. */
    public LateEdits lateEdits() {
        return lateEdits;
    }

    /** Whether a part's station has something to say "seen" to: a change, or an answer. */
    public boolean isUnseen(Part part) {
        return part.isUnseen() || queries.hasUnseenAnswer(part.id());
    }

    public Optional<Part> find(PartId id) {
        return Optional.ofNullable(partsOf(id.order()).get(id));
    }

    /** All parts of an order, by line and station; cancelled ones until they are seen. */
    public Collection<Part> parts(String order) {
        return Collections.unmodifiableCollection(partsOf(order).values());
    }

    /** What a station has in sight, oldest first. */
    public Collection<Part> inSight(String station) {
        TreeMap<PartId, Part> parts = inSight.get(station);
        return parts == null ? List.of() : Collections.unmodifiableCollection(parts.values());
    }

    /** Whether a part is in sight of its station. */
    boolean isInSight(PartId id) {
        TreeMap<PartId, Part> parts = inSight.get(id.station());
        return parts != null && parts.containsKey(id);
    }

    /** The work that waits at a station, in seconds of one hand. */
    public long backlogSeconds(String station) {
        return open.backlogSeconds(station);
    }

    /** How far an order is. */
    public OrderStage stage(Order order) {
        if (order.isVoid()) {
            return OrderStage.VOID;
        }
        if (order.isHanded()) {
            return OrderStage.HANDED;
        }
        boolean begun = false;
        boolean whole = true;
        for (Part part : partsOf(order.id()).values()) {
            begun |= part.state() != PartState.WAITING;
            whole &= part.isDone();
        }
        if (whole) {
            return OrderStage.UP;
        }
        return begun ? OrderStage.STARTED : OrderStage.WAITING;
    }

    /**
     * When the last part of an order came up, milliseconds since 1970-01-01 UTC; 0 when it has no
     * part that is up.
     */
    public long wholeAtMs(String order) {
        return partsOf(order).values().stream().mapToLong(Part::upAtMs).reduce(0, Math::max);
    }

    /** The parts put up by a station, newest first; at most fifty are remembered. */
    Collection<PartId> lastUp(String station) {
        Deque<PartId> ups = lastUp.get(station);
        return ups == null ? List.of() : ups;
    }

    Menu menu(String revision) {
        return menus.apply(revision);
    }

    OpenWork open() {
        return open;
    }

    Pace pace() {
        return pace;
    }

    private void leaveDay() {
        inSight.clear();
        open.clear();
        pace.leaveDay();
        lastUp.clear();
    }

    /** Answers whether something was altered that was begun already. */
    private boolean refit(Order order, long atMs) {
        Map<PartId, Making> wanted = Making.of(order, menu(order.menuRevision()));
        boolean late = false;
        for (PartId id : List.copyOf(partsOf(order.id()).keySet())) {
            if (!wanted.containsKey(id)) {
                late |= withdraw(order.id(), id, atMs);
            }
        }
        for (Map.Entry<PartId, Making> entry : wanted.entrySet()) {
            late |= refit(order, entry.getKey(), entry.getValue(), atMs);
        }
        return late;
    }

    private boolean refit(Order order, PartId id, Making making, long atMs) {
        Part old = partsOf(order.id()).get(id);
        if (old == null) {
            put(Part.fresh(id, order.number(), order.name(), making, atMs));
        } else if (old.cancelled() || !looksAlike(old.making(), making, id.station())) {
            put(old.changed(making, order.name()));
            return old.state() != PartState.WAITING;
        } else {
            put(old.refitted(making, order.name()));
        }
        return false;
    }

    /** Whether a station would see no difference. */
    private boolean looksAlike(Making one, Making other, String station) {
        if (one.equals(other)) {
            return true;
        }
        return one.quantity() == other.quantity()
                && one.selection().item().equals(other.selection().item())
                && Cells.of(menu(one.menuRevision()), one, station)
                        .equals(Cells.of(menu(other.menuRevision()), other, station));
    }

    /** Answers whether the part was begun already. */
    private boolean withdraw(String order, PartId id, long atMs) {
        Part part = partsOf(order).get(id);
        if (part.cancelled()) {
            return false;
        }
        queries.lapse(id, atMs);
        pace.gone(id);
        if (part.state() == PartState.WAITING) {
            drop(part);
            return false;
        }
        put(part.cancelledNow());
        return true;
    }

    private void put(Part part) {
        byOrder.computeIfAbsent(part.id().order(), o -> new LinkedHashMap<>()).put(part.id(), part);
        TreeMap<PartId, Part> sight =
                inSight.computeIfAbsent(part.id().station(), s -> new TreeMap<>(OpenWork.BY_AGE));
        if (part.isDone()) {
            sight.remove(part.id());
        } else {
            sight.put(part.id(), part);
        }
        open.put(part, menu(part));
    }

    private void drop(Part part) {
        open.remove(part.id());
        partsOf(part.id().order()).remove(part.id());
        inSight.get(part.id().station()).remove(part.id());
    }

    private Menu menu(Part part) {
        return menu(part.making().menuRevision());
    }

    private void rememberUp(PartId id) {
        Deque<PartId> ups = lastUp.computeIfAbsent(id.station(), s -> new ArrayDeque<>());
        ups.remove(id);
        ups.addFirst(id);
        if (ups.size() > Limits.BRING_BACK_PARTS_MAX) {
            ups.removeLast();
        }
    }

    private Map<PartId, Part> partsOf(String order) {
        return byOrder.getOrDefault(order, Map.of());
    }
}
