package sopwell.stock.larder;

import java.util.Optional;
import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;
import sopwell.stock.safety.Temperature;

/**
 * What may be said about food that is held by time alone. Nothing is locked: a clock that was
 * started too warm runs, and says at once that the food must go. Stateless and pure.
 */
final class ClockRules {
    private ClockRules() {}

    static Decision decide(Larder larder, LarderCommand.ForClock command) {
        return switch (command.clockKind()) {
            case START -> start(larder, (LarderCommand.StartClock) command);
            case MEASURE -> measure(larder, (LarderCommand.MeasureClock) command);
            case STOP -> stop(larder, (LarderCommand.StopClock) command);
        };
    }

    private static Decision start(Larder larder, LarderCommand.StartClock start) {
        String what = start.what().strip();
        if (what.isEmpty() || what.length() > ClockLimits.CLOCK_NAME_CHARS_MAX) {
            return Decision.refused(Reason.CLOCK_NAME, ClockLimits.CLOCK_NAME_CHARS_MAX);
        }
        Optional<Refusal> unclear = Texts.note(what);
        if (unclear.isPresent()) {
            return LarderRules.refused(unclear.get());
        }
        if (larder.clocks().size() >= ClockLimits.CLOCKS_MAX) {
            return Decision.refused(Reason.TOO_MANY_CLOCKS, ClockLimits.CLOCKS_MAX);
        }
        Optional<Temperature> degrees = Degrees.read(start.degrees(), start.celsius());
        return degrees.isEmpty()
                ? LarderRules.refused(Degrees.refusal(start.degrees(), start.celsius()))
                : Decision.accepted(
                        new LarderEvent.ClockStarted(
                                "t" + (larder.clocksStarted() + 1),
                                what,
                                start.isLonger(),
                                degrees.get()));
    }

    private static Decision measure(Larder larder, LarderCommand.MeasureClock measure) {
        Optional<TimeClock> clock = larder.clock(measure.clock());
        if (clock.isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_CLOCK, measure.clock());
        }
        if (clock.get().readings().size() >= ClockLimits.CLOCK_READINGS_MAX) {
            return Decision.refused(Reason.TOO_MANY_READINGS, ClockLimits.CLOCK_READINGS_MAX);
        }
        Optional<Temperature> degrees = Degrees.read(measure.degrees(), measure.celsius());
        return degrees.isEmpty()
                ? LarderRules.refused(Degrees.refusal(measure.degrees(), measure.celsius()))
                : Decision.accepted(new LarderEvent.ClockMeasured(measure.clock(), degrees.get()));
    }

    private static Decision stop(Larder larder, LarderCommand.StopClock stop) {
        return larder.clock(stop.clock()).isEmpty()
                ? Decision.refused(Reason.UNKNOWN_CLOCK, stop.clock())
                : Decision.accepted(new LarderEvent.ClockStopped(stop.clock(), stop.isDiscarded()));
    }
}
