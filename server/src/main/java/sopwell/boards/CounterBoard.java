package sopwell.boards;

import java.util.List;
import sopwell.menu.Shortage;

/**
 * The open orders at the counter, newest first, what can't be sold, and what stations ask.
 * Immutable.
 *
 * @param below orders that did not fit
 * @param outs what is out or counted, in the order in which it was marked
 * @param queries open queries, oldest first
 */
public record CounterBoard(
        List<CounterRow> rows, int below, List<Shortage> outs, List<CounterQuery> queries)
        implements Board {
    public CounterBoard {
        rows = List.copyOf(rows);
        outs = List.copyOf(outs);
        queries = List.copyOf(queries);
    }
}
