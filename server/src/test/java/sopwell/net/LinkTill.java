package sopwell.net;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/**
 * A till over a bad link: it places one order after another, each under its key until it has an
 * answer, in order. Thread-safe.
 */
final class LinkTill implements AutoCloseable {
    private static final int BETWEEN_MILLIS = 700;

    private final Api api;
    private final String name;
    private final Thread thread;
    private final Map<String, String> orders = new TreeMap<>();
    private final List<String> refused = new ArrayList<>();
    private volatile boolean over;
    private volatile boolean resting = true;
    private volatile boolean waiting;
    private int taken;

    LinkTill(Api api, String name) {
        this.api = api;
        this.name = name;
        this.thread = new Thread(this::work, "till " + name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Takes no more orders, or takes them again. What waits is sent all the same. */
    void rest(boolean now) {
        resting = now;
    }

    /** Whether an order waits for its answer. */
    boolean isWaiting() {
        return waiting;
    }

    /** The orders that were answered, by the name that stands on each. */
    synchronized Map<String, String> orders() {
        return Map.copyOf(orders);
    }

    /** What was refused, which nothing should be. */
    synchronized List<String> refused() {
        return List.copyOf(refused);
    }

    @Override
    public void close() {
        over = true;
        thread.interrupt();
    }

    private void work() {
        while (!over) {
            if (!resting) {
                waiting = true;
                place(name + " " + ++taken);
                waiting = false;
            }
            BadLink.pause(BETWEEN_MILLIS);
        }
    }

    private void place(String guest) {
        String key = UUID.randomUUID().toString();
        String json = "{\"call\": \"cola\", \"name\": \"" + guest + "\"}";
        while (!over) {
            Optional<Api.Heard> heard = api.tryPost("/api/orders", key, json);
            if (heard.isPresent()) {
                took(guest, heard.orElseThrow());
                return;
            }
            BadLink.pause(BETWEEN_MILLIS / 3);
        }
    }

    private synchronized void took(String guest, Api.Heard heard) {
        if (heard.isDone()) {
            orders.put(guest, heard.json().path("order").textValue());
        } else {
            refused.add(guest + ": " + heard);
        }
    }
}
