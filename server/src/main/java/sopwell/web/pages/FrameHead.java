package sopwell.web.pages;

import java.util.stream.Collectors;
import sopwell.boards.Row;
import sopwell.boards.StationBoard;
import sopwell.web.live.Frame;

/**
 * What every drawing of a board carries, so that the screen knows where it stands. Immutable.
 *
 * @param order the ids of all rows in their order, parted by spaces
 * @param columns the ids of the columns; a screen with others must be drawn anew
 */
public record FrameHead(
        String name, String epoch, long seq, long prev, long nowMs, String order, String columns) {
    static FrameHead of(Frame frame) {
        String order =
                frame.board().rows().stream().map(Row::rowId).collect(Collectors.joining(" "));
        String columns = "";
        if (frame.board() instanceof StationBoard board) {
            columns = board.columns().stream().map(c -> c.step()).collect(Collectors.joining(" "));
        }
        return new FrameHead(
                frame.name(),
                frame.epoch(),
                frame.seq(),
                frame.prev(),
                frame.nowMs(),
                order,
                columns);
    }
}
