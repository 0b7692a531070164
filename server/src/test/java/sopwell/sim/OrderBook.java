package sopwell.sim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.orders.StandSettings;

/** Orders as the raw events tell them. Belongs to one thread. */
final class OrderBook {
    private final StandSettings settings;
    private final Complaints complaints;
    private final Map<String, TrueOrder> orders = new LinkedHashMap<>();
    private final Map<String, Menu> menus = new HashMap<>();
    private final Set<Integer> numbers = new HashSet<>();
    private LocalDate date;
    private Menu menu;
    private boolean open;

    OrderBook(StandSettings settings, Complaints complaints) {
        this.settings = settings;
        this.complaints = complaints;
    }

    /** One order; {@code current} while it belongs to the day as it is open now. */
    static final class TrueOrder {
        String id;
        int number;
        int version = 1;
        boolean toGo;
        boolean current = true;
        boolean handed;
        boolean told;
        String voided = "";
        List<OrderLine> lines;
        OrderEvent.OrderPlaced placed;
        sopwell.money.Discount discount = sopwell.money.Discount.NONE;
        sopwell.money.Totals totals;
        String revision;

        boolean isVoid() {
            return !voided.isEmpty();
        }

        boolean isStaffMeal() {
            boolean less = discount.cents() > 0 || discount.milliPercent() > 0;
            return less && discount.kind() == sopwell.money.Discount.Kind.STAFF_MEAL;
        }

        boolean handedOver() {
            return handed;
        }

        boolean isOpen() {
            return current && !handed && !isVoid();
        }
    }

    void take(Recorded recorded) {
        if (recorded.event() instanceof MenuEvent.MenuAdopted adopted) {
            menu = adopted.menu();
            menus.put(menu.revision(), menu);
        } else if (recorded.event() instanceof OrderEvent event) {
            take(event);
        }
    }

    private void take(OrderEvent event) {
        switch (event.kind()) {
            case DAY_OPENED -> begin((OrderEvent.DayOpened) event);
            case DAY_CLOSED -> close((OrderEvent.DayClosed) event);
            case DAY_REOPENED -> reopened((OrderEvent.DayReopened) event);
            case PLACED -> place((OrderEvent.OrderPlaced) event);
            case CHANGED -> change((OrderEvent.OrderChanged) event);
            case TOLD -> about(event).told = true;
            case DISCOUNTED -> {
                OrderEvent.OrderDiscounted less = (OrderEvent.OrderDiscounted) event;
                version(about(event), less.version());
                about(event).discount = less.discount();
                about(event).totals = less.totals();
            }
            case VOIDED -> {
                OrderEvent.OrderVoided voided = (OrderEvent.OrderVoided) event;
                version(about(event), voided.version());
                about(event).voided = voided.reason();
            }
            case HANDED -> {
                complaints.that(about(event).isOpen(), Invariant.ORDERS, "is not open", event);
                about(event).handed = true;
            }
            case BROUGHT_BACK -> {
                about(event).handed = false;
                about(event).current = true;
            }
        }
    }

    private void begin(OrderEvent.DayOpened opened) {
        complaints.that(!open, Invariant.ORDERS, "a day opens in a day", "");
        if (!opened.date().equals(date)) {
            orders.clear();
            numbers.clear();
        }
        orders.values().forEach(order -> order.current = false);
        date = opened.date();
        open = true;
    }

    private void close(OrderEvent.DayClosed closed) {
        List<String> left = open().stream().map(order -> order.id).toList();
        complaints.same(left, closed.leftOpen(), Invariant.ORDERS, "what the day leaves open", "");
        orders.values().forEach(order -> order.current = false);
        open = false;
    }

    private void reopened(OrderEvent.DayReopened again) {
        complaints.that(
                open && again.date().equals(date) && !again.reason().isBlank(),
                Invariant.ORDERS,
                "reopens what is not open now, or says no reason:",
                again);
    }

    private void place(OrderEvent.OrderPlaced placed) {
        TrueOrder order = new TrueOrder();
        order.id = placed.order();
        order.number = placed.number();
        order.toGo = placed.toGo();
        order.lines = placed.lines();
        order.totals = placed.totals();
        order.revision = placed.menuRevision();
        order.placed = placed;
        complaints.that(open, Invariant.ORDERS, "an order without a day:", order.id);
        complaints.that(
                open().stream().noneMatch(other -> other.number == order.number),
                Invariant.NUMBERS,
                "number",
                List.of(order.number, "is on two open orders"));
        complaints.that(
                numbers.add(order.number) || numbers.size() == settings.numberMax(),
                Invariant.NUMBERS,
                "number",
                List.of(order.number, "was given twice in a day"));
        complaints.that(orders.put(order.id, order) == null, Invariant.ORDERS, "twice", order.id);
    }

    private void change(OrderEvent.OrderChanged changed) {
        TrueOrder order = about(changed);
        version(order, changed.version());
        complaints.that(!order.handed && !order.isVoid(), Invariant.ORDERS, "is closed", changed);
        order.lines = changed.lines();
        order.toGo = changed.toGo();
        order.totals = changed.totals();
        order.revision = changed.menuRevision();
    }

    private void version(TrueOrder order, int version) {
        complaints.same(order.version + 1, version, Invariant.ORDERS, "the version of", order.id);
        order.version = version;
    }

    TrueOrder about(OrderEvent event) {
        TrueOrder order = orders.get(event.about().orElseThrow());
        complaints.that(order != null, Invariant.ORDERS, "about an order that is not:", event);
        return order == null ? new TrueOrder() : order;
    }

    Optional<TrueOrder> find(String id) {
        return Optional.ofNullable(orders.get(id));
    }

    List<TrueOrder> all() {
        return List.copyOf(orders.values());
    }

    /** The orders that guests wait for, oldest first. */
    List<TrueOrder> open() {
        return orders.values().stream().filter(TrueOrder::isOpen).toList();
    }

    boolean isDayOpen() {
        return open;
    }

    LocalDate date() {
        return date;
    }

    Menu menu() {
        return menu;
    }

    Menu menuOf(String revision) {
        return menus.get(revision);
    }

    List<Menu> menus() {
        return List.copyOf(menus.values());
    }

    void check(Stand stand) {
        complaints.same(
                open, stand.orders().isDayOpen(), Invariant.ORDERS, "the day's being open", "");
        complaints.same(
                Optional.ofNullable(date), stand.orders().date(), Invariant.ORDERS, "the date", "");
        List<String> found = new ArrayList<>();
        stand.orders().all().forEach(order -> found.add(order.id()));
        complaints.same(List.copyOf(orders.keySet()), found, Invariant.ORDERS, "the list", "");
        complaints.same(
                open().stream().map(order -> order.id).toList(),
                stand.orders().open().stream().map(Order::id).toList(),
                Invariant.ORDERS,
                "the list of open orders",
                "");
        for (Order order : stand.orders().all()) {
            find(order.id()).ifPresent(expected -> check(expected, order));
        }
    }

    private void check(TrueOrder expected, Order order) {
        String what = order.id();
        complaints.same(expected.number, order.number(), Invariant.NUMBERS, "number of", what);
        complaints.same(expected.version, order.version(), Invariant.ORDERS, "version of", what);
        complaints.same(expected.lines, order.lines(), Invariant.ORDERS, "lines of", what);
        complaints.same(expected.totals, order.totals(), Invariant.PRICES, "totals of", what);
        complaints.same(expected.discount, order.discount(), Invariant.PRICES, "discount of", what);
        complaints.same(expected.voided, order.voidReason(), Invariant.ORDERS, "voiding of", what);
        complaints.same(expected.handed, order.isHanded(), Invariant.ORDERS, "handing of", what);
        complaints.same(expected.toGo, order.toGo(), Invariant.ORDERS, "going of", what);
    }
}
