package sopwell.crash;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpTimeoutException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import sopwell.TestStand;
import sopwell.crash.Guest.Heard;
import sopwell.crash.History.Named;
import sopwell.crash.History.Sent;
import sopwell.desk.DiskGuard;

/**
 * Fills a small disk with orders until one is refused, makes the disk larger, and waits until the
 * refused one is taken; again and again, over one stand that is never started anew. In the end
 * everything that was answered must be there, once.
 */
final class FullDiskRun {
    /** Room that each round begins with: some dozen orders beside what the log needs meanwhile. */
    private static final long ROOM_BYTES = 400_000;

    private static final int ORDERS_MAX = 4_000;
    private static final long BACK_MILLIS_MAX = 10_000;
    private static final int LATER = 503;

    /** A look at the disk may come between two of these, and for a moment it seems well again. */
    private static final int TRIES = 12;

    private static final int PAUSE_MILLIS = 50;
    private static final String CALL = "{\"call\": \"2 beef dipped hot, fries\"}";

    private final SmallDisk disk;
    private final DiskGuard.Terms terms;
    private final Guest guest = new Guest();
    private final History history = new History();
    private final Set<String> codes = new TreeSet<>();
    private final Set<String> states = new TreeSet<>();
    private long slowestBackMillis;
    private int made;

    /**
     * What a run came to.
     *
     * @param sendings of orders, those that were refused too
     * @param codes by which they were refused
     * @param states of the disk while they were
     * @param slowestBackMillis from more room to the first order taken
     */
    record Result(
            int rounds,
            int orders,
            int sendings,
            Set<String> codes,
            Set<String> states,
            long slowestBackMillis) {}

    /**
     * A run to be.
     *
     * @param reserveBytes below which the stand refuses; 0 to write until the disk does
     */
    FullDiskRun(SmallDisk disk, long reserveBytes) {
        this.disk = disk;
        this.terms =
                new DiskGuard.Terms(Long.MAX_VALUE, reserveBytes, 3, TimeUnit.MINUTES.toNanos(1));
    }

    /**
     * Runs and checks.
     *
     * @throws AssertionError with what is not as it was answered
     */
    Result run(int rounds) throws IOException, InterruptedException {
        Path data = disk.folder().resolve("stand");
        DemoFolder.make(data);
        try (TestStand stand = TestStand.start(data, terms)) {
            String address = stand.address();
            for (int round = 0; round < rounds; round++) {
                disk.resize(disk.usedBytes() + terms.reserveBytes() + ROOM_BYTES);
                String refused = fill(address);
                disk.resize(disk.usedBytes() + terms.reserveBytes() + 2 * ROOM_BYTES);
                long fromNanos = System.nanoTime();
                while (place(address, refused).status() == LATER) {
                    that(millisSince(fromNanos) < BACK_MILLIS_MAX, "still refused: " + refused);
                    Thread.sleep(PAUSE_MILLIS);
                }
                slowestBackMillis = Math.max(slowestBackMillis, millisSince(fromNanos));
                String state = health(address).get("disk").get("state").textValue();
                that(state.equals("low"), "taken, and the disk is " + state);
            }
            List<String> wrong = history.wrong(left(address));
            that(wrong.isEmpty(), wrong.toString());
        }
        int orders = history.orders().size();
        return new Result(rounds, orders, history.sendings(), codes, states, slowestBackMillis);
    }

    /** Places orders until one is refused, and sends that a few times more; its key. */
    private String fill(String address) throws IOException, InterruptedException {
        for (int i = 0; i < ORDERS_MAX; i++) {
            String key = "order-" + made++;
            Heard heard = place(address, key);
            if (heard.status() == LATER) {
                for (int again = 0; again < TRIES && heard.status() == LATER; again++) {
                    refused(heard);
                    heard = place(address, key);
                }
                that(heard.status() == LATER, "taken although nothing is free");
                String state = health(address).get("disk").get("state").textValue();
                states.add(state);
                return key;
            }
        }
        throw new AssertionError(ORDERS_MAX + " orders did not fill " + ROOM_BYTES + " bytes");
    }

    private void refused(Heard heard) {
        codes.add(heard.body().get("code").textValue());
        that(heard.body().get("detail").textValue().length() > 20, "no sentence: " + heard);
    }

    /** Places an order; one that is not answered is sent again under its key. */
    private Heard place(String address, String key) throws IOException, InterruptedException {
        for (int silent = 0; silent < TRIES; silent++) {
            long fromNanos = System.nanoTime();
            try {
                Heard heard = guest.post(address, "/api/orders", key, CALL);
                that(heard.isDone() || heard.status() == LATER, "answered " + heard);
                Named order = heard.isDone() ? named(heard.body()) : null;
                history.add(new Sent(fromNanos, System.nanoTime(), key, heard.status(), order));
                return heard;
            } catch (HttpTimeoutException late) {
                history.add(new Sent(fromNanos, System.nanoTime(), key, 0, null));
            }
        }
        throw new AssertionError("not answered: " + key);
    }

    private static Named named(JsonNode order) {
        return new Named(order.get("order").textValue(), order.get("number").intValue());
    }

    private JsonNode health(String address) throws IOException, InterruptedException {
        return guest.get(address, "/healthz").body();
    }

    /** Every order that there is: each that was answered, and as many as the stand counts. */
    private Map<String, Integer> left(String address) throws IOException, InterruptedException {
        Map<String, Integer> left = new HashMap<>();
        for (String id : new ArrayList<>(history.orders())) {
            Heard heard = guest.get(address, "/api/orders/" + id);
            if (heard.status() == 200) {
                left.put(id, heard.body().get("number").intValue());
            }
        }
        JsonNode all = guest.get(address, "/api/orders").body();
        that(all.get("of").intValue() == left.size(), "there are " + all.get("of") + " orders");
        return left;
    }

    private static long millisSince(long nanos) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - nanos);
    }

    private static void that(boolean holds, String sentence) {
        if (!holds) {
            throw new AssertionError(sentence);
        }
    }
}
