package sopwell.boards;

import java.util.List;
import sopwell.menu.Shortage;

/**
 * The open orders at the counter, newest first, and what can't be sold. Immutable.
 *
 * @param below orders that did not fit
 * @param outs what is out or counted, in the order in which it was marked
 */
public record CounterBoard(List<CounterRow> rows, int below, List<Shortage> outs) implements Board {
    public CounterBoard {
        rows = List.copyOf(rows);
        outs = List.copyOf(outs);
    }
}
