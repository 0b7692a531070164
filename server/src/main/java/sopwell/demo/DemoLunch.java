package sopwell.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import sopwell.call.CallParser;
import sopwell.call.Reading;
import sopwell.desk.Answer;
import sopwell.desk.Desk;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.AdoptMenu;
import sopwell.desk.StandCommand.AdoptRecipes;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForLarder;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForPans;
import sopwell.desk.StandCommand.ForTill;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.kitchen.Router;
import sopwell.log.EventLog;
import sopwell.menu.Menu;
import sopwell.menu.Pan;
import sopwell.orders.Asked;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.OrderLine;
import sopwell.orders.StandSettings;
import sopwell.stock.PanCommand;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.recipes.RecipeBook;
import sopwell.till.TillCommand;

/**
 * Plays the last hour of an invented lunch into an empty log, up to now: guests order, hands make,
 * somebody hands over, and the last few orders are still open when the real stand takes over. The
 * figures are invented. Not thread-safe.
 */
public final class DemoLunch {
    private static final long SEED = 20_260_107L;
    private static final int MINUTES = 64;
    private static final int RUSH_MINUTES = 5;
    private static final String CASHIER = "Ines";
    private static final long FLOAT_CENTS = 15_000;

    /** How full the pans are when the lunch begins, in percent. */
    private static final int FULL = 100;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final PriorityQueue<Step> steps =
            new PriorityQueue<>(Comparator.comparingLong(Step::atMs).thenComparing(Step::key));
    private final DemoClock clock;
    private final DemoCalls calls;
    private final Desk desk;
    private final CallParser parser;
    private final DemoPayments payments;
    private final long endMs;
    private int made;

    private record Step(long atMs, String key, StandCommand command) {}

    private DemoLunch(EventLog log, StandSettings settings, Menu menu, long endMs) {
        this.endMs = endMs;
        this.clock = new DemoClock(endMs - MINUTES * 60_000L);
        this.calls = DemoCalls.read();
        this.parser = new CallParser(menu);
        this.payments = new DemoPayments(settings.cash(), CASHIER);
        this.desk = new Desk(log, settings, clock, events -> {});
    }

    /** The business day that the lunch is on, when it is now so late. */
    public static LocalDate date(StandSettings settings, long endMs) {
        return Instant.ofEpochMilli(endMs - MINUTES * 60_000L)
                .atZone(settings.zone())
                .toLocalDate();
    }

    /**
     * Plays the lunch.
     *
     * @param log empty, or with days before the lunch's
     * @param recipes take effect when the lunch begins, and what they name is counted; may be empty
     * @param endMs when it is now, milliseconds since 1970-01-01 UTC
     */
    public static void play(
            EventLog log, StandSettings settings, Menu menu, RecipeBook recipes, long endMs) {
        DemoLunch lunch = new DemoLunch(log, settings, menu, endMs);
        try {
            lunch.run(menu, recipes);
        } finally {
            lunch.desk.close();
        }
    }

    private void run(Menu menu, RecipeBook recipes) {
        submit("demo-menu", new AdoptMenu(menu));
        submit("demo-till", new ForTill(new TillCommand.OpenTill(CASHIER, FLOAT_CENTS)));
        for (Pan pan : menu.pans()) {
            submit("demo-pan-" + pan.id(), new ForPans(new PanCommand.Refill(pan.id(), FULL)));
        }
        String none = RecipeBook.empty().revision();
        submit("demo-recipes", new AdoptRecipes(recipes, none));
        for (LarderCommand.Count count : DemoCounts.of(recipes)) {
            submit("demo-count-" + count.asked().ingredient(), new ForLarder(count));
        }
        long atMs = clock.millis();
        while (atMs < endMs) {
            arrive(atMs, menu);
            boolean rush = endMs - atMs < RUSH_MINUTES * 60_000L;
            atMs += rush ? between(15_000, 40_000) : between(45_000, 110_000);
        }
        clock.moveTo(endMs);
    }

    /** One guest; everything that is due before is done first. */
    private void arrive(long atMs, Menu menu) {
        workUntil(atMs);
        clock.moveTo(atMs);
        Reading reading = parser.read(calls.anyCall(random));
        List<Asked> lines = new ArrayList<>();
        reading.lines().forEach(l -> lines.add(new Asked(l.quantity(), l.selection())));
        String name = random.nextInt(5) < 2 ? calls.anyName(random) : "";
        boolean toGo = random.nextInt(5) > 0;
        made++;
        Answer answer =
                submit("demo-" + made, new ForOrders(new OrderCommand.Place(name, toGo, lines)));
        answer.events().stream()
                .filter(recorded -> recorded.event() instanceof OrderPlaced)
                .forEach(
                        recorded -> {
                            OrderPlaced placed = (OrderPlaced) recorded.event();
                            plan(placed, atMs, menu);
                            payments.plan(placed, made, atMs).forEach(this::step);
                        });
    }

    /** When hands will begin each part, put it up, and hand the order over. */
    private void plan(OrderPlaced placed, long atMs, Menu menu) {
        long wholeMs = atMs;
        for (OrderLine line : placed.lines()) {
            long inHandMs = atMs;
            for (String station : HistoryOrder.feedsFirst(menu, line.selection())) {
                PartId part = new PartId(placed.order(), line.line(), station);
                int each = Router.seconds(menu, line.selection(), station);
                boolean waits = !Router.waitsFor(menu, line.selection(), station).isEmpty();
                long startMs = (waits ? inHandMs : atMs) + between(20_000, 150_000);
                long upMs = startMs + each * 1000L * line.quantity() + between(5_000, 60_000);
                step(startMs, new ForKitchen(new KitchenCommand.Start(part)));
                step(upMs, new ForKitchen(new KitchenCommand.Up(part)));
                wholeMs = Math.max(wholeMs, upMs);
                inHandMs = Math.max(inHandMs, upMs);
            }
        }
        step(
                wholeMs + between(10_000, 70_000),
                new ForOrders(new OrderCommand.Hand(placed.order())));
    }

    private void step(DemoPayments.Planned planned) {
        step(planned.atMs(), planned.command());
    }

    private void step(long atMs, StandCommand command) {
        steps.add(new Step(atMs, "demo-step-" + atMs + "-" + steps.size() + "-" + made, command));
    }

    private void workUntil(long atMs) {
        while (!steps.isEmpty() && steps.peek().atMs() <= atMs) {
            Step step = steps.poll();
            clock.moveTo(step.atMs());
            submit(step.key(), step.command());
        }
    }

    private Answer submit(String key, StandCommand command) {
        CompletableFuture<Answer> answer = desk.submit(key, key, command);
        return answer.join();
    }

    private long between(long fromMs, long toMs) {
        return fromMs + random.nextLong(toMs - fromMs);
    }
}
