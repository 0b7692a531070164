package sopwell.web.live;

import java.util.List;
import sopwell.boards.Board;
import sopwell.boards.Row;

/**
 * What one frame tells a screen, before it is written as HTML or JSON. Immutable.
 *
 * @param name the board's name in its address: a station's id, {@code pass} or {@code counter}
 * @param epoch names this log; a restored backup has another
 * @param seq the log's place that the board shows
 * @param prev the place that the screen must be at for this frame to follow; 0 for a whole board
 * @param nowMs the server's clock, milliseconds since 1970-01-01 UTC
 * @param board the whole board as it is at {@code seq}
 * @param rows the rows to draw: all of them for a whole board, else those that are new or changed
 */
public record Frame(
        String name, String epoch, long seq, long prev, long nowMs, Board board, List<Row> rows) {
    public Frame {
        rows = List.copyOf(rows);
    }

    /** Whether the frame stands on its own. */
    public boolean isWhole() {
        return prev == 0;
    }
}
