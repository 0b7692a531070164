package sopwell.stock.larder;

import java.util.List;
import sopwell.log.Event;
import sopwell.stock.safety.Temperature;

/** What happens to what is kept. */
public sealed interface LarderEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        COUNTED,
        WASTED,
        DELIVERED,
        SLICER_CLEANED,
        CLOCK_STARTED,
        CLOCK_MEASURED,
        CLOCK_STOPPED,
        CARRIED
    }

    /** This event's kind. */
    Kind kind();

    /** Somebody counted what is there. */
    record IngredientCounted(Measure counted) implements LarderEvent {
        @Override
        public Kind kind() {
            return Kind.COUNTED;
        }
    }

    /** Something was thrown away. */
    record IngredientWasted(Measure wasted, String reason) implements LarderEvent {
        @Override
        public Kind kind() {
            return Kind.WASTED;
        }
    }

    /**
     * Something came in.
     *
     * @param note who brought it, or anything else; may be empty
     */
    record IngredientDelivered(Measure delivered, String note) implements LarderEvent {
        @Override
        public Kind kind() {
            return Kind.DELIVERED;
        }
    }

    /** The slicer was cleaned. */
    record SlicerCleaned() implements LarderEvent {
        @Override
        public Kind kind() {
            return Kind.SLICER_CLEANED;
        }
    }

    /**
     * Food was taken out of temperature control and is held by time alone from now on.
     *
     * @param clock names its clock
     * @param temperature how hot or cold it was
     */
    record ClockStarted(String clock, String what, boolean isLonger, Temperature temperature)
            implements LarderEvent {
        @Override
        public Kind kind() {
            return Kind.CLOCK_STARTED;
        }
    }

    /** Food that is held by time alone was measured. */
    record ClockMeasured(String clock, Temperature temperature) implements LarderEvent {
        @Override
        public Kind kind() {
            return Kind.CLOCK_MEASURED;
        }
    }

    /** Food that was held by time alone is used up, or thrown away. */
    record ClockStopped(String clock, boolean isDiscarded) implements LarderEvent {
        @Override
        public Kind kind() {
            return Kind.CLOCK_STOPPED;
        }
    }

    /**
     * What was there goes on into a day that has just opened, in place of what is known: whoever
     * reads the log from this day on knows as much as who was there all the time.
     *
     * @param held what was counted before, by ingredient
     * @param batches the open ones
     * @param labels what was made and is kept
     * @param yields what the last batches gave
     * @param started how many batches were ever started
     * @param slicerCleanedAtMs when, milliseconds since 1970-01-01 UTC; 0 if never
     * @param clocks of food that is held by time alone
     * @param clocksStarted how many of those were ever started
     */
    record StockCarried(
            List<Held> held,
            List<Batch> batches,
            List<Label> labels,
            List<Yields> yields,
            int started,
            long slicerCleanedAtMs,
            List<TimeClock> clocks,
            int clocksStarted)
            implements LarderEvent {
        public StockCarried {
            held = List.copyOf(held);
            batches = List.copyOf(batches);
            labels = List.copyOf(labels);
            yields = List.copyOf(yields);
            clocks = List.copyOf(clocks);
        }

        @Override
        public Kind kind() {
            return Kind.CARRIED;
        }

        /** Whether it says nothing that a new stand does not know. */
        public boolean isNothing() {
            return held.isEmpty()
                    && batches.isEmpty()
                    && labels.isEmpty()
                    && yields.isEmpty()
                    && started == 0
                    && slicerCleanedAtMs == 0
                    && clocksStarted == 0;
        }
    }
}
