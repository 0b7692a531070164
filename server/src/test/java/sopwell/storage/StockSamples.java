package sopwell.storage;

import java.time.LocalDate;
import java.util.List;
import sopwell.log.Event;
import sopwell.stock.larder.Batch;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.Label;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.larder.Measure;
import sopwell.stock.larder.Yields;
import sopwell.stock.safety.Reading;
import sopwell.stock.safety.Temperature;

/** One of each event of what is kept and made. */
final class StockSamples {
    private static final String BATCH = "b17";
    private static final Temperature COLD = Temperature.tenthsF(400);
    private static final LocalDate PREPARED = LocalDate.of(2025, 5, 3);
    private static final LocalDate USE_BY = LocalDate.of(2025, 5, 9);

    private StockSamples() {}

    static List<Event> oneOfEach() {
        Measure beef = new Measure("sliced-beef", 1_133_981L, "2.5", "lb");
        return List.of(
                new LarderEvent.IngredientCounted(beef),
                new LarderEvent.IngredientWasted(beef, "left out overnight"),
                new LarderEvent.IngredientDelivered(beef, "Tarn Meats"),
                new LarderEvent.SlicerCleaned(),
                new LarderEvent.ClockStarted("t3", "hot relish, line", true, COLD),
                new LarderEvent.ClockMeasured("t3", Temperature.tenthsC(214)),
                new LarderEvent.ClockStopped("t3", true),
                new BatchEvent.BatchStarted(
                        BATCH,
                        "sliced-beef",
                        2,
                        7_298_280L,
                        "for Sunday",
                        "trim",
                        List.of(new BatchEvent.Taken("raw-beef", 11_000_000L))),
                new BatchEvent.BatchMoved(BATCH, "chill", true, "2025-05-03"),
                new BatchEvent.TemperatureTaken(BATCH, Temperature.tenthsC(214), true, "Inés"),
                new BatchEvent.BatchYielded(BATCH, beef, true, PREPARED, USE_BY),
                new BatchEvent.BatchDiscarded(BATCH, 500L, "70 °F missed"),
                new BatchEvent.BatchUsedUp(BATCH),
                carried());
    }

    private static LarderEvent.StockCarried carried() {
        List<Reading> readings =
                List.of(new Reading(1_746_303_600_000L, Temperature.tenthsF(1_354)));
        return new LarderEvent.StockCarried(
                List.of(
                        new Held("jus", 1_746_200_000_000L, 9_000_000L, 0, 0, 0),
                        new Held("rolls", 1_746_200_000_000L, 360_000L, 144_000, 401_000, 3_000)),
                List.of(
                        new Batch(
                                BATCH,
                                "sliced-beef",
                                2,
                                7_298_280L,
                                "for Sunday",
                                1_746_290_000_000L,
                                "cool",
                                1_746_300_000_000L,
                                readings,
                                List.of("roast"),
                                "2025-05-03")),
                List.of(new Label("b16", "relish", 4_000_000L, PREPARED, USE_BY)),
                List.of(new Yields("relish", List.of(985, 1_010))),
                17,
                1_746_299_000_000L,
                List.of(),
                0);
    }
}
