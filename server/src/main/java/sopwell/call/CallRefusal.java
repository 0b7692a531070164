package sopwell.call;

import java.util.List;

/**
 * Why a call can't be read, and where. Immutable. Sentences are made of it by whoever shows it, in
 * the reader's language.
 *
 * @param column where the fault is, from 1, in UTF-16 units of the text as typed
 * @param length how much of the text is at fault, in the same units; 0 when something is missing
 * @param args what a sentence needs; {@link Why} says which for each kind
 * @param suggestions up to three texts, the likeliest first; {@link Why} says what to do with them
 * @param otherColumn the second place of a clash, from 1, or 0 when there is none
 * @param otherLength the length of the second place, or 0
 */
public record CallRefusal(
        Why why,
        int column,
        int length,
        List<String> args,
        List<String> suggestions,
        int otherColumn,
        int otherLength) {
    public CallRefusal {
        args = List.copyOf(args);
        suggestions = List.copyOf(suggestions);
    }

    /**
     * The kinds of fault. The leftmost line at fault is reported; within it, the kind that comes
     * first here; within that kind, the leftmost place. "Typed" means the words as they stand in
     * the text, so that a sentence can quote them.
     */
    public enum Why {
        /** Longer than Sopwell reads; the place is what is too much. Args: the limit. */
        TOO_LONG,
        /** Nothing is said. No args. */
        EMPTY,
        /** More lines than one order may have; the place is the first too many. Args: the limit. */
        TOO_MANY_LINES,
        /** Not a word of this menu. Args: typed. Suggestions: words to put in its place. */
        UNKNOWN_WORD,
        /**
         * Two items without a comma between them. Args: the second typed, the first typed; the
         * other place is the first. Suggestions: the same with a comma, to put in its place.
         */
        TWO_ITEMS,
        /**
         * Modifiers, sizes or a quantity, and no item. Args: typed. Suggestions: items that take
         * all of it, to add.
         */
        NO_ITEM,
        /** A quantity below 1 or above the limit. Args: typed, the limit. */
        QUANTITY_RANGE,
        /**
         * Two quantities. Args: the second typed, the first typed; the other place is the first.
         */
        QUANTITY_TWICE,
        /**
         * A bare number after its item, where it could be the next line's. Args: typed, the item
         * typed; the other place is the item. Suggestions: the same as "x2", to put in its place.
         */
        QUANTITY_PLACE,
        /**
         * A word that this item doesn't take. Args: typed, the item typed; the other place is the
         * item. Suggestions: sizes that the item has, to put in its place; or else items that take
         * the word.
         */
        NOT_FOR_ITEM,
        /** Two sizes. Args: the second typed, the first typed; the other place is the first. */
        SIZE_TWICE,
        /**
         * "No", and then nothing that can be refused. Args: typed, and what follows typed or empty;
         * the other place is what follows. Suggestions: words to add after it.
         */
        NO_WHAT,
        /**
         * Asked for and refused. Args: the second typed, the first typed; the other place is the
         * first.
         */
        WANTED_AND_REFUSED,
        /**
         * Two modifiers of which only one can be, or "none" and one of the same group. Args: the
         * second typed, the first typed, the group's id; the other place is the first.
         */
        CLASH,
        /**
         * More modifiers of one group than it allows; the place is the first too many. Args: typed,
         * the group's first typed, the group's id, the limit; the other place is the group's first.
         */
        TOO_MANY,
        /** A size must be said; the place is the item. Args: typed. Suggestions: sizes to add. */
        SIZE_MISSING,
        /**
         * A modifier must be said; the place is the item, or what took the default away. Args:
         * typed, the group's id, how many are needed. Suggestions: modifiers to add.
         */
        TOO_FEW
    }
}
