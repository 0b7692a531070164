package sopwell.stock.larder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.stock.larder.LarderCommand.Count;
import sopwell.stock.larder.LarderCommand.Deliver;
import sopwell.stock.larder.LarderCommand.MoveBatch;
import sopwell.stock.larder.LarderCommand.StartBatch;
import sopwell.stock.larder.LarderCommand.TakeTemperature;
import sopwell.stock.larder.LarderCommand.Waste;
import sopwell.stock.larder.LarderCommand.YieldBatch;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;

/** What is kept is the same to who reads the newest day and to who was there all the time. */
class CarriedStockTest {
    private static final List<String> KEPT =
            List.of("raw-beef", "sliced-beef", "celery", "relish", "rolls");

    private final Script script = new Script().recipes(Books.small());

    @Test
    void theNewestDayAloneTellsWhatTheWholeLogTells() {
        int compared = 0;
        for (int seed = 1; seed <= 20; seed++) {
            Script days = new Script().recipes(Books.small());
            Random random = new Random(seed);
            for (int day = 14; day < 19; day++) {
                days.at("2026-01-" + day + "T08:00");
                for (int n = 0; n < 40; n++) {
                    days.later(random.nextInt(900));
                    something(days, random);
                }
                Stand whole = folded(days, days.log());
                Stand newest = folded(days, newestDay(days.log()));
                String says = "seed " + seed + ", day " + day;
                assertEquals(whole.larder().carried(), newest.larder().carried(), says);
                assertEquals(days.stand().larder().carried(), whole.larder().carried(), says);
                assertEquals(whole.larder().compared(), newest.larder().compared(), says);
                compared += whole.larder().carried().isNothing() ? 0 : 1;
            }
        }
        assertTrue(compared > 90, "there was something to carry: " + compared);
    }

    @Test
    void aDayThatOpensWithNothingKeptCarriesNothing() {
        script.place("beef");
        assertEquals(0, carried());
        script.must(new Count(new TypedAmount("rolls", "9", "each")));
        script.at("2026-01-15T10:00").place("beef");
        assertEquals(1, carried());
        assertEquals(
                8_000, script.stand().larder().held("rolls").orElseThrow().expected(), "one sold");
    }

    @Test
    void aBatchLeftOverNightIsStillOnInTheMorning() {
        script.must(new StartBatch("sliced-beef", 1, "for Friday"));
        String id = script.stand().larder().batches().get(0).id();
        script.must(new MoveBatch(id, "roast"));
        script.must(new TakeTemperature(id, "120.5", false, "Ana"));
        Batch evening = script.stand().larder().batch(id).orElseThrow();
        script.at("2026-01-15T06:00");
        script.must(new Count(new TypedAmount("rolls", "9", "each")));
        Stand newest = folded(script, newestDay(script.log()));
        assertEquals(evening, newest.larder().batch(id).orElseThrow());
    }

    private long carried() {
        return script.log().stream()
                .filter(one -> one.event() instanceof LarderEvent.StockCarried)
                .count();
    }

    private static void something(Script script, Random random) {
        String kept = KEPT.get(random.nextInt(KEPT.size()));
        String unit = kept.equals("rolls") ? "each" : "lb";
        TypedAmount asked = new TypedAmount(kept, random.nextInt(50) + ".5", unit);
        List<Batch> batches = script.stand().larder().batches();
        switch (random.nextInt(8)) {
            case 0 -> script.must(new Count(asked));
            case 1 -> script.must(new Waste(asked, "old"));
            case 2 -> script.must(new Deliver(asked, ""));
            case 3 ->
                    script.must(
                            new StartBatch(
                                    random.nextBoolean() ? "relish" : "sliced-beef",
                                    1 + random.nextInt(3),
                                    ""));
            case 4, 5 -> script.place(random.nextBoolean() ? "2 beef dipped hot" : "beef extra");
            default -> {
                if (!batches.isEmpty()) {
                    batch(script, batches.get(random.nextInt(batches.size())), random);
                }
            }
        }
    }

    private static void batch(Script script, Batch batch, Random random) {
        String next =
                BatchWatch.next(batch, script.stand().recipes()).map(step -> step.id()).orElse("");
        int degrees = 30 + random.nextInt(150);
        script.must(new TakeTemperature(batch.id(), degrees + ".4", false, ""));
        if (next.isEmpty()) {
            script.must(new YieldBatch(batch.id(), "" + (1 + random.nextInt(9)), "kg"));
        } else {
            script.must(new MoveBatch(batch.id(), next));
        }
    }

    private static Stand folded(Script script, List<Recorded> events) {
        Stand stand = new Stand(Script.SETTINGS);
        stand.apply(new Recorded(1, 1, "menu", 0, new MenuAdopted(script.menu())));
        stand.apply(new Recorded(2, 2, "recipes", 0, new RecipesAdopted(Books.small())));
        events.forEach(stand::apply);
        return stand;
    }

    private static List<Recorded> newestDay(List<Recorded> log) {
        List<Recorded> newest = new ArrayList<>();
        for (Recorded one : log) {
            if (one.event() instanceof DayOpened) {
                newest.clear();
            }
            newest.add(one);
        }
        return newest;
    }
}
