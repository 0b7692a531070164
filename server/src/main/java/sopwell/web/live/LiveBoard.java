package sopwell.web.live;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import sopwell.Check;
import sopwell.boards.Board;
import sopwell.boards.Row;
import sopwell.desk.Stand;

/**
 * One board as it was last shown, and what has changed since. Belongs to the follower's thread.
 *
 * <p>All screens of a board see the same sequence of frames, so one number per board tells a screen
 * whether it missed any.
 */
final class LiveBoard {
    private final String name;
    private final String epoch;
    private final Function<Stand, Board> draw;
    private final Map<String, Row> shown = new HashMap<>();
    private Board board;
    private long shownSeq;
    private long lookedAtSeq = -1;

    /**
     * A board that was not drawn yet.
     *
     * @param draw draws the board up; may keep what it needs from one drawing to the next
     */
    LiveBoard(String name, String epoch, Function<Stand, Board> draw) {
        this.name = name;
        this.epoch = epoch;
        this.draw = draw;
    }

    /** The change since the last frame, or null when there is none to be seen. */
    Frame change(Stand stand, long nowMs) {
        if (lookedAtSeq == stand.seq()) {
            return null;
        }
        lookedAtSeq = stand.seq();
        Board drawn = draw.apply(stand);
        if (drawn.equals(board)) {
            return null;
        }
        List<Row> changed =
                drawn.rows().stream()
                        .filter(row -> !row.equals(shown.get(row.rowId())))
                        .map(row -> (Row) row)
                        .toList();
        long prev = shownSeq;
        board = drawn;
        shownSeq = stand.seq();
        shown.clear();
        drawn.rows().forEach(row -> shown.put(row.rowId(), row));
        return new Frame(name, epoch, shownSeq, prev, nowMs, drawn, changed);
    }

    /** The whole board as all its screens see it; drawn before. */
    Frame whole(long nowMs) {
        Check.that(board != null, "a board is drawn before it is sent");
        return new Frame(name, epoch, shownSeq, 0, nowMs, board, List.copyOf(board.rows()));
    }
}
