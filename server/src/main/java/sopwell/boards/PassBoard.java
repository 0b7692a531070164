package sopwell.boards;

import java.util.ArrayList;
import java.util.List;

/**
 * What the pass shows: orders that something is missing of, oldest first; whole ones, in the order
 * in which they became whole, so that a new one stands last; and those just handed, newest first.
 * Immutable.
 *
 * @param below orders on the way that did not fit
 * @param wholeBelow whole orders that did not fit
 */
public record PassBoard(
        List<PassRow> open, List<PassRow> whole, List<PassRow> handed, int below, int wholeBelow)
        implements Board {
    public PassBoard {
        open = List.copyOf(open);
        whole = List.copyOf(whole);
        handed = List.copyOf(handed);
    }

    @Override
    public List<PassRow> rows() {
        List<PassRow> rows = new ArrayList<>(open);
        rows.addAll(whole);
        rows.addAll(handed);
        return rows;
    }
}
