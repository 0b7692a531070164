package sopwell.mix;

import java.util.List;
import sopwell.menu.LocalText;

/**
 * How one item was made: its first modifier group down, its second across, its third beside.
 * Immutable.
 *
 * @param item the item's id
 * @param down the name of the group down the side
 * @param across the name of the group across the top
 * @param beside the name of the third group, or empty texts when the item has none
 * @param rows the ways of the first group that occurred, in the menu's order
 * @param columns the ways of the second group that occurred, in the menu's order
 * @param pieces by row, then by column
 * @param besides pieces by the way of the third group
 */
public record MixTable(
        String item,
        LocalText name,
        LocalText down,
        LocalText across,
        LocalText beside,
        List<Way> rows,
        List<Way> columns,
        List<List<Integer>> pieces,
        List<WayCount> besides) {
    public MixTable {
        rows = List.copyOf(rows);
        columns = List.copyOf(columns);
        pieces = pieces.stream().map(List::copyOf).toList();
        besides = List.copyOf(besides);
    }

    /**
     * One way of choosing from a group.
     *
     * @param id the options' ids joined with a plus sign, or {@code none}
     */
    public record Way(String id, LocalText name) {}

    /** So many pieces made one way. */
    public record WayCount(Way way, int pieces) {}

    /** The share of one cell. */
    public Share share(int row, int column) {
        return new Share(pieces.get(row).get(column), total());
    }

    /** The share of a way of the first group. */
    public Share rowShare(int row) {
        return new Share(rowTotal(row), total());
    }

    /** The share of a way of the second group. */
    public Share columnShare(int column) {
        return new Share(columnTotal(column), total());
    }

    /** All pieces of a row. */
    public int rowTotal(int row) {
        return pieces.get(row).stream().mapToInt(Integer::intValue).sum();
    }

    /** All pieces of a column. */
    public int columnTotal(int column) {
        return pieces.stream().mapToInt(row -> row.get(column)).sum();
    }

    /** All pieces of the table. */
    public int total() {
        return pieces.stream().flatMap(List::stream).mapToInt(Integer::intValue).sum();
    }
}
