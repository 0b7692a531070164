package sopwell.boards;

import java.util.List;

/**
 * The open orders at the counter, newest first. Immutable.
 *
 * @param below orders that did not fit
 */
public record CounterBoard(List<CounterRow> rows, int below) implements Board {
    public CounterBoard {
        rows = List.copyOf(rows);
    }
}
