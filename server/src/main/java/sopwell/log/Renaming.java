package sopwell.log;

/** Says what stands in the log from now on in place of what people are called. */
@FunctionalInterface
public interface Renaming {
    /** Where a text stands that may name somebody. */
    enum Place {
        /** A guest's name on an order; it may be taken out without leaving anything. */
        GUEST,
        /** Who answers for a till, or who measured; something must stay. */
        STAFF,
        /** Somebody's own words, such as a reason; something must stay. */
        WORDS
    }

    /** What the text is from now on: the same, another, or nothing where that may be. */
    String now(Place place, String text);
}
