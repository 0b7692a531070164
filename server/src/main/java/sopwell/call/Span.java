package sopwell.call;

/**
 * What one piece of a call's text was understood as. Immutable.
 *
 * @param column where it starts, from 1, in UTF-16 units of the text as typed
 * @param length how long it is, in the same units
 * @param id the item, size, option or bundle; empty for the other roles
 */
public record Span(int column, int length, Role role, String id) {
    /** What a piece of text does in a call. */
    public enum Role {
        /** What is asked for. */
        ITEM,
        /** A size of an item. */
        SIZE,
        /** One modifier. */
        OPTION,
        /** Several modifiers at once, or none of a group. */
        BUNDLE,
        /** Refuses the modifier after it. */
        NO,
        /** How many. */
        QUANTITY,
        /** Parts two lines: a comma, a line break, "and". */
        SEPARATOR,
        /** Means nothing. */
        SKIP,
        /** Not understood. */
        UNKNOWN
    }
}
