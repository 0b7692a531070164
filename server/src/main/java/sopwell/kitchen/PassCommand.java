package sopwell.kitchen;

/** What can be asked at the pass, besides handing an order and bringing it back. */
public sealed interface PassCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        CALL,
        COUNT_BAGS
    }

    /** This command's kind. */
    Kind kind();

    /** The id of the order that it is about. */
    String order();

    /** Says that the number of a whole order was called out. */
    record CallNumber(String order) implements PassCommand {
        @Override
        public Kind kind() {
            return Kind.CALL;
        }
    }

    /**
     * Says in how many bags an open order is.
     *
     * @param bags 1 to {@link sopwell.Limits#BAGS_MAX}
     */
    record CountBags(String order, int bags) implements PassCommand {
        @Override
        public Kind kind() {
            return Kind.COUNT_BAGS;
        }
    }
}
