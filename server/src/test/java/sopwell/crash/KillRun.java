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
import java.util.stream.Stream;
import sopwell.crash.Guest.Heard;

/**
 * Kills the server at random instants under load and then holds what is left against the {@link
 * History}; besides, each order has its parts, is on its boards and in the mix.
 */
final class KillRun {
    private static final int WRITERS = 4;
    private static final int READY_PERCENT = 99;

    private final Path data;
    private final int kills;
    private final int lifeMillisMax;
    private final SplittableRandom random;
    private final Guest guest = new Guest();
    private final History history = new History();
    private final List<Watcher> watchers =
            Stream.of("line", "pass", "counter").map(name -> new Watcher(name, history)).toList();
    private final List<Writer> writers = new ArrayList<>();
    private final List<Long> readyMillis = new ArrayList<>();

    /**
     * What a run came to.
     *
     * @param sendings of orders, those without an answer too
     * @param refused keys of orders that were refused
     * @param readyP99Millis from the command to listening, the time that 99 of 100 starts kept
     */
    record Result(
            int kills,
            int orders,
            int requests,
            int sendings,
            long refused,
            int frames,
            long readyP99Millis,
            long slowestReadyMillis) {}

    /** Each life ends within so long after the server listens. */
    KillRun(Path data, int kills, int lifeMillisMax, long seed) {
        this.data = data;
        this.kills = kills;
        this.lifeMillisMax = lifeMillisMax;
        this.random = new SplittableRandom(seed);
        for (int i = 0; i < WRITERS; i++) {
            writers.add(new Writer(i, guest, history, random.split()));
        }
    }

    /**
     * Runs and checks.
     *
     * @throws AssertionError with the first thing that is not as it was answered
     */
    Result run() throws IOException, InterruptedException {
        DemoFolder.make(data);
        for (int kill = 0; kill < kills; kill++) {
            try (StandProcess stand = start()) {
                watchers.forEach(watcher -> watcher.watch(stand.address()));
                List<Thread> threads = new ArrayList<>();
                for (Writer writer : writers) {
                    Thread thread = new Thread(() -> writer.workUntilGone(stand.address()));
                    thread.start();
                    threads.add(thread);
                }
                Thread.sleep(20 + random.nextInt(lifeMillisMax));
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
        readyMillis.add(stand.readyMillis());
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
                    answered.put(answer.get("order").textValue(), answer);
                    pieces += attempt.pieces();
                }
            }
        }
        that(!answered.isEmpty(), "no order was placed at all, so nothing was shown");
        List<String> wrong = history.wrong(left(address));
        that(wrong.isEmpty(), wrong.toString());
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
        return result(answered.size(), requests);
    }

    private Result result(int orders, int requests) {
        List<Long> ready = readyMillis.stream().sorted().toList();
        int frames = watchers.stream().mapToInt(Watcher::frames).sum();
        return new Result(
                kills,
                orders,
                requests,
                history.sendings(),
                history.refused(),
                frames,
                ready.get((ready.size() * READY_PERCENT + 99) / 100 - 1),
                ready.get(ready.size() - 1));
    }

    /** Each order that was ever answered or shown, and all that the stand lists. */
    private Map<String, Integer> left(String address) throws IOException, InterruptedException {
        Map<String, Integer> left = new HashMap<>();
        for (JsonNode order : guest.get(address, "/api/orders").body().get("orders")) {
            left.put(order.get("order").textValue(), order.get("number").intValue());
        }
        for (String id : history.orders()) {
            Heard heard = guest.get(address, "/api/orders/" + id);
            if (heard.status() == 200) {
                left.put(id, heard.body().get("number").intValue());
            }
        }
        return left;
    }

    private void checkOrder(String address, JsonNode answer, Map<String, Integer> waiting)
            throws IOException, InterruptedException {
        String id = answer.get("order").textValue();
        Heard heard = guest.get(address, "/api/orders/" + id);
        that(heard.status() == 200, "answered and gone: " + id);
        JsonNode order = heard.body();
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
