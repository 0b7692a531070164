package sopwell.web.live;

import jakarta.websocket.CloseReason;
import jakarta.websocket.CloseReason.CloseCodes;
import jakarta.websocket.Session;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import sopwell.Limits;
import sopwell.boards.Digits;
import sopwell.boards.OrderBoards;
import sopwell.boards.PassBoards;
import sopwell.boards.Places;
import sopwell.boards.Scene;
import sopwell.boards.StationBoards;
import sopwell.desk.Follower;
import sopwell.desk.Stand;

/**
 * Draws boards up when the stand has changed and sends them to their screens. Thread-safe.
 *
 * <p>Boards are drawn on the follower's thread, once per change for all screens together; texts are
 * written once per form and language. Whether a screen is still there is found out by pings, since
 * a half-open connection reports nothing by itself.
 */
public final class BoardHub implements AutoCloseable {
    /** The board of whole orders at the pass. */
    public static final String PASS = "pass";

    /** The guests' screen of numbers that are up. */
    public static final String READY = "ready";

    /** The board of open orders at the counter. */
    public static final String COUNTER = "counter";

    private static final Set<String> FIXED = Set.of(PASS, READY, COUNTER);

    private final Follower follower;
    private final String epoch;
    private final InstantSource clock;
    private final LongSupplier nanos;
    private final Map<String, LiveBoard> boards = new HashMap<>();
    private final Map<Session, Screen> screens = new ConcurrentHashMap<>();
    private final ScheduledExecutorService beats =
            Executors.newSingleThreadScheduledExecutor(task -> new Thread(task, "beats"));

    private final Rhythm rhythm;
    private Scene scene;
    private long sceneSeq;
    private final List<Future<?>> repeating;

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
        this.epoch = epoch;
        this.clock = clock;
        this.nanos = nanos;
        follower.watch(this::show);
        this.repeating =
                List.of(
                        every(rhythm.beatMillis(), this::beat),
                        every(rhythm.pingMillis(), this::pingAll));
    }

    /** The whole board as its screens see it, or an empty future when there is no such board. */
    public CompletableFuture<Optional<Frame>> board(String name) {
        return follower.ask(
                stand -> {
                    if (!isBoard(stand, name)) {
                        return Optional.empty();
                    }
                    publish(name, stand);
                    return Optional.of(live(name).whole(clock.millis()));
                });
    }

    /** Starts sending a board to a screen, beginning with the whole of it. */
    void join(Session session, String name, FrameWriter writer) {
        if (screens.size() >= Limits.SCREENS_MAX) {
            refuse(session, CloseCodes.TRY_AGAIN_LATER, "too many screens");
            return;
        }
        Screen screen = new Screen(session, name, writer, this::sendWhole, nanos.getAsLong());
        follower.tell(
                stand -> {
                    if (isBoard(stand, name)) {
                        welcome(stand, session, screen);
                    } else {
                        refuse(session, CloseCodes.VIOLATED_POLICY, "no such board");
                    }
                });
    }

    /**
     * The others get what has changed before this screen is on the list, and it is on the list
     * before it can answer: so the whole board is the first that it gets.
     */
    private void welcome(Stand stand, Session session, Screen screen) {
        publish(screen.board(), stand);
        screens.put(session, screen);
        sendWhole(stand, screen);
        if (!session.isOpen()) {
            screens.remove(session);
        }
    }

    void leave(Session session) {
        screens.remove(session);
    }

    /** The screen says that it missed something. */
    void sendWhole(Session session) {
        Screen screen = screens.get(session);
        if (screen != null) {
            sendWhole(screen);
        }
    }

    void heard(Session session) {
        Screen screen = screens.get(session);
        if (screen != null) {
            screen.heard(nanos.getAsLong());
        }
    }

    /** How many screens are connected. */
    public int screens() {
        return screens.size();
    }

    /** Tells every screen that the server is about to restart, so that it comes back by itself. */
    @Override
    public void close() {
        repeating.forEach(task -> task.cancel(false));
        beats.shutdown();
        screens.values().forEach(screen -> screen.close(CloseCodes.SERVICE_RESTART, "restarting"));
        screens.clear();
    }

    private void show(Stand stand) {
        Set<String> watched = ConcurrentHashMap.newKeySet();
        screens.values().forEach(screen -> watched.add(screen.board()));
        // A station may leave the menu while a screen still shows it.
        watched.removeIf(name -> !isBoard(stand, name));
        watched.forEach(name -> publish(name, stand));
    }

    /** Sends what has changed on a board to all its screens. */
    private void publish(String name, Stand stand) {
        Frame change = live(name).change(stand, clock.millis());
        if (change == null) {
            return;
        }
        Map<FrameWriter, String> texts = new HashMap<>();
        for (Screen screen : screens.values()) {
            if (screen.board().equals(name)) {
                screen.sendFrame(
                        texts.computeIfAbsent(screen.writer(), writer -> writer.write(change)));
            }
        }
    }

    /** However often a screen asks, one drawing at a time is under way for it. */
    private void sendWhole(Screen screen) {
        if (screen.wantsWhole()) {
            follower.tell(
                    stand -> {
                        screen.wholeComes();
                        sendWhole(stand, screen);
                    });
        }
    }

    private void sendWhole(Stand stand, Screen screen) {
        publish(screen.board(), stand);
        Frame whole = live(screen.board()).whole(clock.millis());
        screen.sendFrame(screen.writer().write(whole));
    }

    private LiveBoard live(String name) {
        return boards.computeIfAbsent(name, this::newBoard);
    }

    private LiveBoard newBoard(String name) {
        return switch (name) {
            case PASS -> {
                Digits<String> digits = new Digits<>();
                yield new LiveBoard(name, epoch, s -> PassBoards.pass(passSources(s), digits));
            }
            case READY ->
                    new LiveBoard(
                            name, epoch, s -> PassBoards.ready(s.orders(), s.kitchen(), s.pass()));
            case COUNTER ->
                    new LiveBoard(
                            name,
                            epoch,
                            s ->
                                    OrderBoards.counter(
                                            s.orders(),
                                            s.till(),
                                            s.kitchen(),
                                            s.outs(),
                                            s::menuOf));
            default -> {
                Places places = new Places();
                yield new LiveBoard(
                        name,
                        epoch,
                        s -> StationBoards.of(s.menu().station(name), scene(s), places));
            }
        };
    }

    /** One schedule for all boards that are drawn from the same events. */
    private Scene scene(Stand stand) {
        if (scene == null || sceneSeq != stand.seq()) {
            scene = Scene.of(stand.menu(), stand::menuOf, stand.kitchen(), clock.millis());
            sceneSeq = stand.seq();
        }
        return scene;
    }

    private static PassBoards.Sources passSources(Stand stand) {
        return new PassBoards.Sources(
                stand.orders(), stand.till(), stand.kitchen(), stand.pass(), stand::menuOf);
    }

    private static boolean isBoard(Stand stand, String name) {
        return FIXED.contains(name) || (stand.hasMenu() && stand.menu().hasStation(name));
    }

    private Future<?> every(long millis, Runnable task) {
        return beats.scheduleAtFixedRate(task, millis, millis, TimeUnit.MILLISECONDS);
    }

    private void beat() {
        long nowMs = clock.millis();
        follower.tell(
                stand -> {
                    Map<FrameWriter, String> texts = new HashMap<>();
                    screens.values()
                            .forEach(
                                    screen ->
                                            screen.sendBeat(
                                                    texts.computeIfAbsent(
                                                            screen.writer(),
                                                            w -> w.beat(stand.seq(), nowMs))));
                });
    }

    private void pingAll() {
        long now = nanos.getAsLong();
        screens.forEach(
                (session, screen) -> {
                    if (screen.silentNanos(now)
                            > TimeUnit.MILLISECONDS.toNanos(rhythm.pongMillisMax())) {
                        screens.remove(session);
                        screen.close(CloseCodes.GOING_AWAY, "not heard from");
                    } else {
                        screen.ping();
                    }
                });
    }

    private static void refuse(Session session, CloseReason.CloseCode code, String why) {
        try {
            session.close(new CloseReason(code, why));
        } catch (java.io.IOException | RuntimeException gone) {
            // It left by itself; either way it is not on the list.
            return;
        }
    }
}
