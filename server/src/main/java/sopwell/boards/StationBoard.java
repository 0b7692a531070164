package sopwell.boards;

import java.util.List;
import java.util.Optional;
import sopwell.menu.LocalText;
import sopwell.orders.Quote;
import sopwell.stock.PanLeft;

/**
 * What a station's screen shows, oldest first. Immutable.
 *
 * @param station the station's id
 * @param builds whether it is a build board with columns in assembly order, or a plain list
 * @param columns in assembly order
 * @param below rows that did not fit
 * @param quote the wait that a guest who orders the house's own thing now is told; empty where the
 *     station has no part in that
 * @param loads what it makes in one go; empty for a station that makes its pieces one by one
 * @param pans what it keeps hot
 */
public record StationBoard(
        String station,
        LocalText name,
        boolean builds,
        List<Column> columns,
        List<PartRow> rows,
        int below,
        Optional<Quote> quote,
        Optional<StationLoads> loads,
        List<PanLeft> pans)
        implements Board {
    public StationBoard {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        pans = List.copyOf(pans);
    }
}
