package sopwell.boards;

import java.util.List;

/**
 * What the pass shows: open orders, oldest first, then those just handed, newest first. Immutable.
 *
 * @param below rows that did not fit
 */
public record PassBoard(List<PassRow> rows, int below) implements Board {
    public PassBoard {
        rows = List.copyOf(rows);
    }
}
