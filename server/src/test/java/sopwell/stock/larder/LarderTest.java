package sopwell.stock.larder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.desk.Script;
import sopwell.desk.StandCommand;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.stock.larder.LarderCommand.Count;
import sopwell.stock.larder.LarderCommand.Deliver;
import sopwell.stock.larder.LarderCommand.DiscardBatch;
import sopwell.stock.larder.LarderCommand.MoveBatch;
import sopwell.stock.larder.LarderCommand.StartBatch;
import sopwell.stock.larder.LarderCommand.TakeTemperature;
import sopwell.stock.larder.LarderCommand.UseUpBatch;
import sopwell.stock.larder.LarderCommand.Waste;
import sopwell.stock.larder.LarderCommand.YieldBatch;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.safety.Standing;

/** What the books have, and what happens to a batch. See {@link Books} for the amounts. */
class LarderTest {
    private final Script script = new Script().recipes(Books.small());

    private static TypedAmount asked(String ingredient, String amount, String unit) {
        return new TypedAmount(ingredient, amount, unit);
    }

    private long expected(String ingredient) {
        return script.stand().larder().held(ingredient).orElseThrow().expected();
    }

    @Test
    void anAmountIsKeptInTheBaseUnitAndAsItWasEntered() {
        script.must(new Count(asked("sliced-beef", "2.5", "lb")));
        LarderEvent.IngredientCounted counted =
                (LarderEvent.IngredientCounted) script.log().get(script.log().size() - 1).event();
        assertEquals(new Measure("sliced-beef", 1_133_981, "2.5", "lb"), counted.counted());
        script.must(new Count(asked("sliced-beef", "2", "pan")));
        assertEquals(9_000_000, expected("sliced-beef"));
        script.must(new Count(asked("rolls", "3", "tray")));
        assertEquals(144_000, expected("rolls"));
    }

    @Test
    void theBooksAreTheLastCountPlusWhatCameInLessWhatWentOut() {
        script.must(new Count(asked("sliced-beef", "10", "kg")));
        script.must(new Deliver(asked("sliced-beef", "1.5", "kg"), "from the other stand"));
        script.must(new Waste(asked("sliced-beef", "500", "g"), "dropped"));
        Order order = script.place("2 beef dipped hot");
        assertEquals(10_700_000, expected("sliced-beef"));
        assertEquals(Optional.empty(), script.stand().larder().held("rolls"), "never counted");
        script.change(order, "beef extra dipped hot");
        assertEquals(10_775_000, expected("sliced-beef"), "150 g by 150 %");
        script.must(new OrderCommand.VoidOrder(order.id(), 2, "left"));
        assertEquals(11_000_000, expected("sliced-beef"));
    }

    @Test
    void aCountComparesWithTheBooksAndStartsThemAnew() {
        script.must(new Count(asked("rolls", "100", "each")));
        script.place("3 beef dry");
        script.must(new Count(asked("rolls", "95", "each")));
        script.place("beef dry");
        script.must(new Count(asked("rolls", "93", "each")));
        Compared compared = script.stand().larder().compared().get(0);
        assertEquals(94_000, compared.expected());
        assertEquals(93_000, compared.counted());
        assertEquals(-3_000, compared.difference(), "two of the first count, one of the second");
        assertEquals(93_000, expected("rolls"));
    }

    @ParameterizedTest(name = "{0} {1} of {2}: {3}")
    @CsvSource({
        "-1,lb,sliced-beef,STOCK_AMOUNT", "2.5555,lb,sliced-beef,STOCK_AMOUNT",
        "1e3,lb,sliced-beef,STOCK_AMOUNT", "1000000,lb,sliced-beef,STOCK_AMOUNT",
        "two,lb,sliced-beef,STOCK_AMOUNT", "2,each,sliced-beef,UNKNOWN_MEASURE",
        "2,lb,rolls,UNKNOWN_MEASURE", "2,stone,sliced-beef,UNKNOWN_MEASURE",
        "2,lb,gravel,UNKNOWN_INGREDIENT"
    })
    void whatIsNoAmountIsRefused(String amount, String unit, String ingredient, Reason reason) {
        int before = script.log().size();
        Decision decision = script.decide(new Count(asked(ingredient, amount, unit)));
        assertEquals(reason, Script.reason(decision));
        assertEquals(before, script.log().size());
    }

    @Test
    void nothingIsACountButNoWasteOrDelivery() {
        script.must(new Count(asked("rolls", "0", "each")));
        TypedAmount nothing = asked("rolls", "0", "each");
        assertEquals(
                Reason.STOCK_AMOUNT, Script.reason(script.decide(new Waste(nothing, "mould"))));
        assertEquals(Reason.STOCK_AMOUNT, Script.reason(script.decide(new Deliver(nothing, ""))));
        TypedAmount one = asked("rolls", "1", "each");
        assertEquals(Reason.REASON_MISSING, Script.reason(script.decide(new Waste(one, " "))));
        assertEquals(
                Reason.CARD_NUMBER,
                Script.reason(script.decide(new Deliver(one, "4111 1111 1111 1111"))));
    }

    @Test
    void whatRunsOutIsToldFromThePaceOfLate() {
        script.must(new Count(asked("rolls", "60", "each")));
        for (int n = 0; n < 9; n++) {
            script.later(300).place("2 beef dry");
        }
        List<LarderLeft> all =
                LarderLeft.all(script.stand().recipes(), script.stand().larder(), script.nowMs());
        assertEquals("sliced-beef", all.get(0).ingredient().id(), "in the order of the shelves");
        LarderLeft rolls = all.get(4);
        assertEquals(Optional.of(42_000L), rolls.left());
        // 18 rolls in the 40 minutes since the first order: 42 last 93 minutes and 20 seconds.
        assertEquals(script.nowMs() + 5_600_000, rolls.runsOutAtMs());
        assertTrue(rolls.isOutBefore(script.nowMs() + 5_600_001));
        assertEquals(0, all.get(3).runsOutAtMs(), "nobody knows of raw beef");
    }

    @Test
    void lessThanCanBeReckonedWithIsTakenAsNothing() {
        script.recipes(Books.sprinkling("celery", "0.0004"));
        script.must(new Count(asked("celery", "1", "kg")));
        script.place("2 beef dry");
        List<LarderLeft> all =
                LarderLeft.all(script.stand().recipes(), script.stand().larder(), script.nowMs());
        LarderLeft celery = all.get(2);
        assertEquals("celery", celery.ingredient().id());
        assertEquals(Optional.of(1_000_000L), celery.left());
        assertEquals(0, celery.runsOutAtMs(), "nothing that is sold takes any");
    }

    @Test
    void aBatchTakesItsInputsAndGivesItsYield() {
        script.must(new Count(asked("raw-beef", "20", "kg")));
        script.must(new Count(asked("sliced-beef", "0", "g")));
        String id = start("sliced-beef", 2);
        assertEquals(9_000_000, expected("raw-beef"));
        Batch batch = script.stand().larder().batch(id).orElseThrow();
        assertEquals(7_260_000, batch.planned());
        assertEquals("trim", batch.step());
        for (String step : List.of("roast", "cool", "chill", "slice")) {
            script.later(600).must(new MoveBatch(id, step));
        }
        script.must(new YieldBatch(id, "7", "kg"));
        assertEquals(7_000_000, expected("sliced-beef"));
        assertEquals(List.of(), script.stand().larder().batches());
        Label label = script.stand().larder().label(id).orElseThrow();
        assertEquals(LocalDate.of(2026, 1, 14), label.preparedOn());
        assertEquals(LocalDate.of(2026, 1, 16), label.useBy(), "three days, today is the first");
        assertEquals(List.of(964), script.stand().larder().yields().get(0).perMille());
        script.must(new DiscardBatch(id, "1", "kg", "past its date"));
        assertEquals(6_000_000, expected("sliced-beef"));
    }

    @Test
    void theClockOfAStepFollowsItsTemperatures() {
        String id = start("sliced-beef", 1);
        assertEquals(Optional.empty(), standing(id), "nothing is watched while it is trimmed");
        script.must(new MoveBatch(id, "roast"));
        assertEquals(Standing.Advice.ROAST_ON, standing(id).orElseThrow().advice());
        script.must(new TakeTemperature(id, "158", false, "Ana"));
        assertEquals(Standing.State.DONE, standing(id).orElseThrow().state());
        script.must(new MoveBatch(id, "cool"));
        script.must(new TakeTemperature(id, "60", true, ""));
        assertEquals(Standing.State.FINE, standing(id).orElseThrow().state());
        script.later(7_000).must(new TakeTemperature(id, "21", true, ""));
        script.later(10_000).must(new TakeTemperature(id, "5", true, ""));
        assertEquals(Standing.State.DONE, standing(id).orElseThrow().state());
        script.must(new MoveBatch(id, "chill"));
        assertEquals(List.of(), script.stand().larder().batch(id).orElseThrow().missed());
    }

    @Test
    void aStepThatIsLeftWithoutItsLimitsIsKeptAsMissed() {
        String id = start("sliced-beef", 1);
        script.must(new MoveBatch(id, "roast"));
        script.must(new MoveBatch(id, "cool"));
        script.later(8_000).must(new MoveBatch(id, "chill"));
        assertEquals(
                List.of("roast", "cool"), script.stand().larder().batch(id).orElseThrow().missed());
    }

    @Test
    void whatIsHeldAndNeverMeasuredIsNotShownToBeHeldRight() {
        for (String measured : List.of("", "38")) {
            String id = start("sliced-beef", 1);
            for (String step : List.of("roast", "cool", "chill")) {
                script.must(new MoveBatch(id, step));
            }
            if (!measured.isEmpty()) {
                script.must(new TakeTemperature(id, measured, false, ""));
            }
            script.must(new MoveBatch(id, "slice"));
            boolean missed =
                    script.stand().larder().batch(id).orElseThrow().missed().contains("chill");
            assertEquals(measured.isEmpty(), missed, measured);
        }
    }

    @Test
    void aBatchGoesStepByStepAndEndsOnce() {
        String id = start("relish", 1);
        assertEquals(Reason.WRONG_STEP, Script.reason(script.decide(new MoveBatch(id, "roast"))));
        script.must(new MoveBatch(id, "chill"));
        assertEquals(Reason.WRONG_STEP, Script.reason(script.decide(new MoveBatch(id, "cut"))));
        assertEquals(Reason.BATCH_NOT_MADE, Script.reason(script.decide(new UseUpBatch(id))));
        script.must(new YieldBatch(id, "1", "pan"));
        assertEquals(Reason.BATCH_MADE, Script.reason(script.decide(new MoveBatch(id, "chill"))));
        script.must(new UseUpBatch(id));
        assertEquals(Reason.UNKNOWN_BATCH, Script.reason(script.decide(new UseUpBatch(id))));
        assertEquals(
                Reason.UNKNOWN_BATCH,
                Script.reason(script.decide(new DiscardBatch(id, "", "", "mould"))));
    }

    /** The demo names other ids; a book that weighs what was counted in pieces would lie. */
    @Test
    void aBookCannotLoseWhatIsKeptOrMeasureItOtherwise() {
        RecipeBook inForce = script.stand().recipes();
        Larder larder = script.stand().larder();
        RecipeBook other = Script.demoRecipes().get(0);
        assertEquals(Optional.empty(), LarderRules.lost(larder, inForce, other));
        script.must(new Count(asked("rolls", "9", "each")));
        assertEquals(Optional.empty(), LarderRules.lost(larder, inForce, other), "only counted");
        assertEquals(
                Optional.of(Refusal.of(Reason.INGREDIENT_KEPT, "rolls")),
                LarderRules.lost(larder, inForce, Books.weighing("rolls")));
        String id = start("relish", 1);
        StandCommand adopt = new StandCommand.AdoptRecipes(other, inForce.revision());
        assertEquals(Reason.INGREDIENT_KEPT, Script.reason(script.decide(adopt)));
        script.must(new YieldBatch(id, "4", "kg"));
        assertEquals(Reason.INGREDIENT_KEPT, Script.reason(script.decide(adopt)));
        script.must(new UseUpBatch(id));
        assertTrue(script.decide(adopt).refusal().isEmpty());
    }

    @Test
    void aBatchWhoseRecipeIsGoneCanStillBeCounted() {
        String id = start("relish", 1);
        script.recipes(Books.without("relish"));
        script.must(new YieldBatch(id, "4", "kg"));
        assertEquals(
                LocalDate.of(2026, 1, 17), script.stand().larder().label(id).orElseThrow().useBy());
    }

    @Test
    void whatCannotBeStartedOrMeasuredIsRefused() {
        assertEquals(
                Reason.NO_RECIPE, Script.reason(script.decide(new StartBatch("rolls", 1, ""))));
        assertEquals(
                Reason.UNKNOWN_INGREDIENT,
                Script.reason(script.decide(new StartBatch("gravel", 1, ""))));
        for (int lots : List.of(0, 201)) {
            assertEquals(
                    Reason.LOTS_RANGE,
                    Script.reason(script.decide(new StartBatch("relish", lots, ""))));
        }
        String id = start("relish", 1);
        for (String degrees : List.of("", "hot", "601", "-40.1", "41.55", "1e2")) {
            assertEquals(
                    Reason.TEMPERATURE_RANGE,
                    Script.reason(script.decide(new TakeTemperature(id, degrees, false, ""))),
                    degrees);
        }
    }

    /** Under oil the stand's 4 days hold, whatever the recipe says; and the oldest input's date. */
    @Test
    void aRelishUnderOilGetsTheShorterDateAndNeverALaterOneThanItsInputs() {
        String relish = start("relish", 1);
        script.must(new YieldBatch(relish, "4", "kg"));
        assertEquals(
                LocalDate.of(2026, 1, 17),
                script.stand().larder().label(relish).orElseThrow().useBy());
        String beef = start("sliced-beef", 1);
        script.must(new YieldBatch(beef, "3", "kg"));
        script.at("2026-01-15T09:00");
        String next = start("relish", 1);
        script.must(new YieldBatch(next, "4", "kg"));
        assertEquals(
                LocalDate.of(2026, 1, 16),
                script.stand().larder().label(next).orElseThrow().useBy(),
                "there is beef in it that is used by the 16th");
    }

    @Test
    void batchesThatGiveLessThanTheRecipeSaysArePointedOutOverWeeks() {
        Yields yields = new Yields("sliced-beef", List.of(900, 910, 1_000, 905));
        assertEquals(Optional.empty(), yields.departing(), "four are too few");
        assertEquals(Optional.of(905), yields.with(890).departing());
        Yields usual = new Yields("relish", List.of(990, 1_010, 1_004, 998, 300));
        assertEquals(Optional.empty(), usual.departing(), "one that went wrong says nothing");
        List<Integer> many = new ArrayList<>();
        Yields kept = usual;
        for (int n = 0; n < 20; n++) {
            kept = kept.with(1_100);
            many.add(1_100);
        }
        assertEquals(many.subList(0, 12), kept.perMille());
    }

    private Optional<Standing> standing(String batch) {
        return BatchWatch.of(
                script.stand().larder().batch(batch).orElseThrow(),
                script.stand().recipes(),
                Script.SETTINGS.safety(),
                script.nowMs());
    }

    private String start(String makes, int lots) {
        script.must(new StartBatch(makes, lots, ""));
        List<Batch> batches = script.stand().larder().batches();
        return batches.get(batches.size() - 1).id();
    }
}
