package sopwell.kitchen;

import sopwell.log.Event;

/** What is asked and answered between stations and the counter. */
public sealed interface QueryEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        ASKED,
        ANSWERED
    }

    /** This event's kind. */
    Kind kind();

    /** The query that it happened to. */
    QueryId query();

    /** A station asks. */
    record QueryAsked(QueryId query, Question question) implements QueryEvent {
        @Override
        public Kind kind() {
            return Kind.ASKED;
        }
    }

    /**
     * The counter answers.
     *
     * @param changed whether the line is changed with it; otherwise it is right as it stands
     * @param text the answer in own words, or empty
     */
    record QueryAnswered(QueryId query, boolean changed, String text) implements QueryEvent {
        @Override
        public Kind kind() {
            return Kind.ANSWERED;
        }
    }
}
