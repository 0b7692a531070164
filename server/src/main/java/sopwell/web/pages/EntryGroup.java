package sopwell.web.pages;

import java.util.List;

/**
 * Fields that belong together on a form. Immutable.
 *
 * @param name for the style sheet
 * @param hint a sentence that helps, or empty
 * @param rows one, or as many as were asked for
 * @param count the field that says how many rows there are; empty when they can't grow
 */
public record EntryGroup(String name, String legend, String hint, List<Row> rows, String count) {
    /**
     * A line of fields. Immutable.
     *
     * @param legend what it is called, or empty
     * @param kept a field that is only sent along, such as a row's id; empty for none
     * @param keptValue what it says
     */
    public record Row(String legend, String kept, String keptValue, List<EntryBox> boxes) {}

    public boolean grows() {
        return !count.isEmpty();
    }
}
