package sopwell.prep.calendar;

import java.util.List;

/** What the owner can set for the plan; dates, times and numbers as they were typed. */
public sealed interface TermsCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        COSTS,
        DAY,
        OPENING,
        HOURS,
        AWAY,
        BACK,
        OUT,
        IN_ORDER,
        REVIEW,
        COST
    }

    /** This command's kind. */
    Kind kind();

    /**
     * What is lost, in general.
     *
     * @param goodwill dollars, such as {@code 0.50}
     * @param without percent
     * @param night thousandths
     */
    record SetCosts(String goodwill, String without, String night) implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.COSTS;
        }
    }

    /**
     * What a day is taken for where nothing says more.
     *
     * @param hands empty or 0 for what the book of recipes says
     */
    record SetDay(String guessPieces, String opens, String deliveredBy, String hands)
            implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.DAY;
        }
    }

    /** The first date on which the stand opens; empty when it has opened already. */
    record SetOpening(String date) implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.OPENING;
        }
    }

    /**
     * When somebody is in the kitchen, Monday first; a day without both times is one on which
     * nobody comes. All empty for what the book of recipes says.
     */
    record SetKitchen(List<String> from, List<String> to) implements TermsCommand {
        public SetKitchen {
            from = List.copyOf(from);
            to = List.copyOf(to);
        }

        @Override
        public Kind kind() {
            return Kind.HOURS;
        }
    }

    /** Nobody is in the kitchen on a date. */
    record CloseKitchen(String date) implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.AWAY;
        }
    }

    /** Somebody is, after all. */
    record OpenKitchen(String date) implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.BACK;
        }
    }

    /**
     * A resource can't be used for a while.
     *
     * @param slots how many of its places; empty for all
     * @param from {@code 2026-12-05T08:00}, or with a space
     */
    record TakeOut(String resource, String slots, String from, String until)
            implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.OUT;
        }
    }

    /** It can, after all; as it was said. */
    record BringBack(String resource, String from) implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.IN_ORDER;
        }
    }

    /**
     * One batch is made for so many open days.
     *
     * @param days empty or 1 for each day anew
     */
    record SetReview(String ingredient, String days) implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.REVIEW;
        }
    }

    /** What one too few and one too many of an ingredient cost, in dollars; empty: worked out. */
    record SetCost(String ingredient, String shortage, String waste) implements TermsCommand {
        @Override
        public Kind kind() {
            return Kind.COST;
        }
    }
}
