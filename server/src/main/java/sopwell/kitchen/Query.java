package sopwell.kitchen;

/**
 * A question from a station to the counter, and what came of it. Immutable.
 *
 * @param askedAtMs milliseconds since 1970-01-01 UTC
 * @param endedAtMs when it was answered or lapsed, milliseconds since 1970-01-01 UTC, or 0
 * @param changed whether the answer changed the line
 * @param answer the answer in own words, or empty
 */
public record Query(
        QueryId id,
        Question question,
        State state,
        long askedAtMs,
        long endedAtMs,
        boolean changed,
        String answer) {
    /** How far a query is. */
    public enum State {
        /** The station waits for the counter. */
        OPEN,
        /** The counter has answered. */
        ANSWERED,
        /** The part went up or was taken off before anybody answered. */
        LAPSED
    }

    static Query asked(QueryEvent.QueryAsked asked, long atMs) {
        return new Query(asked.query(), asked.question(), State.OPEN, atMs, 0, false, "");
    }

    /** Whether the station waits for the counter. */
    public boolean isOpen() {
        return state == State.OPEN;
    }

    /** How long the station waited for an answer, in milliseconds; only of an answered query. */
    public long waitedMs() {
        return endedAtMs - askedAtMs;
    }

    Query answered(QueryEvent.QueryAnswered answered, long atMs) {
        return new Query(
                id, question, State.ANSWERED, askedAtMs, atMs, answered.changed(), answered.text());
    }

    Query lapsed(long atMs) {
        return new Query(id, question, State.LAPSED, askedAtMs, atMs, false, "");
    }
}
