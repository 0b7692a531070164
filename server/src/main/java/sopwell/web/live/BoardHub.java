package sopwell.web.live;

import jakarta.websocket.CloseReason.CloseCodes;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import sopwell.Limits;
import sopwell.desk.Follower;
import sopwell.desk.Stand;

/**
 * Draws boards up when the stand has changed and sends them to their screens. Thread-safe.
 *
 * <p>Boards are drawn on the follower's thread, once per change for all screens together; texts are
 * written once per form and language. Whether a screen is still there is found out by pings, since
 * a half-open connection reports nothing by itself. Pings and signs of life leave on a thread of
 * their own, some screens at a time.
 */
public final class BoardHub implements AutoCloseable {
    /** The board of whole orders at the pass. */
    public static final String PASS = "pass";

    /** The guests' screen of numbers that are up. */
    public static final String READY = "ready";

    /** The board of open orders at the counter. */
    public static final String COUNTER = "counter";

    private final Follower follower;
    private final InstantSource clock;
    private final LongSupplier nanos;
    private final Audience audience = new Audience();
    private final FrameCounts counts = new FrameCounts();
    private final Screen.Ear ear = new Screen.Ear(this::sendWhole, counts);
    private final Showing showing;
    private final ScheduledExecutorService beats =
            Executors.newSingleThreadScheduledExecutor(task -> new Thread(task, "beats"));

    private final Rhythm rhythm;
    private final List<Future<?>> repeating;
    private volatile long shownSeq;
    private volatile Seeing seeing = (seenEpoch, seq) -> {};
    private long beatTurn;
    private long pingTurn;

    /**
     * A hub without screens, in the usual rhythm.
     *
     * @param nanos a clock that never jumps, in nanoseconds
     */
    public BoardHub(Follower follower, String epoch, InstantSource clock, LongSupplier nanos) {
        this(follower, epoch, clock, nanos, Rhythm.usual());
    }

    /** A hub without screens, in a rhythm of its own. */
    public BoardHub(
            Follower follower,
            String epoch,
            InstantSource clock,
            LongSupplier nanos,
            Rhythm rhythm) {
        this.follower = follower;
        this.rhythm = rhythm;
        this.showing = new Showing(epoch, clock, audience);
        this.clock = clock;
        this.nanos = nanos;
        follower.watch(this::show);
        this.repeating =
                List.of(
                        every(rhythm.beatMillis(), this::beatSome),
                        every(rhythm.pingMillis(), this::pingSome));
    }

    /** Who is told what screens say that they saw before they came. */
    @FunctionalInterface
    public interface Seeing {
        /** A screen saw this place of the log with this name. */
        void saw(String epoch, long seq);
    }

    /** From now on tells somebody what screens saw last, before they came. */
    public void tellSeen(Seeing told) {
        seeing = told;
    }

    /** The whole board as its screens see it, or an empty future when there is no such board. */
    public CompletableFuture<Optional<Frame>> board(String name) {
        return follower.ask(
                stand -> {
                    if (!Drawing.isBoard(stand, name)) {
                        return Optional.empty();
                    }
                    return Optional.of(showing.whole(stand, name));
                });
    }

    /** Starts sending a board to a screen, beginning with the whole of it. */
    void join(Outlet outlet, String name, FrameWriter writer) {
        if (audience.size() >= Limits.SCREENS_MAX) {
            counts.countTooMany();
            outlet.close(CloseCodes.TRY_AGAIN_LATER, "too many screens");
            return;
        }
        Screen screen = new Screen(outlet, name, writer, ear, nanos.getAsLong());
        follower.tell(
                stand -> {
                    if (Drawing.isBoard(stand, name)) {
                        shownSeq = stand.seq();
                        showing.welcome(stand, screen);
                    } else {
                        outlet.close(CloseCodes.VIOLATED_POLICY, "no such board");
                    }
                });
    }

    void saw(Cursor cursor) {
        seeing.saw(cursor.epoch(), cursor.seq());
    }

    void leave(Outlet outlet) {
        audience.remove(outlet);
    }

    /** The screen says that it missed something. */
    void sendWhole(Outlet outlet) {
        audience.find(outlet).ifPresent(this::sendWhole);
    }

    void heard(Outlet outlet) {
        audience.find(outlet).ifPresent(screen -> screen.heard(nanos.getAsLong()));
    }

    /** A clock that never jumps. */
    LongSupplier nanos() {
        return nanos;
    }

    /** How many screens are connected. */
    public int screens() {
        return audience.size();
    }

    /** How many screens look at each board. */
    public Map<String, Integer> screensByBoard() {
        return audience.sizes();
    }

    /** What became of frames so far. */
    public FrameCounts counts() {
        return counts;
    }

    /** Tells every screen that the server is about to restart, so that it comes back by itself. */
    @Override
    public void close() {
        repeating.forEach(task -> task.cancel(false));
        List<Screen> told = List.copyOf(audience.all());
        for (Screen screen : told) {
            audience.remove(screen.outlet());
            screen.close(CloseCodes.SERVICE_RESTART, "restarting");
        }
        awaitGone(told);
        beats.shutdown();
    }

    /** What was said last must have left, and have been heard, before the connection is ended. */
    private void awaitGone(List<Screen> told) {
        CountDownLatch open = new CountDownLatch(told.isEmpty() ? 0 : 1);
        Future<?> look =
                beats.scheduleWithFixedDelay(
                        () -> {
                            if (told.stream().noneMatch(screen -> screen.outlet().isOpen())) {
                                open.countDown();
                            }
                        },
                        0,
                        Limits.GOODBYE_LOOK_MILLIS,
                        TimeUnit.MILLISECONDS);
        try {
            boolean heard = open.await(Limits.GOODBYE_MILLIS_MAX, TimeUnit.MILLISECONDS);
            look.cancel(!heard);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void show(Stand stand) {
        showing.show(stand);
        shownSeq = stand.seq();
    }

    /** However often a screen asks, one drawing at a time is under way for it. */
    private void sendWhole(Screen screen) {
        if (screen.wantsWhole()) {
            follower.tell(stand -> showing.sendMissed(stand, screen));
        }
    }

    /** Each screen has its turn once in so many milliseconds. */
    private Future<?> every(long millis, Runnable task) {
        long micros = TimeUnit.MILLISECONDS.toMicros(millis) / Audience.TURNS;
        return beats.scheduleAtFixedRate(task, micros, micros, TimeUnit.MICROSECONDS);
    }

    private void beatSome() {
        long nowMs = clock.millis();
        long seq = shownSeq;
        Map<FrameWriter, String> texts = new HashMap<>();
        for (Screen screen : audience.turn(beatTurn++)) {
            screen.sendBeat(texts.computeIfAbsent(screen.writer(), w -> w.beat(seq, nowMs)));
        }
    }

    private void pingSome() {
        long now = nanos.getAsLong();
        for (Screen screen : audience.turn(pingTurn++)) {
            if (!screen.outlet().mayStay()) {
                audience.remove(screen.outlet());
                screen.close(CloseCodes.VIOLATED_POLICY, "no longer signed in");
            } else if (screen.silentNanos(now)
                    > TimeUnit.MILLISECONDS.toNanos(rhythm.pongMillisMax())) {
                audience.remove(screen.outlet());
                counts.countSilent();
                screen.close(CloseCodes.GOING_AWAY, "not heard from");
            } else {
                screen.ping();
            }
        }
    }
}
