package sopwell.stock.larder;

import java.util.List;
import sopwell.log.Event;

/** What happens to what is kept. */
public sealed interface LarderEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        COUNTED,
        WASTED,
        DELIVERED,
        SLICER_CLEANED,
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
     * What was there goes on into a day that has just opened, in place of what is known: whoever
     * reads the log from this day on knows as much as who was there all the time.
     *
     * @param held what was counted before, by ingredient
     * @param batches the open ones
     * @param labels what was made and is kept
     * @param yields what the last batches gave
     * @param started how many batches were ever started
     * @param slicerCleanedAtMs when, milliseconds since 1970-01-01 UTC; 0 if never
     */
    record StockCarried(
            List<Held> held,
            List<Batch> batches,
            List<Label> labels,
            List<Yields> yields,
            int started,
            long slicerCleanedAtMs)
            implements LarderEvent {
        public StockCarried {
            held = List.copyOf(held);
            batches = List.copyOf(batches);
            labels = List.copyOf(labels);
            yields = List.copyOf(yields);
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
                    && slicerCleanedAtMs == 0;
        }
    }
}
