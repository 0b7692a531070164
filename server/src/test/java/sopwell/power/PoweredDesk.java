package sopwell.power;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import sopwell.desk.Answer;
import sopwell.desk.DiskGuard;
import sopwell.desk.DiskState;
import sopwell.desk.Script;
import sopwell.desk.StandCommand;
import sopwell.desk.SteppedDesk;
import sopwell.desk.SteppedDesk.Asking;
import sopwell.log.EventLog;
import sopwell.log.LogFault;
import sopwell.orders.OrderCommand;
import sopwell.storage.DataFolder;
import sopwell.storage.LooseLog;

/**
 * A process that takes orders at the real desk over the real log and writes down, into the file
 * {@code acks} beside the log, what it would have answered: {@code PoweredDesk FOLDER ORDERS SEED
 * full|normal}. It is stopped and started once on the way. What fails is asked again under its key
 * until it is kept.
 */
public final class PoweredDesk {
    private static final String[] CALLS = {
        "2 beef dipped hot, fries", "beef dry sweet", "combo dipped both, cola", "3 fries"
    };
    private static final int BATCH_MAX = 3;
    private static final int CHECKED_EVENTS = 1_000;
    private static final long FIRST_MS = 1_768_413_600_000L;
    private static final int TRIES_MAX = 50;
    private static final int FAILURES_MAX = 3;

    private final Path data;
    private final SplittableRandom random;
    private final boolean full;
    private final Script script = new Script();
    private final DiskGuard guard =
            new DiskGuard(
                    () -> Long.MAX_VALUE,
                    new DiskGuard.Terms(0, 0, FAILURES_MAX, TimeUnit.MINUTES.toNanos(1)),
                    System::nanoTime);
    private final FileChannel acks;
    private final Set<String> why = new HashSet<>();
    private int made;

    private PoweredDesk(Path data, long seed, boolean full) throws IOException {
        this.data = data;
        this.random = new SplittableRandom(seed);
        this.full = full;
        this.acks =
                FileChannel.open(
                        data.resolve("acks"),
                        StandardOpenOption.CREATE,
                        StandardOpenOption.WRITE,
                        StandardOpenOption.APPEND);
    }

    /** Ends with an error when an order was not kept however often it was asked again. */
    public static void main(String[] args) throws IOException {
        int orders = Integer.parseInt(args[1]);
        PoweredDesk desk =
                new PoweredDesk(Path.of(args[0]), Long.parseLong(args[2]), args[3].equals("full"));
        desk.started(orders * 3 / 4);
        desk.started(orders);
    }

    /** A start that the disk does not let happen is tried again, as a service would. */
    private void started(int until) throws IOException {
        for (int i = 1; i < TRIES_MAX; i++) {
            try {
                work(until);
                return;
            } catch (LogFault notStarted) {
                if (why.add(notStarted.getMessage())) {
                    System.err.println("started again: " + notStarted.getMessage());
                }
            }
        }
        work(until);
    }

    private void work(int until) throws IOException {
        try (DataFolder folder = DataFolder.open(data);
                EventLog log =
                        full
                                ? folder.openLog(Script.SETTINGS.stand())
                                : LooseLog.open(folder, Script.SETTINGS.stand())) {
            SteppedDesk desk =
                    new SteppedDesk(
                            log,
                            Script.SETTINGS,
                            () -> java.time.Instant.ofEpochMilli(nowMs()),
                            guard);
            folder.checkOf(Script.SETTINGS.stand()).newest(log.lastSeq(), CHECKED_EVENTS);
            ask(
                    new Writing(desk, log),
                    List.of(new Asking("menu", "menu", new StandCommand.AdoptMenu(script.menu()))));
            while (made < until) {
                List<Asking> batch = new ArrayList<>();
                int size = Math.min(until - made, 1 + random.nextInt(BATCH_MAX));
                for (int i = 0; i < size; i++) {
                    String call = CALLS[random.nextInt(CALLS.length)];
                    OrderCommand place = new OrderCommand.Place("", true, script.asked(call));
                    batch.add(new Asking("k" + made++, call, new StandCommand.ForOrders(place)));
                }
                ask(new Writing(desk, log), batch);
            }
        }
    }

    /** A desk and what it writes to. */
    private record Writing(SteppedDesk desk, EventLog log) {}

    private long nowMs() {
        return FIRST_MS + made * 1_000L;
    }

    /** Asks until everything is answered, and writes each answer down once it is known. */
    private void ask(Writing to, List<Asking> batch) throws IOException {
        List<Asking> left = batch;
        for (int i = 0; i < TRIES_MAX && !left.isEmpty(); i++) {
            awaitWriting(to.log());
            List<CompletableFuture<Answer>> answers = to.desk().run(left);
            List<Asking> failed = new ArrayList<>();
            for (int at = 0; at < left.size(); at++) {
                if (answers.get(at).isCompletedExceptionally()) {
                    failed.add(left.get(at));
                } else {
                    acknowledge(left.get(at).key(), answers.get(at).join());
                }
            }
            left = failed;
        }
        if (!left.isEmpty()) {
            throw new IllegalStateException("not kept: " + left);
        }
    }

    /** While the stand only reads, nothing is asked; each look at the disk is noted. */
    private void awaitWriting(EventLog log) throws IOException {
        for (int i = 0; i < TRIES_MAX && isReadingOnly(); i++) {
            Files.writeString(
                    looks(data), ".", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            guard.look(log::probe);
        }
        if (isReadingOnly()) {
            throw new IllegalStateException("the disk did not get well");
        }
    }

    private boolean isReadingOnly() {
        return guard.state().kind() == DiskState.Kind.READING_ONLY;
    }

    /** Where the looks at the disk are noted: beside the folder, so that they never fail. */
    static Path looks(Path data) {
        return data.resolveSibling(data.getFileName() + ".looks");
    }

    private void acknowledge(String key, Answer answer) throws IOException {
        if (answer.events().isEmpty()) {
            return; // The menu in force was adopted already.
        }
        long first = answer.events().get(0).seq();
        String line = key + " " + first + " " + answer.events().size() + "\n";
        acks.write(ByteBuffer.wrap(line.getBytes(StandardCharsets.US_ASCII)));
    }
}
