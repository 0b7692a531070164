package sopwell.prep.calendar;

/**
 * What the owner can say of days; dates, times and numbers as they were typed. A date is year,
 * month and day with hyphens, or {@code today} or {@code tomorrow}.
 */
public sealed interface CalendarCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        HOURS,
        ADD,
        REMOVE,
        GUESS,
        TERMS
    }

    /** This command's kind. */
    Kind kind();

    /**
     * Whether and when the stand opens on a date.
     *
     * @param opens {@code 10:30}; both empty for the usual hours
     */
    record SetHours(String date, boolean closed, String opens, String closes)
            implements CalendarCommand {
        @Override
        public Kind kind() {
            return Kind.HOURS;
        }
    }

    /**
     * Something is particular about a date.
     *
     * @param percent how much more it makes of a day, {@code +40 %}; empty for no guess
     */
    record AddOccasion(String date, String name, String percent) implements CalendarCommand {
        @Override
        public Kind kind() {
            return Kind.ADD;
        }
    }

    /** It is not, after all. */
    record RemoveOccasion(String date, String name) implements CalendarCommand {
        @Override
        public Kind kind() {
            return Kind.REMOVE;
        }
    }

    /**
     * So many of an item a plain day sells, in the owner's eyes.
     *
     * @param pieces empty or 0 for no guess
     */
    record Guess(String item, String pieces) implements CalendarCommand {
        @Override
        public Kind kind() {
            return Kind.GUESS;
        }
    }

    /** Something is set for the plan. */
    record SetTerms(TermsCommand command) implements CalendarCommand {
        @Override
        public Kind kind() {
            return Kind.TERMS;
        }
    }
}
