package sopwell.sim;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sopwell.desk.StandCommand;
import sopwell.prep.past.KeepPlan;
import sopwell.prep.past.KeptTask;
import sopwell.stock.larder.Batch;
import sopwell.stock.larder.BatchWatch;
import sopwell.stock.larder.Label;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.larder.TimeClock;
import sopwell.stock.larder.TypedAmount;
import sopwell.stock.recipes.PrepStep;

/**
 * What cooks do with what is kept and made: also counts that are none, steps that are not next,
 * batches that are gone. Stateless but for chance.
 */
final class Cooks {
    private static final List<String> KEPT =
            List.of("beef-raw", "beef-sliced", "celery", "hot-relish", "roll", "no-such");
    private static final List<String> UNITS = List.of("g", "kg", "lb", "pan", "each", "bag");
    private static final List<String> AMOUNTS = List.of("0", "1", "2.5", "12", "0.001", "-1", "x");

    private final World world;

    Cooks(World world) {
        this.world = world;
    }

    /** A plan of today, or of a day that is not open. */
    StandCommand keepPlan() {
        LocalDate today =
                LocalDate.ofInstant(
                        Instant.ofEpochMilli(world.clock.millis()),
                        world.shown().settings().zone());
        KeptTask task =
                new KeptTask("hot-relish", 1, 900, world.clock.millis(), 0, today.plusDays(1));
        return new StandCommand.ForPlan(
                new KeepPlan(today.minusDays(world.oneIn(4) ? 1 : 0), List.of(task)));
    }

    StandCommand count() {
        return larder(new LarderCommand.Count(asked()));
    }

    StandCommand waste() {
        return larder(new LarderCommand.Waste(asked(), world.oneIn(5) ? "" : "dropped"));
    }

    StandCommand deliver() {
        return larder(new LarderCommand.Deliver(asked(), world.oneIn(2) ? "" : "by the back door"));
    }

    StandCommand cleanSlicer() {
        return larder(new LarderCommand.CleanSlicer());
    }

    StandCommand start() {
        String makes = world.any(List.of("beef-sliced", "hot-relish", "roll"));
        return larder(new LarderCommand.StartBatch(makes, world.random.nextInt(4), ""));
    }

    StandCommand move() {
        Optional<Batch> batch = batch();
        if (batch.isEmpty()) {
            return null;
        }
        String next =
                BatchWatch.next(batch.get(), world.shown().recipes())
                        .map(PrepStep::id)
                        .orElse("slice");
        return larder(
                new LarderCommand.MoveBatch(batch.get().id(), world.oneIn(6) ? "trim" : next));
    }

    StandCommand measure() {
        String degrees = world.any(List.of("34.5", "41", "69.9", "131", "158", "hot"));
        return batch().map(
                        one ->
                                larder(
                                        new LarderCommand.TakeTemperature(
                                                one.id(), degrees, world.oneIn(3), "Ana")))
                .orElse(null);
    }

    StandCommand gave() {
        return batch().map(
                        one ->
                                larder(
                                        new LarderCommand.YieldBatch(
                                                one.id(),
                                                world.any(List.of("0", "3.25", "4", "x")),
                                                "kg")))
                .orElse(null);
    }

    StandCommand discard() {
        String reason = world.oneIn(5) ? "" : "too late";
        String amount = world.oneIn(2) ? "" : world.any(AMOUNTS);
        return larder(new LarderCommand.DiscardBatch(anyId(), amount, "kg", reason));
    }

    StandCommand useUp() {
        return larder(new LarderCommand.UseUpBatch(anyId()));
    }

    /** Food is taken out of the cold, or measured, or gone. */
    StandCommand clock() {
        Optional<TimeClock> clock = world.some(world.shown().larder().clocks());
        String degrees = world.any(List.of("34.5", "41", "69.9", "131", "158", "hot"));
        if (clock.isEmpty() || world.oneIn(3)) {
            return larder(
                    new LarderCommand.StartClock(
                            world.any(List.of("relish, line", "")),
                            world.oneIn(2),
                            degrees,
                            world.oneIn(4)));
        }
        String id = world.oneIn(8) ? "t999" : clock.get().id();
        return world.oneIn(2)
                ? larder(new LarderCommand.MeasureClock(id, degrees, false))
                : larder(new LarderCommand.StopClock(id, world.oneIn(2)));
    }

    /** A batch that is kept, or any that is or was. */
    private String anyId() {
        Optional<Label> label = world.some(world.shown().larder().labels());
        if (label.isPresent() && !world.oneIn(3)) {
            return label.get().batch();
        }
        return "b" + (1 + world.random.nextInt(1 + world.shown().larder().started()));
    }

    private Optional<Batch> batch() {
        return world.some(world.shown().larder().batches());
    }

    private TypedAmount asked() {
        return new TypedAmount(world.any(KEPT), world.any(AMOUNTS), world.any(UNITS));
    }

    private static StandCommand larder(LarderCommand command) {
        return new StandCommand.ForLarder(command);
    }
}
