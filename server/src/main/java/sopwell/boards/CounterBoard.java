package sopwell.boards;

import java.util.List;

/**
 * The open orders at the counter, newest first, and what stations ask. Immutable.
 *
 * @param below orders that did not fit
 * @param queries open queries, oldest first
 */
public record CounterBoard(List<CounterRow> rows, int below, List<CounterQuery> queries)
        implements Board {
    public CounterBoard {
        rows = List.copyOf(rows);
        queries = List.copyOf(queries);
    }
}
