package sopwell.stock.larder;

import java.time.LocalDate;
import java.util.List;
import sopwell.log.Event;
import sopwell.stock.safety.Temperature;

/** What happens to a batch. */
public sealed interface BatchEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        STARTED,
        MOVED,
        MEASURED,
        YIELDED,
        DISCARDED,
        USED_UP
    }

    /** This event's kind. */
    Kind kind();

    /** The batch's id. */
    String batch();

    /**
     * Something is being made.
     *
     * @param lots how many lots of the recipe
     * @param planned what the recipe says they give, in thousandths of the base unit
     * @param step the first step
     * @param takes what it takes of what is kept
     */
    record BatchStarted(
            String batch,
            String makes,
            int lots,
            long planned,
            String note,
            String step,
            List<Taken> takes)
            implements BatchEvent {
        public BatchStarted {
            takes = List.copyOf(takes);
        }

        @Override
        public Kind kind() {
            return Kind.STARTED;
        }
    }

    /**
     * What a batch takes of one ingredient.
     *
     * @param thousandths of its base unit
     */
    record Taken(String ingredient, long thousandths) {}

    /**
     * A batch goes on to another step.
     *
     * @param step the step that begins
     * @param met whether the limits of the step that ends were shown to be met; also when it has
     *     none
     * @param preparedOn day 1 of its life when this step's end makes it that; else empty
     */
    record BatchMoved(String batch, String step, boolean met, String preparedOn)
            implements BatchEvent {
        @Override
        public Kind kind() {
            return Kind.MOVED;
        }
    }

    /**
     * A temperature was measured in it.
     *
     * @param celsius whether it was entered in degrees Celsius
     * @param by who did; may be empty
     */
    record TemperatureTaken(String batch, Temperature temperature, boolean celsius, String by)
            implements BatchEvent {
        @Override
        public Kind kind() {
            return Kind.MEASURED;
        }
    }

    /**
     * It is made.
     *
     * @param gave what there is of it
     * @param met whether the limits of its last step were shown to be met
     * @param preparedOn day 1 of its life
     * @param useBy the last day on which it may be used
     */
    record BatchYielded(
            String batch, Measure gave, boolean met, LocalDate preparedOn, LocalDate useBy)
            implements BatchEvent {
        @Override
        public Kind kind() {
            return Kind.YIELDED;
        }
    }

    /**
     * It was thrown away, before or after it was made.
     *
     * @param thousandths what was still there of one that was made; 0 of one that was not
     */
    record BatchDiscarded(String batch, long thousandths, String reason) implements BatchEvent {
        @Override
        public Kind kind() {
            return Kind.DISCARDED;
        }
    }

    /** Nothing is left of it. */
    record BatchUsedUp(String batch) implements BatchEvent {
        @Override
        public Kind kind() {
            return Kind.USED_UP;
        }
    }
}
