package sopwell.stock.larder;

/** What can be said about what is kept and what is being made. */
public sealed interface LarderCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        COUNT,
        WASTE,
        DELIVER,
        CLEAN_SLICER,
        CLOCK,
        START,
        MOVE,
        MEASURE,
        YIELD,
        DISCARD,
        USE_UP
    }

    /** This command's kind. */
    Kind kind();

    /** So much is there. */
    record Count(TypedAmount asked) implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.COUNT;
        }
    }

    /** So much was thrown away. */
    record Waste(TypedAmount asked, String reason) implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.WASTE;
        }
    }

    /** So much came in. */
    record Deliver(TypedAmount asked, String note) implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.DELIVER;
        }
    }

    /** The slicer was cleaned. */
    record CleanSlicer() implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.CLEAN_SLICER;
        }
    }

    /** So many lots of something are begun. */
    record StartBatch(String makes, int lots, String note) implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.START;
        }
    }

    /**
     * A batch goes on.
     *
     * @param step the step that begins; must be the one after the present one
     */
    record MoveBatch(String batch, String step) implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.MOVE;
        }
    }

    /**
     * A temperature was measured.
     *
     * @param degrees as typed, with at most one digit after the point
     * @param by who did; may be empty
     */
    record TakeTemperature(String batch, String degrees, boolean celsius, String by)
            implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.MEASURE;
        }
    }

    /** A batch is made and gave so much. */
    record YieldBatch(String batch, String amount, String unit) implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.YIELD;
        }
    }

    /**
     * A batch is thrown away.
     *
     * @param amount what is still there of one that was made; empty for all that it gave
     */
    record DiscardBatch(String batch, String amount, String unit, String reason)
            implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.DISCARD;
        }
    }

    /** Nothing is left of a batch that was made. */
    record UseUpBatch(String batch) implements LarderCommand {
        @Override
        public Kind kind() {
            return Kind.USE_UP;
        }
    }

    /** Something about food that is held by time alone. */
    sealed interface ForClock extends LarderCommand {
        /** Which record a command is, for switches that must be complete. */
        enum ClockKind {
            START,
            MEASURE,
            STOP
        }

        /** This command's kind among them. */
        ClockKind clockKind();

        @Override
        default Kind kind() {
            return Kind.CLOCK;
        }
    }

    /**
     * Food is taken out of temperature control, and its clock starts.
     *
     * @param what which food, in which pan
     * @param isLonger for the longer time
     * @param degrees how hot or cold it is now, as typed
     */
    record StartClock(String what, boolean isLonger, String degrees, boolean celsius)
            implements ForClock {
        @Override
        public ClockKind clockKind() {
            return ClockKind.START;
        }
    }

    /** It was measured while it stands out. */
    record MeasureClock(String clock, String degrees, boolean celsius) implements ForClock {
        @Override
        public ClockKind clockKind() {
            return ClockKind.MEASURE;
        }
    }

    /** It is used up, or thrown away. */
    record StopClock(String clock, boolean isDiscarded) implements ForClock {
        @Override
        public ClockKind clockKind() {
            return ClockKind.STOP;
        }
    }
}
