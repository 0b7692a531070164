package sopwell.crash;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import sopwell.crash.Guest.Heard;

/**
 * Kills the server at random instants under load and then holds what is left against what was
 * answered: every order answered 201 is there once, with its parts, on its boards and in the mix;
 * none is there that nobody asked for; and no screen ever saw one that is not there.
 */
final class KillRun {
    private static final int WRITERS = 4;
    private final Path data;
    private final int kills;
    private final SplittableRandom random;
    private final Guest guest = new Guest();
    private final Watcher watcher = new Watcher();
    private final List<Writer> writers = new ArrayList<>();
    private long slowestReadyMillis;

    /** What a run came to. */
    record Result(int kills, int orders, int requests, int frames, long slowestReadyMillis) {}

    KillRun(Path data, int kills, long seed) {
        this.data = data;
        this.kills = kills;
        this.random = new SplittableRandom(seed);
        for (int i = 0; i < WRITERS; i++) {
            writers.add(new Writer(i, guest, random.split()));
        }
    }

    /**
     * Runs and checks.
     *
     * @throws AssertionError with the first thing that is not as it was answered
     */
    Result run() throws IOException, InterruptedException {
        for (int kill = 0; kill < kills; kill++) {
            try (StandProcess stand = start()) {
                watcher.watch(stand.address());
                List<Thread> threads = new ArrayList<>();
                for (Writer writer : writers) {
                    Thread thread = new Thread(() -> writer.workUntilGone(stand.address()));
                    thread.start();
                    threads.add(thread);
                }
                Thread.sleep(20 + random.nextInt(500));
                stand.kill();
                for (Thread thread : threads) {
                    thread.join();
                }
            }
        }
        try (StandProcess stand = start()) {
            for (Writer writer : writers) {
                writer.settle(stand.address());
            }
            return check(stand.address());
        }
    }

    private StandProcess start() throws IOException {
        StandProcess stand =
                StandProcess.start(data, StandProcess.quick(), List.of("--start-with", "menu"));
        slowestReadyMillis = Math.max(slowestReadyMillis, stand.readyMillis());
        return stand;
    }

    private Result check(String address) throws IOException, InterruptedException {
        Map<String, JsonNode> answered = new HashMap<>();
        int pieces = 0;
        int requests = 0;
        for (Writer writer : writers) {
            for (Attempt attempt : writer.attempts()) {
                requests++;
                if (attempt.isOrder()) {
                    JsonNode answer = attempt.answer().orElseThrow();
                    String id = answer.get("order").textValue();
                    that(answered.put(id, answer) == null, "two keys got the order " + id);
                    pieces += attempt.pieces();
                }
            }
        }
        that(!answered.isEmpty(), "no order was placed at all, so nothing was shown");
        Map<String, Integer> waiting = new HashMap<>();
        for (JsonNode answer : answered.values()) {
            checkOrder(address, answer, waiting);
        }
        JsonNode all = guest.get(address, "/api/orders").body();
        that(
                all.get("of").intValue() == answered.size(),
                "there are " + all.get("of") + " orders, answered were " + answered.size());
        for (String station : List.of("line", "grill", "fryer", "drinks")) {
            JsonNode board = guest.get(address, "/api/boards/" + station).body();
            int shown = board.get("rows").size() + board.get("below").intValue();
            that(
                    shown == waiting.getOrDefault(station, 0),
                    station + " shows " + shown + " of " + waiting.get(station));
        }
        JsonNode mix = guest.get(address, "/api/days/today/mix").body();
        that(mix.get("orders").intValue() == answered.size(), "the mix counts " + mix);
        that(mix.get("pieces").intValue() == pieces, "the mix counts other pieces: " + mix);
        Set<String> ghosts = new HashSet<>(watcher.seen());
        ghosts.removeAll(answered.keySet());
        that(ghosts.isEmpty(), "a screen saw orders that do not exist: " + ghosts);
        return new Result(kills, answered.size(), requests, watcher.frames(), slowestReadyMillis);
    }

    private void checkOrder(String address, JsonNode answer, Map<String, Integer> waiting)
            throws IOException, InterruptedException {
        String id = answer.get("order").textValue();
        Heard heard = guest.get(address, "/api/orders/" + id);
        that(heard.status() == 200, "answered and gone: " + id);
        JsonNode order = heard.body();
        that(order.get("number").equals(answer.get("number")), "another number: " + id);
        that(order.get("lines").equals(answer.get("lines")), "other lines: " + id);
        Set<Integer> lines = new HashSet<>();
        Set<String> parts = new HashSet<>();
        for (JsonNode part : order.get("parts")) {
            lines.add(part.get("line").intValue());
            that(parts.add(part.get("part").textValue()), "a part twice: " + part);
            if (!part.get("state").textValue().equals("up")) {
                waiting.merge(part.get("station").textValue(), 1, Integer::sum);
            }
        }
        that(lines.size() == order.get("lines").size(), "a line without parts: " + order);
    }

    private static void that(boolean holds, String sentence) {
        if (!holds) {
            throw new AssertionError(sentence);
        }
    }
}
