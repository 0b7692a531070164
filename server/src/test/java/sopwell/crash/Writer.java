package sopwell.crash;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.crash.Guest.Heard;

/**
 * One till and one pair of hands: places orders and works most of them off, each request with its
 * key, until the server is gone. What it does not know the outcome of, it asks again first when the
 * server is back. One thread at a time.
 */
final class Writer {
    private static final String[] CALLS = {
        "2 beef dipped hot, fries", "beef dry sweet", "combo dipped both, cola", "3 fries"
    };
    private static final int[] PIECES = {3, 1, 2, 3};
    private static final int PAUSE_MILLIS_MAX = 40;

    private final int number;
    private final Guest guest;
    private final SplittableRandom random;
    private final List<Attempt> attempts = new ArrayList<>();
    private final List<Attempt> unknown = new ArrayList<>();
    private int made;

    Writer(int number, Guest guest, SplittableRandom random) {
        this.number = number;
        this.guest = guest;
        this.random = random;
    }

    /** Works until the server does not answer any more. */
    void workUntilGone(String address) {
        try {
            settle(address);
            while (true) {
                int which = random.nextInt(CALLS.length);
                String body = "{\"call\": \"" + CALLS[which] + "\"}";
                JsonNode order = ask(address, "/api/orders", body, PIECES[which]);
                if (random.nextInt(4) > 0) {
                    workOff(address, order);
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

    private void workOff(String address, JsonNode order) throws IOException, InterruptedException {
        String id = order.get("order").textValue();
        Heard whole = guest.get(address, "/api/orders/" + id);
        List<JsonNode> grillFirst = new ArrayList<>();
        whole.body().get("parts").forEach(grillFirst::add);
        grillFirst.sort(Comparator.comparing(part -> part.get("station").textValue()));
        for (JsonNode part : grillFirst) {
            String path = "/api/parts/" + part.get("part").textValue();
            if (random.nextBoolean()) {
                ask(address, path + "/started", "", 0);
            }
            ask(address, path + "/up", "", 0);
        }
        ask(address, "/api/orders/" + id + "/handed", "", 0);
    }

    private JsonNode ask(String address, String path, String body, int pieces)
            throws IOException, InterruptedException {
        Attempt attempt = new Attempt(path, "w" + number + "-" + made++, body, pieces);
        attempts.add(attempt);
        unknown.add(attempt);
        return send(address, attempt);
    }

    private JsonNode send(String address, Attempt attempt)
            throws IOException, InterruptedException {
        Heard heard = guest.post(address, attempt.path(), attempt.key(), attempt.body());
        if (!heard.isDone()) {
            throw new IllegalStateException(attempt.path() + ": " + heard);
        }
        attempt.answered(heard.body());
        unknown.remove(attempt);
        return heard.body();
    }
}
