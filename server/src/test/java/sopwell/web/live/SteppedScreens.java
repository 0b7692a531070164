package sopwell.web.live;

import jakarta.websocket.CloseReason;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.boards.Board;
import sopwell.boards.Row;
import sopwell.desk.Stand;

/**
 * The real boards and outboxes with screens at the other end whose lines are as slow as chance will
 * have it: a frame arrives at once, later, or with the screen's own mistake of passing it over.
 * Belongs to one thread.
 */
public final class SteppedScreens {
    private static final int SLOW_OF_TEN = 3;
    private static final int PASSED_OVER_OF_A_HUNDRED = 3;

    private final SplittableRandom random;
    private final Audience audience = new Audience();
    private final Showing showing;
    private final List<Looker> lookers = new ArrayList<>();
    private final Deque<Screen> missed = new ArrayDeque<>();
    private final List<Frame> written = new ArrayList<>();
    private final FrameWriter writer = this::write;
    private Stand stand;

    /** Nobody looks yet. */
    public SteppedScreens(SplittableRandom random, String epoch, InstantSource clock) {
        this.random = random;
        this.showing = new Showing(epoch, clock, audience);
    }

    /** What the screen at the other end knows, from its frames alone. */
    public static final class Looker implements Outlet {
        private final SteppedScreens all;
        private final String board;
        private final int place;
        private final List<Row> rows = new ArrayList<>();
        private Screen screen;
        private Frame underWay;
        private Done done;
        private long seq;
        private boolean passedOver;

        private Looker(SteppedScreens all, String board, int place) {
            this.all = all;
            this.board = board;
            this.place = place;
        }

        /** The board that it looks at. */
        public String board() {
            return board;
        }

        /** The rows in sight. */
        public List<Row> rows() {
            return List.copyOf(rows);
        }

        @Override
        public String id() {
            return "screen " + place;
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public void send(String text, Done whenLeft) {
            if (done != null) {
                throw new AssertionError("two frames under way to " + id());
            }
            underWay = all.written.get(Integer.parseInt(text));
            done = whenLeft;
        }

        @Override
        public void ping() {
            throw new AssertionError("nobody asks here");
        }

        @Override
        public void close(CloseReason.CloseCode code, String why) {
            throw new AssertionError("closed: " + why);
        }

        private boolean isBusy() {
            return done != null;
        }

        private void arrive(boolean passesOver) {
            Frame frame = underWay;
            Done left = done;
            done = null;
            left.left(true);
            if (passesOver) {
                passedOver = true;
            } else {
                take(frame);
            }
        }

        /** As the page does: a frame that does not follow, or lacks a row, asks for the whole. */
        private void take(Frame frame) {
            List<Row> wanted = new ArrayList<>();
            for (Row row : frame.board().rows()) {
                String id = row.rowId();
                find(frame.rows(), id).or(() -> find(rows, id)).ifPresent(wanted::add);
            }
            boolean follows = frame.isWhole() || frame.prev() == seq;
            if (!follows || wanted.size() < frame.board().rows().size()) {
                all.ask(screen);
                return;
            }
            rows.clear();
            rows.addAll(wanted);
            passedOver = false;
            seq = frame.seq();
        }

        private static java.util.Optional<Row> find(List<Row> rows, String id) {
            return rows.stream().filter(row -> row.rowId().equals(id)).findFirst();
        }
    }

    /** A screen joins. */
    public Looker join(Stand shown, String board) {
        stand = shown;
        Looker looker = new Looker(this, board, lookers.size());
        looker.screen =
                new Screen(looker, board, writer, new Screen.Ear(this::ask, new FrameCounts()), 0);
        lookers.add(looker);
        showing.welcome(stand, looker.screen);
        return looker;
    }

    /** Shows what has changed; some of it arrives. */
    public void show(Stand shown) {
        stand = shown;
        showing.show(stand);
        for (Looker looker : lookers) {
            if (looker.isBusy() && random.nextInt(10) >= SLOW_OF_TEN) {
                looker.arrive(random.nextInt(100) < PASSED_OVER_OF_A_HUNDRED);
            }
        }
        drawMissed();
    }

    /** Waits until everything has arrived, and has those ask who passed a frame over. */
    public void settle() {
        lookers.stream().filter(looker -> looker.passedOver).forEach(l -> ask(l.screen));
        boolean moved = true;
        while (moved) {
            moved = false;
            for (Looker looker : lookers) {
                if (looker.isBusy()) {
                    looker.arrive(false);
                    moved = true;
                }
            }
            moved |= drawMissed();
        }
    }

    /** Everyone who looks. */
    public List<Looker> lookers() {
        return List.copyOf(lookers);
    }

    /** The true board. */
    public Board board(Stand shown, String name) {
        return showing.whole(shown, name).board();
    }

    /** Whether there is such a board now. */
    public static boolean isBoard(Stand shown, String name) {
        return Drawing.isBoard(shown, name);
    }

    private void ask(Screen screen) {
        if (screen.wantsWhole()) {
            missed.add(screen);
        }
    }

    private boolean drawMissed() {
        boolean some = !missed.isEmpty();
        while (!missed.isEmpty()) {
            showing.sendMissed(stand, missed.remove());
        }
        return some;
    }

    private String write(Frame frame) {
        written.add(frame);
        return Integer.toString(written.size() - 1);
    }
}
