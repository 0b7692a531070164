package sopwell.menu;

/**
 * Why a wish can't be made. Immutable.
 *
 * @param first the id at fault: an item, size, option or group
 * @param second the other id of a clash, or the group in question, or empty
 */
public record WishFault(Why why, String first, String second) {
    /** The kinds of fault, in the order in which they are looked for. */
    public enum Why {
        /** No such item. */
        UNKNOWN_ITEM,
        /** The item is not sold in this size; first is the size, second the item. */
        UNKNOWN_SIZE,
        /** The item has no such option; first is the option, second the item. */
        UNKNOWN_OPTION,
        /** A size must be said; first is the item. */
        SIZE_MISSING,
        /** The same option was asked for and refused. */
        WANTED_AND_REFUSED,
        /** "None" was said of a group and an option of it too; first is the group. */
        NONE_AND_SOME,
        /** Two options of one group of which only one may be chosen. */
        CLASH,
        /** More options of a group than it allows; first is the group, second the last option. */
        TOO_MANY,
        /** Fewer options of a group than it needs; first is the group. */
        TOO_FEW
    }
}
