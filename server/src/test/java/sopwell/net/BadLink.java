package sopwell.net;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/**
 * A link between screens and a server, which can be made as bad as networks get. It listens on a
 * port of this machine alone. Thread-safe.
 */
public final class BadLink implements AutoCloseable {
    private static final int HOLD_MILLIS_MAX = 400;
    private static final int SMALL_BUFFER_BYTES = 4_096;

    private final ServerSocket end = new ServerSocket(0, 200, InetAddress.getLoopbackAddress());
    private final Set<Wire> wires = ConcurrentHashMap.newKeySet();
    private final SplittableRandom random;
    private final AtomicLong laid = new AtomicLong();
    private volatile InetSocketAddress server;
    private volatile Weather weather = Weather.fair();
    private volatile Cut cut;
    private volatile boolean swallows;
    private volatile Supplier<Fate> fates = () -> Fate.PASS;

    /** A link to a port of this machine. */
    public BadLink(int server) throws IOException {
        this(new InetSocketAddress(InetAddress.getLoopbackAddress(), server), 1);
    }

    /**
     * A link to a server.
     *
     * @param seed of what is left to chance
     */
    public BadLink(InetSocketAddress server, long seed) throws IOException {
        this.server = server;
        this.random = new SplittableRandom(seed);
        start(this::accept, "link");
    }

    /** Where the screens go in, such as {@code http://127.0.0.1:40123}. */
    public String address() {
        return "http://127.0.0.1:" + port();
    }

    /** The port that the screens go in at. */
    public int port() {
        return end.getLocalPort();
    }

    /** Another server at the far end, for connections from now on. */
    public void lead(int to) {
        server = new InetSocketAddress(InetAddress.getLoopbackAddress(), to);
    }

    /** How it carries from now on what it carries; new connections alone can be choked. */
    public void weather(Weather now) {
        weather = now;
    }

    /** Decides of each connection from now on. */
    public void fates(Supplier<Fate> decided) {
        fates = decided;
    }

    /** From now on requests arrive and no answer comes back, without a word. */
    public void swallowAnswers() {
        swallows = true;
    }

    /** Cuts it. */
    public void cut(Cut kind) {
        cut = kind;
        if (kind == Cut.RESET || kind == Cut.FIN) {
            wires.forEach(wire -> wire.end(kind));
        } else if (kind == Cut.SILENT) {
            wires.forEach(Wire::die);
        }
    }

    /**
     * It carries again; what hung in it silently goes on hanging there, and what was held goes on.
     */
    public void heal() {
        swallows = false;
        cut = null;
        wires.forEach(Wire::wake);
    }

    /** It carries again, and what hung in it breaks off. */
    public void healAndBreakOff() {
        heal();
        wires.forEach(wire -> wire.end(Cut.FIN));
    }

    /** Connections that were made through it so far. */
    public long laid() {
        return laid.get();
    }

    @Override
    public void close() throws IOException {
        end.close();
        wires.forEach(wire -> wire.end(Cut.FIN));
    }

    boolean isHeld() {
        return cut == Cut.HELD;
    }

    boolean swallowsAnswers() {
        return swallows;
    }

    Weather weather() {
        return weather;
    }

    synchronized int chance(int below) {
        return random.nextInt(below);
    }

    void gone(Wire wire) {
        wires.remove(wire);
    }

    static void start(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        try {
            while (true) {
                Socket screen = end.accept();
                laid.incrementAndGet();
                start(() -> lay(screen), "link wire");
            }
        } catch (IOException closed) {
            wires.forEach(wire -> wire.end(Cut.FIN));
        }
    }

    private void lay(Socket screen) {
        Fate fate = fates.get();
        Wire wire = new Wire(this, screen);
        wires.add(wire);
        Cut now = cut;
        try {
            if (now == Cut.RESET || now == Cut.FIN) {
                wire.end(now);
            } else if (now == Cut.SILENT) {
                wire.die();
                wire.listenForNothing();
            } else {
                if (fate == Fate.HOLD) {
                    pause(chance(HOLD_MILLIS_MAX));
                }
                wire.carry(far(), fate == Fate.DOUBLE ? far() : null, fate == Fate.SWALLOW);
            }
        } catch (IOException nobodyThere) {
            wire.end(Cut.RESET);
        }
    }

    private Socket far() throws IOException {
        Socket far = new Socket();
        if (weather.bytesPerSecond() > 0) {
            far.setReceiveBufferSize(SMALL_BUFFER_BYTES);
        }
        far.connect(server, 5_000);
        far.setTcpNoDelay(true);
        return far;
    }

    static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
