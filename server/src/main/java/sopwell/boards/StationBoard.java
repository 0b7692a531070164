package sopwell.boards;

import java.util.List;
import sopwell.menu.LocalText;

/**
 * What a station's screen shows, oldest first. Immutable.
 *
 * @param station the station's id
 * @param builds whether it is a build board with columns in assembly order, or a plain list
 * @param columns in assembly order
 * @param below rows that did not fit
 */
public record StationBoard(
        String station,
        LocalText name,
        boolean builds,
        List<Column> columns,
        List<PartRow> rows,
        int below)
        implements Board {
    public StationBoard {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
