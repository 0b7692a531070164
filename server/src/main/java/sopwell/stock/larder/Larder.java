package sopwell.stock.larder;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.menu.Selection;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.stock.SalePace;
import sopwell.stock.larder.LarderEvent.StockCarried;
import sopwell.stock.safety.Reading;

/**
 * What is on the shelves by the books, what is being made, and what the day's sales took. Not
 * thread-safe: its owner is one thread.
 *
 * <p>Of an ingredient that nobody ever counted nothing is known, whatever came in or went out.
 */
public final class Larder {
    private final Map<String, Held> held = new TreeMap<>();
    private final Map<String, Batch> batches = new LinkedHashMap<>();
    private final Map<String, Label> labels = new LinkedHashMap<>();
    private final Map<String, Yields> yields = new TreeMap<>();
    private final Map<String, Compared> compared = new TreeMap<>();
    private final Set<String> countedToday = new TreeSet<>();
    private final Map<String, Long> wastedToday = new TreeMap<>();
    private final Map<String, Map<String, Long>> takenByOrder = new HashMap<>();
    private final Map<String, Deque<Sale>> sales = new TreeMap<>();
    private final TimeClocks clocks = new TimeClocks();
    private long slicerCleanedAtMs;
    private long firstSaleAtMs;
    private int started;
    private LocalDate date;

    /** What one order took of an ingredient. */
    private record Sale(long atMs, long amount) {}

    /** Takes in what happened to what is kept; never refuses. */
    public void apply(LarderEvent event, long atMs) {
        switch (event.kind()) {
            case COUNTED -> counted(((LarderEvent.IngredientCounted) event).counted(), atMs);
            case WASTED -> {
                Measure wasted = ((LarderEvent.IngredientWasted) event).wasted();
                wasted(wasted.ingredient(), wasted.thousandths());
            }
            case DELIVERED -> {
                Measure delivered = ((LarderEvent.IngredientDelivered) event).delivered();
                in(delivered.ingredient(), delivered.thousandths());
            }
            case SLICER_CLEANED -> slicerCleanedAtMs = atMs;
            case CLOCK_STARTED -> clocks.started((LarderEvent.ClockStarted) event, atMs);
            case CLOCK_MEASURED -> clocks.measured((LarderEvent.ClockMeasured) event, atMs);
            case CLOCK_STOPPED -> clocks.stopped((LarderEvent.ClockStopped) event);
            case CARRIED -> carried((StockCarried) event);
        }
    }

    /** Takes in what happened to a batch; never refuses. */
    public void apply(BatchEvent event, long atMs) {
        switch (event.kind()) {
            case STARTED -> started((BatchEvent.BatchStarted) event, atMs);
            case MOVED ->
                    batches.computeIfPresent(
                            event.batch(),
                            (id, batch) -> batch.moved((BatchEvent.BatchMoved) event, atMs));
            case MEASURED -> {
                BatchEvent.TemperatureTaken taken = (BatchEvent.TemperatureTaken) event;
                batches.computeIfPresent(
                        event.batch(),
                        (id, batch) -> batch.with(new Reading(atMs, taken.temperature())));
            }
            case YIELDED -> yielded((BatchEvent.BatchYielded) event);
            case DISCARDED -> {
                BatchEvent.BatchDiscarded discarded = (BatchEvent.BatchDiscarded) event;
                batches.remove(event.batch());
                Optional.ofNullable(labels.remove(event.batch()))
                        .ifPresent(label -> wasted(label.makes(), discarded.thousandths()));
            }
            case USED_UP -> labels.remove(event.batch());
        }
    }

    /**
     * Takes in what happened to an order or the day; never refuses. What an order took is kept with
     * it for the day, so that exactly that is given back when it is changed or void.
     *
     * @param after the order's lines from now on, none when it is void
     * @param usage what one piece takes of each ingredient, in thousandths of its base unit
     */
    public void apply(
            OrderEvent event,
            List<OrderLine> after,
            Function<Selection, Map<String, Long>> usage,
            long atMs) {
        switch (event.kind()) {
            case DAY_OPENED -> begin(((OrderEvent.DayOpened) event).date());
            case PLACED, CHANGED, VOIDED ->
                    ordered(event.about().orElseThrow(), took(after, usage), atMs);
            case DAY_CLOSED, DAY_REOPENED, TOLD, DISCOUNTED, HANDED, BROUGHT_BACK -> {}
        }
    }

    /** What goes on into the next day. */
    public StockCarried carried() {
        return new StockCarried(
                List.copyOf(held.values()),
                List.copyOf(batches.values()),
                List.copyOf(labels.values()),
                List.copyOf(yields.values()),
                started,
                slicerCleanedAtMs,
                clocks.all(),
                clocks.started());
    }

    /** What the books have of an ingredient; empty when it was never counted. */
    public Optional<Held> held(String ingredient) {
        return Optional.ofNullable(held.get(ingredient));
    }

    /** What is being made, in the order in which it was started. */
    public List<Batch> batches() {
        return List.copyOf(batches.values());
    }

    /** A batch that is on. */
    public Optional<Batch> batch(String id) {
        return Optional.ofNullable(batches.get(id));
    }

    /** What was made and is kept, oldest first. */
    public List<Label> labels() {
        return List.copyOf(labels.values());
    }

    /** The label of a batch that was made and is kept. */
    public Optional<Label> label(String batch) {
        return Optional.ofNullable(labels.get(batch));
    }

    /** What the last batches gave, by ingredient. */
    public List<Yields> yields() {
        return List.copyOf(yields.values());
    }

    /** What was counted today against what the books had. */
    public List<Compared> compared() {
        return List.copyOf(compared.values());
    }

    /** The ingredients that were counted since the day was opened. */
    public Set<String> countedToday() {
        return Set.copyOf(countedToday);
    }

    /**
     * What was entered as thrown away since the day was opened, also of what was made and kept, by
     * ingredient in thousandths of its base unit.
     */
    public Map<String, Long> wastedToday() {
        return new TreeMap<>(wastedToday);
    }

    /**
     * What the day's orders take as they stand, by ingredient in thousandths of its base unit;
     * counted or not.
     */
    public Map<String, Long> usedToday() {
        Map<String, Long> used = new TreeMap<>();
        for (Map<String, Long> order : takenByOrder.values()) {
            order.forEach((id, amount) -> used.merge(id, amount, Long::sum));
        }
        return used;
    }

    /** When the slicer was cleaned last, milliseconds since 1970-01-01 UTC; 0 if never. */
    public long slicerCleanedAtMs() {
        return slicerCleanedAtMs;
    }

    /** The clocks of food that is held by time alone, in the order in which they were started. */
    public List<TimeClock> clocks() {
        return clocks.all();
    }

    /** One of these clocks. */
    public Optional<TimeClock> clock(String id) {
        return clocks.one(id);
    }

    /** How many of these clocks were ever started. */
    public int clocksStarted() {
        return clocks.started();
    }

    /** How many batches were ever started. */
    public int started() {
        return started;
    }

    /** What sales of late take of an ingredient; empty when none did. */
    Optional<SalePace> pace(String ingredient, long nowMs) {
        List<Long> amounts =
                sales.getOrDefault(ingredient, new ArrayDeque<>()).stream()
                        .filter(sale -> sale.atMs() >= nowMs - SalePace.WINDOW_MS)
                        .map(Sale::amount)
                        .toList();
        return amounts.isEmpty()
                ? Optional.empty()
                : Optional.of(SalePace.of(amounts, nowMs - firstSaleAtMs));
    }

    private void counted(Measure count, long atMs) {
        countedToday.add(count.ingredient());
        Held before = held.get(count.ingredient());
        if (before != null) {
            Compared earlier = compared.get(count.ingredient());
            long difference = count.thousandths() - before.expected();
            long sum = difference + (earlier == null ? 0 : earlier.difference());
            compared.put(
                    count.ingredient(),
                    new Compared(
                            count.ingredient(), atMs, before.expected(), count.thousandths(), sum));
        }
        held.put(
                count.ingredient(),
                new Held(count.ingredient(), atMs, count.thousandths(), 0, 0, 0));
    }

    private void in(String ingredient, long more) {
        held.computeIfPresent(ingredient, (id, one) -> one.withIn(more));
    }

    private void out(String ingredient, long more) {
        held.computeIfPresent(ingredient, (id, one) -> one.withOut(more));
    }

    private void wasted(String ingredient, long more) {
        wastedToday.merge(ingredient, more, Long::sum);
        out(ingredient, more);
    }

    private void started(BatchEvent.BatchStarted started, long atMs) {
        started.takes().forEach(taken -> out(taken.ingredient(), taken.thousandths()));
        this.started++;
        batches.put(
                started.batch(),
                new Batch(
                        started.batch(),
                        started.makes(),
                        started.lots(),
                        started.planned(),
                        started.note(),
                        atMs,
                        started.step(),
                        atMs,
                        List.of(),
                        List.of(),
                        ""));
    }

    private void yielded(BatchEvent.BatchYielded yielded) {
        Batch batch = batches.remove(yielded.batch());
        Measure gave = yielded.gave();
        in(gave.ingredient(), gave.thousandths());
        labels.put(
                yielded.batch(),
                new Label(
                        yielded.batch(),
                        gave.ingredient(),
                        gave.thousandths(),
                        yielded.preparedOn(),
                        yielded.useBy()));
        while (labels.size() > Limits.LABELS_MAX) {
            labels.remove(labels.keySet().iterator().next());
        }
        if (batch != null && batch.planned() > 0) {
            int perMille =
                    (int) Math.min(Integer.MAX_VALUE, gave.thousandths() * 1_000 / batch.planned());
            Yields before =
                    yields.getOrDefault(
                            gave.ingredient(), new Yields(gave.ingredient(), List.of()));
            yields.put(gave.ingredient(), before.with(perMille));
        }
    }

    private static Map<String, Long> took(
            List<OrderLine> lines, Function<Selection, Map<String, Long>> usage) {
        Map<String, Long> took = new HashMap<>();
        for (OrderLine line : lines) {
            usage.apply(line.selection())
                    .forEach((id, each) -> took.merge(id, each * line.quantity(), Long::sum));
        }
        return took;
    }

    private void ordered(String order, Map<String, Long> took, long atMs) {
        Map<String, Long> before = takenByOrder.put(order, took);
        firstSaleAtMs = firstSaleAtMs == 0 ? atMs : firstSaleAtMs;
        took.forEach((id, amount) -> used(id, amount));
        if (before != null) {
            before.forEach((id, amount) -> used(id, -amount));
        } else {
            took.forEach((id, amount) -> sold(id, new Sale(atMs, amount)));
        }
    }

    private void used(String ingredient, long more) {
        held.computeIfPresent(ingredient, (id, one) -> one.withUsed(more));
    }

    private void sold(String ingredient, Sale sale) {
        Deque<Sale> recent = sales.computeIfAbsent(ingredient, id -> new ArrayDeque<>());
        recent.addLast(sale);
        while (recent.getFirst().atMs() < sale.atMs() - SalePace.WINDOW_MS) {
            recent.removeFirst();
        }
    }

    private void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            compared.clear();
            countedToday.clear();
            wastedToday.clear();
            takenByOrder.clear();
            sales.clear();
            firstSaleAtMs = 0;
        }
        date = opened;
    }

    private void carried(StockCarried carried) {
        held.clear();
        carried.held().forEach(one -> held.put(one.ingredient(), one));
        batches.clear();
        carried.batches().forEach(batch -> batches.put(batch.id(), batch));
        labels.clear();
        carried.labels().forEach(label -> labels.put(label.batch(), label));
        yields.clear();
        carried.yields().forEach(one -> yields.put(one.makes(), one));
        started = carried.started();
        slicerCleanedAtMs = carried.slicerCleanedAtMs();
        clocks.carried(carried.clocks(), carried.clocksStarted());
    }
}
