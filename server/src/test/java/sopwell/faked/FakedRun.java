package sopwell.faked;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import sopwell.crash.Guest;
import sopwell.crash.StandProcess;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;

/**
 * Puts the clock of a box while orders are placed and a screen looks on, and then holds the log
 * against a clock that never jumped. Belongs to one thread.
 */
final class FakedRun {
    private static final int TRIES = 6;
    private static final String ORDER = "{\"call\": \"beef dipped hot, fries\"}";

    private final Path data;
    private final FakeTime time;
    private final Guest guest = new Guest();
    private final List<Placed> placed = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();
    private int screenConnects;
    private long screenAwayMillis;
    private int told;

    /** An order, and when it was asked for and answered. */
    private record Placed(String order, int number, long fromNanos, long toNanos) {}

    /**
     * What a run came to.
     *
     * @param orders that were answered
     * @param told how often a screen was told the time
     * @param screenConnects how often the screen had to connect
     * @param screenAwayMillis the longest that it was away
     * @param noted how often the stand's log names a step
     * @param wrong what was not as it should be
     */
    record Result(
            int orders,
            int told,
            int screenConnects,
            long screenAwayMillis,
            long noted,
            List<String> wrong) {}

    FakedRun(Path data, FakeTime time) {
        this.data = data;
        this.time = time;
    }

    /** Puts the clock so far from the right one, one after another, each for so long. */
    Result run(List<Duration> offs, long eachMillis) throws IOException, InterruptedException {
        try (StandProcess stand = start()) {
            try (ClockScreen screen = new ClockScreen(stand.address())) {
                placeFor(stand.address(), eachMillis);
                for (Duration off : offs) {
                    time.put(off);
                    placeFor(stand.address(), eachMillis);
                }
                wrong.addAll(screen.wrong());
                screenConnects = screen.connects();
                screenAwayMillis = screen.awayMillisMax();
                told = screen.told();
            }
            stand.stop();
        }
        lookAtTheLog();
        return new Result(
                placed.size(), told, screenConnects, screenAwayMillis, noted(), List.copyOf(wrong));
    }

    /** The stand over this folder, on the box whose clock is put. */
    private StandProcess start() throws IOException {
        return StandProcess.start(data, List.of("--start-with", "menu"), time.environment());
    }

    /** Lines of the stand's log about steps. */
    private long noted() throws IOException {
        try (Stream<String> lines = Files.lines(data.resolveSibling(data.getFileName() + ".err"))) {
            return lines.filter(line -> line.contains(" clock-wrong offMillis=")).count();
        }
    }

    /** Everything in the log, in its order. */
    private List<Recorded> events() {
        List<Recorded> events = new ArrayList<>();
        try (DataFolder looked = DataFolder.look(data);
                SqliteLog log = looked.openLog("millrace")) {
            log.read(1, log.lastSeq(), events::add);
        }
        return events;
    }

    private void placeFor(String address, long millis) throws IOException, InterruptedException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        while (System.nanoTime() < until) {
            place(address);
            TimeUnit.MILLISECONDS.sleep(100);
        }
    }

    private void place(String address) throws IOException, InterruptedException {
        long from = System.nanoTime();
        Guest.Heard heard = insist(address, UUID.randomUUID().toString());
        if (heard.status() != 201) {
            wrong.add("not placed: " + heard);
            return;
        }
        JsonNode order = heard.body();
        placed.add(
                new Placed(
                        order.path("order").textValue(),
                        order.path("number").intValue(),
                        from,
                        System.nanoTime()));
    }

    /** A box under load may be slow with its first answer; the key makes asking again safe. */
    private Guest.Heard insist(String address, String key)
            throws IOException, InterruptedException {
        for (int tries = 1; tries < TRIES; tries++) {
            try {
                return guest.post(address, "/api/orders", key, ORDER);
            } catch (HttpTimeoutException slow) {
                Thread.onSpinWait();
            }
        }
        return guest.post(address, "/api/orders", key, ORDER);
    }

    private void lookAtTheLog() {
        List<Recorded> events = events();
        long last = 0;
        for (Recorded event : events) {
            if (event.atMs() < last) {
                wrong.add("event " + event.seq() + " is before the one before it");
            }
            last = event.atMs();
        }
        long days = events.stream().filter(e -> e.event() instanceof DayOpened).count();
        if (days != 1) {
            wrong.add(days + " days");
        }
        Set<String> ids = new HashSet<>();
        Set<Integer> numbers = new HashSet<>();
        List<Recorded> orders =
                events.stream().filter(e -> e.event() instanceof OrderPlaced).toList();
        if (orders.size() != placed.size()) {
            wrong.add(orders.size() + " in the log, " + placed.size() + " answered");
            return;
        }
        for (int i = 0; i < orders.size(); i++) {
            Placed one = placed.get(i);
            if (!ids.add(one.order()) || !numbers.add(one.number())) {
                wrong.add("given twice: " + one);
            }
            lookAtTheWait(orders.get(0).atMs(), orders.get(i).atMs(), one);
        }
    }

    /** The log's time since the first order, against the time that went by. */
    private void lookAtTheWait(long firstMs, long atMs, Placed one) {
        Placed first = placed.get(0);
        long least = TimeUnit.NANOSECONDS.toMillis(one.fromNanos() - first.toNanos());
        long most = TimeUnit.NANOSECONDS.toMillis(one.toNanos() - first.fromNanos());
        long was = atMs - firstMs;
        if (was < least - ClockScreen.OFF_MILLIS_MAX || was > most + ClockScreen.OFF_MILLIS_MAX) {
            wrong.add(one + " after " + was + " ms, not " + least + " to " + most);
        }
    }
}
