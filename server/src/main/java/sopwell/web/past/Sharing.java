package sopwell.web.past;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.boards.Board;
import sopwell.boards.Column;
import sopwell.boards.PartRow;
import sopwell.boards.PassBoard;
import sopwell.boards.PassRow;
import sopwell.boards.Row;
import sopwell.boards.StationBoard;
import sopwell.boards.StationLoads;
import sopwell.stock.PanLeft;

/**
 * Lets boards that were drawn one after the other share what is equal, since a day has thousands of
 * them and each differs from the last by a row or two. Not thread-safe.
 */
final class Sharing {
    private final Map<String, Row> rows = new HashMap<>();
    private List<Column> columns = List.of();
    private Optional<StationLoads> loads = Optional.empty();
    private List<PanLeft> pans = List.of();

    /** An equal board that shares with those before. */
    Board of(Board board) {
        if (board instanceof StationBoard station) {
            columns = known(columns, station.columns());
            loads = known(loads, station.loads());
            pans = known(pans, station.pans());
            return new StationBoard(
                    station.station(),
                    station.name(),
                    station.builds(),
                    columns,
                    shared(PartRow.class, station.rows()),
                    station.below(),
                    station.quote(),
                    loads,
                    pans);
        }
        if (board instanceof PassBoard pass) {
            return new PassBoard(
                    shared(PassRow.class, pass.open()),
                    shared(PassRow.class, pass.whole()),
                    shared(PassRow.class, pass.handed()),
                    pass.below(),
                    pass.wholeBelow());
        }
        return board;
    }

    private <R extends Row> List<R> shared(Class<R> kind, List<R> fresh) {
        List<R> shared = new ArrayList<>(fresh.size());
        for (R row : fresh) {
            Row before = rows.get(row.rowId());
            shared.add(row.equals(before) ? kind.cast(before) : kept(row));
        }
        return shared;
    }

    private <R extends Row> R kept(R row) {
        rows.put(row.rowId(), row);
        return row;
    }

    private static <A> A known(A before, A now) {
        return before.equals(now) ? before : now;
    }
}
