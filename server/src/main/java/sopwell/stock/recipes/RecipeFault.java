package sopwell.stock.recipes;

import java.util.List;

/**
 * One thing wrong with a book of recipes. Immutable.
 *
 * @param place where, as a JSON Pointer (RFC 6901) into the book's document
 * @param args what its sentences name, in the order that the kind gives
 */
public record RecipeFault(String place, Kind kind, List<String> args) {
    public RecipeFault {
        args = List.copyOf(args);
    }

    /** The same fault at a place. */
    public RecipeFault at(String here) {
        return new RecipeFault(here, kind, args);
    }

    /** What can be wrong. The screens' texts have two sentences for each: wrong, and right. */
    public enum Kind {
        /** The id; the most characters. */
        NO_ID,
        /** The id. */
        TAKEN_ID,
        /** The id; ids that are there, the nearest first. So for all that are unknown. */
        UNKNOWN_INGREDIENT,
        UNKNOWN_ITEM,
        UNKNOWN_SIZE,
        UNKNOWN_OPTION,
        UNKNOWN_RESOURCE,
        UNKNOWN_STEP,
        UNKNOWN_ALLERGEN,
        /** The number, the least, the most. */
        OUT_OF_RANGE,
        /** The amount. */
        NOT_ABOVE_ZERO,
        /** The amount, the most. */
        AMOUNT_TOO_LARGE,
        /** What stands there twice. */
        TWICE,
        /** The share. */
        YIELD_RANGE,
        /** The made ingredients, each going into the next, the first again last. */
        CIRCLE,
        /** The ingredient. */
        MADE_TWICE,
        /** The ingredient. */
        MADE_AND_BOUGHT,
        NO_INPUT,
        NO_STEP,
        NEITHER_YIELDS_NOR_OUT,
        YIELDS_AND_OUT,
        /** The made ingredient, the main input. */
        OTHER_DIMENSION,
        /** The least wait, the most. */
        WAITS_CROSSED,
        NO_RESOURCE_FOR_SLOTS,
        NO_SLOTS,
        /** How many slots one lot takes, how many there are. */
        TOO_FEW_SLOTS,
        /** The supplier. */
        NO_DELIVERY_DAY,
        /** From, to. */
        HOURS_CROSSED,
        USE_OF_NOTHING,
        USE_HOW_MUCH,
        PERCENT_OF_ITEM,
        SIZE_WITHOUT_ITEM,
        /** The item, the modifier. */
        OPTION_NOT_TAKEN,
        /** What was written; the units that would do. So for all that are amounts. */
        AMOUNT_NO_NUMBER,
        AMOUNT_COMMA,
        AMOUNT_NO_UNIT,
        AMOUNT_UNKNOWN_UNIT,
        AMOUNT_OTHER_KIND,
        /** What was written. */
        NO_WHOLE_NUMBER,
        NO_SHARE,
        NO_TIME,
        NO_PRICE,
        NO_DURATION,
        NO_UNIT,
        NO_SUPPLIER,
        /** A name that must be there in both languages is not there in one. */
        NO_NAME,
        /** How many characters a text may have; it is longer, or some of them can't be shown. */
        NO_TEXT,
        /** The name. */
        NAME_TAKEN
    }
}
