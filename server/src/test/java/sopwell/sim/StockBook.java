package sopwell.sim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.menu.Selection;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.sim.OrderBook.TrueOrder;
import sopwell.stock.larder.Batch;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.Label;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.larder.Measure;
import sopwell.stock.larder.Measures;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Usage;

/**
 * What is kept: what was counted, with all that came in and went out since, and what the day's
 * orders have more on them than they had then. Belongs to one thread; fed after the order book, and
 * before it when a day opens.
 */
final class StockBook {
    /** All books that a day sees say the same of what orders take. */
    private static final RecipeBook RECIPES = Script.demoRecipes().get(0);

    private final OrderBook orders;
    private final Complaints complaints;
    private final Map<String, Count> counts = new TreeMap<>();
    private final Map<String, On> on = new LinkedHashMap<>();
    private final Map<String, Label> labels = new LinkedHashMap<>();
    private final Map<Selection, Map<String, Long>> usage = new HashMap<>();
    private final ClockBook clocks;
    private LocalDate date;
    private int started;

    /** A count; what moved since, but for the orders of the day; what those had then. */
    private record Count(long counted, long moved, long orderedThen) {}

    /** A batch that is on. */
    private record On(String makes, String step, List<Integer> temperatures) {}

    StockBook(OrderBook orders, Complaints complaints) {
        this.orders = orders;
        this.complaints = complaints;
        this.clocks = new ClockBook(complaints);
    }

    /** The orders of a day that is over are settled with what was counted. */
    void before(Recorded recorded) {
        if (recorded.event() instanceof OrderEvent.DayOpened opened) {
            if (!opened.date().equals(date)) {
                counts.replaceAll(
                        (id, one) ->
                                new Count(
                                        one.counted(),
                                        one.moved() - (ordered(id) - one.orderedThen()),
                                        0));
            }
            date = opened.date();
        }
    }

    void take(Recorded recorded) {
        if (recorded.event() instanceof LarderEvent event) {
            take(event);
        } else if (recorded.event() instanceof BatchEvent event) {
            take(event);
        }
    }

    private void take(LarderEvent event) {
        switch (event.kind()) {
            case COUNTED -> {
                Measure counted = ((LarderEvent.IngredientCounted) event).counted();
                String id = counted.ingredient();
                counts.put(id, new Count(counted.thousandths(), 0, ordered(id)));
            }
            case WASTED -> moved(((LarderEvent.IngredientWasted) event).wasted(), -1);
            case DELIVERED -> moved(((LarderEvent.IngredientDelivered) event).delivered(), 1);
            case SLICER_CLEANED -> {}
            case CLOCK_STARTED, CLOCK_MEASURED, CLOCK_STOPPED -> clocks.take(event);
            case CARRIED -> {
                LarderEvent.StockCarried carried = (LarderEvent.StockCarried) event;
                Map<String, Long> found = new TreeMap<>();
                carried.held().forEach(one -> found.put(one.ingredient(), one.expected()));
                complaints.same(expected(), found, Invariant.STOCK, "what was carried", "");
                complaints.same(started, carried.started(), Invariant.STOCK, "batches", "");
                clocks.carried(carried);
            }
        }
    }

    private void take(BatchEvent event) {
        switch (event.kind()) {
            case STARTED -> {
                BatchEvent.BatchStarted begun = (BatchEvent.BatchStarted) event;
                complaints.same("b" + ++started, begun.batch(), Invariant.STOCK, "the id of", "");
                begun.takes().forEach(one -> moved(one.ingredient(), -one.thousandths()));
                on.put(begun.batch(), new On(begun.makes(), begun.step(), List.of()));
            }
            case MOVED ->
                    on.computeIfPresent(
                            event.batch(),
                            (id, one) ->
                                    new On(
                                            one.makes(),
                                            ((BatchEvent.BatchMoved) event).step(),
                                            List.of()));
            case MEASURED ->
                    on.computeIfPresent(
                            event.batch(),
                            (id, one) -> measured(one, (BatchEvent.TemperatureTaken) event));
            case YIELDED -> {
                BatchEvent.BatchYielded made = (BatchEvent.BatchYielded) event;
                On batch = on.remove(made.batch());
                complaints.that(batch != null, Invariant.STOCK, "was not on:", made);
                moved(made.gave(), 1);
                labels.put(
                        made.batch(),
                        new Label(
                                made.batch(),
                                made.gave().ingredient(),
                                made.gave().thousandths(),
                                made.preparedOn(),
                                made.useBy()));
            }
            case DISCARDED -> {
                on.remove(event.batch());
                Label label = labels.remove(event.batch());
                if (label != null) {
                    moved(label.makes(), -((BatchEvent.BatchDiscarded) event).thousandths());
                }
            }
            case USED_UP ->
                    complaints.that(
                            labels.remove(event.batch()) != null,
                            Invariant.STOCK,
                            "was not kept:",
                            event);
        }
    }

    private static On measured(On batch, BatchEvent.TemperatureTaken taken) {
        List<Integer> all = new ArrayList<>(batch.temperatures());
        all.add(taken.temperature().hundredthsF());
        return new On(batch.makes(), batch.step(), all);
    }

    private void moved(Measure measure, int sign) {
        moved(measure.ingredient(), sign * measure.thousandths());
    }

    private void moved(String ingredient, long more) {
        counts.computeIfPresent(
                ingredient,
                (id, one) -> new Count(one.counted(), one.moved() + more, one.orderedThen()));
    }

    private Map<String, Long> expected() {
        Map<String, Long> expected = new TreeMap<>();
        counts.forEach(
                (id, one) ->
                        expected.put(
                                id,
                                one.counted() + one.moved() - (ordered(id) - one.orderedThen())));
        return expected;
    }

    /** What the orders of the day take of an ingredient. */
    private long ordered(String ingredient) {
        long ordered = 0;
        for (TrueOrder order : orders.all()) {
            if (!order.isVoid()) {
                for (OrderLine line : order.lines) {
                    ordered +=
                            line.quantity() * each(line.selection()).getOrDefault(ingredient, 0L);
                }
            }
        }
        return ordered;
    }

    private Map<String, Long> each(Selection selection) {
        return usage.computeIfAbsent(
                selection,
                one -> {
                    Map<String, Long> each = new TreeMap<>();
                    Usage.of(RECIPES, one)
                            .forEach((id, amount) -> each.put(id, Measures.thousandths(amount)));
                    return each;
                });
    }

    void check(Stand stand) {
        Map<String, Long> found = new TreeMap<>();
        for (String id : new TreeSet<>(counts.keySet())) {
            stand.larder().held(id).map(Held::expected).ifPresent(e -> found.put(id, e));
        }
        complaints.same(expected(), found, Invariant.STOCK, "what should be left", "");
        Map<String, On> batches = new LinkedHashMap<>();
        for (Batch batch : stand.larder().batches()) {
            List<Integer> measured =
                    batch.readings().stream().map(r -> r.temperature().hundredthsF()).toList();
            batches.put(batch.id(), new On(batch.makes(), batch.step(), measured));
        }
        complaints.same(on, batches, Invariant.STOCK, "what is being made", "");
        clocks.same(stand.larder().clocks(), "clocks that run");
        complaints.same(
                List.copyOf(labels.values()),
                stand.larder().labels(),
                Invariant.STOCK,
                "what was made",
                "");
    }
}
