package sopwell.call;

import java.util.List;
import sopwell.menu.Selection;

/**
 * One line of a call as it was understood. Immutable.
 *
 * @param quantity 1 to 99
 * @param column where its text starts, from 1, in UTF-16 units of the text as typed
 * @param length how long its text is, in the same units
 * @param said ids of the sizes, options and bundles that were said, wanted or refused, in the order
 *     in which they were said; what is in the selection and not here is the house's default
 */
public record CallLine(
        int quantity, Selection selection, int column, int length, List<String> said) {
    public CallLine {
        said = List.copyOf(said);
    }

    /** The line without its place in the text. */
    public Counted counted() {
        return new Counted(quantity, selection);
    }
}
