package sopwell.crash;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.crash.Guest.Heard;
import sopwell.crash.History.Named;
import sopwell.crash.History.Sent;

/**
 * One till and one pair of hands: places orders and works most of them off, each request with its
 * key, until the server is gone. What it does not know the outcome of, it asks again first when the
 * server is back; what it was making, it goes on making. Now and then it asks for what nobody
 * sells. One thread at a time.
 */
final class Writer {
    private static final String[] CALLS = {
        "2 beef dipped hot, fries", "beef dry sweet", "combo dipped both, cola", "3 fries"
    };
    private static final int[] PIECES = {3, 1, 2, 3};
    private static final String UNSOLD = "{\"call\": \"2 beef dipped hot, roast unicorn\"}";
    private static final int UNSOLD_EVERY = 9;
    private static final int OPEN_MAX = 4;
    private static final int PAUSE_MILLIS_MAX = 40;

    private final int number;
    private final Guest guest;
    private final History history;
    private final SplittableRandom random;
    private final List<Attempt> attempts = new ArrayList<>();
    private final List<Attempt> unknown = new ArrayList<>();
    private final Deque<String> open = new ArrayDeque<>();
    private int made;

    Writer(int number, Guest guest, History history, SplittableRandom random) {
        this.number = number;
        this.guest = guest;
        this.history = history;
        this.random = random;
    }

    /** Works until the server does not answer any more. */
    void workUntilGone(String address) {
        try {
            settle(address);
            while (true) {
                if (random.nextInt(UNSOLD_EVERY) == 0) {
                    askForUnsold(address);
                }
                int which = random.nextInt(CALLS.length);
                String body = "{\"call\": \"" + CALLS[which] + "\"}";
                ask(address, "/api/orders", body, PIECES[which]);
                while (open.size() > random.nextInt(OPEN_MAX)) {
                    workOff(address, open.getFirst());
                    open.removeFirst();
                }
                Thread.sleep(random.nextInt(PAUSE_MILLIS_MAX));
            }
        } catch (IOException gone) {
            return;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Asks everything again whose outcome is unknown. */
    void settle(String address) throws IOException, InterruptedException {
        while (!unknown.isEmpty()) {
            send(address, unknown.get(0));
        }
    }

    List<Attempt> attempts() {
        return attempts;
    }

    private void workOff(String address, String id) throws IOException, InterruptedException {
        Heard whole = guest.get(address, "/api/orders/" + id);
        if (whole.status() != 200) {
            throw new IllegalStateException("answered, and not there at once: " + id);
        }
        if (whole.body().get("state").textValue().equals("handed")) {
            return;
        }
        List<JsonNode> grillFirst = new ArrayList<>();
        whole.body().get("parts").forEach(grillFirst::add);
        grillFirst.sort(Comparator.comparing(part -> part.get("station").textValue()));
        for (JsonNode part : grillFirst) {
            String path = "/api/parts/" + part.get("part").textValue();
            String state = part.get("state").textValue();
            if (state.equals("waiting") && random.nextBoolean()) {
                ask(address, path + "/started", "", 0);
            }
            if (!state.equals("up")) {
                ask(address, path + "/up", "", 0);
            }
        }
        ask(address, "/api/orders/" + id + "/handed", "", 0);
    }

    /** Without an answer it is not asked again: a refusal has nothing to be asked again for. */
    private void askForUnsold(String address) throws IOException, InterruptedException {
        Attempt attempt = new Attempt("/api/orders", "u" + number + "-" + made++, UNSOLD, 1);
        Heard heard = heard(address, attempt);
        if (heard.status() != 422) {
            throw new IllegalStateException("sold what is not sold: " + heard);
        }
    }

    private void ask(String address, String path, String body, int pieces)
            throws IOException, InterruptedException {
        Attempt attempt = new Attempt(path, "w" + number + "-" + made++, body, pieces);
        attempts.add(attempt);
        unknown.add(attempt);
        send(address, attempt);
    }

    private void send(String address, Attempt attempt) throws IOException, InterruptedException {
        Heard heard = heard(address, attempt);
        if (!heard.isDone()) {
            throw new IllegalStateException(attempt.path() + ": " + heard);
        }
        attempt.answered(heard.body());
        unknown.remove(attempt);
        if (attempt.isOrder()) {
            open.addLast(heard.body().get("order").textValue());
        }
    }

    /** Notes what was asked, when, and what came of it, also when nothing came. */
    private Heard heard(String address, Attempt attempt) throws IOException, InterruptedException {
        long fromNanos = System.nanoTime();
        int status = 0;
        Named order = null;
        try {
            Heard heard = guest.post(address, attempt.path(), attempt.key(), attempt.body());
            status = heard.status();
            if (heard.isDone() && attempt.isOrder()) {
                JsonNode body = heard.body();
                order = new Named(body.get("order").textValue(), body.get("number").intValue());
            }
            return heard;
        } finally {
            if (attempt.isOrder()) {
                long toNanos = System.nanoTime();
                history.add(new Sent(fromNanos, toNanos, attempt.key(), status, order));
            }
        }
    }
}
