package sopwell.web.past;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sopwell.boards.Board;
import sopwell.boards.Row;
import sopwell.boards.Scene;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.orders.StandSettings;
import sopwell.web.live.Drawing;
import sopwell.web.live.Frame;

/**
 * One board of one day, drawn at every event as a screen saw it that was on all day: where a row
 * stands depends on all that came before. What was drawn is kept, so that any moment of it is found
 * at once. Not thread-safe: its owner is one thread.
 */
final class Reel {
    private final EventLog log;
    private final String name;
    private final Stand stand;
    private final Function<Stand, Board> draw;
    private final List<Shot> shots = new ArrayList<>();
    private final Sharing sharing = new Sharing();
    private long nextSeq;
    private long reachedMs = Long.MIN_VALUE;

    /** What the board showed from a moment on; nothing while there was no such board. */
    private record Shot(long atMs, long seq, Optional<Shown> shown) {}

    private record Shown(Board board, Menu menu) {}

    /** A board of a day of which nothing is drawn yet. */
    Reel(EventLog log, StandSettings settings, long fromSeq, String name) {
        this.log = log;
        this.name = name;
        this.stand = Replay.before(log, settings, fromSeq);
        this.draw = Drawing.of(name, Reel::scene);
        this.nextSeq = fromSeq;
    }

    private static Scene scene(Stand stand) {
        return Scene.of(stand.menu(), stand::menuOf, stand.kitchen(), stand.pans(), stand.atMs());
    }

    /** Draws the next events, up to a place or so many. */
    void advance(long toSeq, int events) {
        long until = Math.min(toSeq, nextSeq + events - 1);
        if (until >= nextSeq) {
            log.read(nextSeq, until, this::step);
            nextSeq = until + 1;
        }
    }

    /** Whether everything that happened up to a moment, or to the day's last place, is drawn. */
    boolean reaches(long atMs, long toSeq) {
        return reachedMs > atMs || nextSeq > toSeq;
    }

    /** The board at a moment that was reached; empty when there was no such board then. */
    Optional<Picture> at(long atMs) {
        int low = 0;
        int high = shots.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (shots.get(middle).atMs() <= atMs) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? Optional.empty() : picture(shots.get(low - 1), atMs);
    }

    private Optional<Picture> picture(Shot shot, long atMs) {
        return shot.shown().map(shown -> new Picture(frame(shot, shown, atMs), shown.menu()));
    }

    private Frame frame(Shot shot, Shown shown, long atMs) {
        List<Row> rows = List.copyOf(shown.board().rows());
        return new Frame(name, log.epoch(), shot.seq(), 0, atMs, shown.board(), rows);
    }

    private void step(Recorded recorded) {
        stand.apply(recorded);
        reachedMs = recorded.atMs();
        Optional<Shown> shown = Optional.empty();
        if (stand.hasMenu() && Drawing.isBoard(stand, name)) {
            shown = Optional.of(new Shown(sharing.of(draw.apply(stand)), stand.menu()));
        }
        if (shots.isEmpty() || !shots.get(shots.size() - 1).shown().equals(shown)) {
            shots.add(new Shot(recorded.atMs(), recorded.seq(), shown));
        }
    }
}
