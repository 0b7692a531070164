package sopwell.stock;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sopwell.menu.Menu;
import sopwell.menu.Pan;
import sopwell.menu.Selection;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;

/**
 * What was put into the pans of the newest day and taken out of them, and what was sold of late.
 * Not thread-safe: its owner is one thread.
 */
public final class Pans {
    /** How far back sales tell the pace: older ones are forgotten. */
    static final long WINDOW_MS = SalePace.WINDOW_MS;

    private final Map<String, Filling> fillings = new HashMap<>();
    private final Map<String, Deque<Sale>> sales = new HashMap<>();
    private LocalDate date;
    private long firstSaleAtMs;

    /** What a pan held when it was refilled, and what was made from it since. */
    private record Filling(long refilledAtMs, long amount, long taken) {}

    /**
     * What one order took from a pan when it was placed. Immutable.
     *
     * @param amount in the pan's unit, above 0
     * @param pieces how many pieces took it
     */
    record Sale(long atMs, long amount, int pieces) {}

    /** Takes in that a pan was refilled; never refuses. */
    public void apply(PanEvent event, long atMs) {
        PanEvent.PanRefilled refilled = (PanEvent.PanRefilled) event;
        fillings.put(event.pan(), new Filling(atMs, refilled.amount(), 0));
    }

    /**
     * Takes in what happened to an order or the day; never refuses. Only what is placed tells the
     * pace: later changes are few.
     *
     * @param menus the menu of a revision
     */
    public void apply(OrderEvent event, Function<String, Menu> menus, long atMs) {
        if (event instanceof OrderEvent.DayOpened opened) {
            begin(opened.date());
        } else if (event instanceof OrderEvent.OrderPlaced placed) {
            firstSaleAtMs = firstSaleAtMs == 0 ? atMs : firstSaleAtMs;
            for (Pan pan : menus.apply(placed.menuRevision()).pans()) {
                sold(pan, placed.lines(), atMs);
            }
        }
    }

    /**
     * Takes in that pieces were made at a station, or that they were not after all.
     *
     * @param menu the menu that they were ordered from
     * @param pieces how many; negative when they are made no more
     */
    public void made(Menu menu, String station, Selection selection, int pieces) {
        for (Pan pan : menu.pans()) {
            Filling filling = fillings.get(pan.id());
            long each = pan.amount(selection);
            if (filling != null && each != 0 && pan.station().equals(station)) {
                long taken = Math.max(0, filling.taken() + each * pieces);
                fillings.put(
                        pan.id(), new Filling(filling.refilledAtMs(), filling.amount(), taken));
            }
        }
    }

    /** When a pan was refilled last today, milliseconds since 1970-01-01 UTC; empty if never. */
    public Optional<Long> refilledAtMs(String pan) {
        return Optional.ofNullable(fillings.get(pan)).map(Filling::refilledAtMs);
    }

    /** What is in a pan now, in its unit, not below 0; empty if it was not refilled today. */
    public Optional<Long> left(String pan) {
        return Optional.ofNullable(fillings.get(pan))
                .map(filling -> Math.max(0, filling.amount() - filling.taken()));
    }

    /** The sales of the last while that took from a pan, oldest first. */
    List<Sale> salesSince(String pan, long sinceMs) {
        List<Sale> recent = new ArrayList<>(sales.getOrDefault(pan, new ArrayDeque<>()));
        recent.removeIf(sale -> sale.atMs() < sinceMs);
        return recent;
    }

    /** When the day's first order was placed, or 0. */
    long firstSaleAtMs() {
        return firstSaleAtMs;
    }

    private void sold(Pan pan, List<OrderLine> lines, long atMs) {
        long amount = 0;
        int pieces = 0;
        for (OrderLine line : lines) {
            long each = pan.amount(line.selection());
            amount += each * line.quantity();
            pieces += each > 0 ? line.quantity() : 0;
        }
        if (amount > 0) {
            Deque<Sale> ofPan = sales.computeIfAbsent(pan.id(), id -> new ArrayDeque<>());
            ofPan.addLast(new Sale(atMs, amount, pieces));
            while (ofPan.getFirst().atMs() < atMs - WINDOW_MS) {
                ofPan.removeFirst();
            }
        }
    }

    private void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            fillings.clear();
            sales.clear();
            firstSaleAtMs = 0;
        }
        date = opened;
    }
}
