package sopwell.net;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Orders over a link that loses answers, doubles requests and changes their order; one key from
 * many sides; and edits that race. Every check throws when it fails.
 */
final class AnswerRun {
    private static final int SENDERS = 8;
    private static final int TIMES_MAX = 60;
    private static final String CALL = "{\"call\": \"cola\", \"name\": \"%\"}";

    private final Api sound;
    private final Api bad;
    private final SplittableRandom random;

    /** A link to a stand, and how it misbehaves. */
    AnswerRun(String address, BadLink link, long seed) {
        this.sound = Api.at(address, 10_000);
        this.bad =
                new Api(
                        new InetSocketAddress(InetAddress.getLoopbackAddress(), link.port()),
                        10_000);
        this.random = new SplittableRandom(seed);
        link.fates(this::fate);
    }

    /** Of a hundred connections 20 lose the answer, 10 are doubled and 10 are held. */
    private synchronized Fate fate() {
        int of = random.nextInt(100);
        return of < 20 ? Fate.SWALLOW : of < 30 ? Fate.DOUBLE : of < 40 ? Fate.HOLD : Fate.PASS;
    }

    /** So many orders: exactly so many more are there, each with an id of its own. */
    void orders(int count) throws IOException {
        int before = sound.get("/api/orders").path("of").intValue();
        Set<String> ids = new HashSet<>();
        List<String> answers =
                inParallel(
                        count,
                        n -> {
                            String key = UUID.randomUUID().toString();
                            String body = CALL.replace("%", "guest " + n);
                            Api.Heard heard = bad.insist("/api/orders", key, body, TIMES_MAX);
                            String id = heard.json().path("order").textValue();
                            Api.Heard voided =
                                    bad.insist(
                                            "/api/orders/" + id + "/voids",
                                            key + "v",
                                            "{\"reason\": \"gone\"}",
                                            TIMES_MAX);
                            that(voided.isDone(), "not voided: " + voided);
                            return id;
                        });
        ids.addAll(answers);
        int after = sound.get("/api/orders").path("of").intValue();
        that(ids.size() == count, ids.size() + " ids of " + count);
        that(after - before == count, (after - before) + " orders of " + count);
    }

    /** One key from so many sides at once: one order, and the same answer byte for byte. */
    void oneKey(int sides) throws IOException {
        int before = sound.get("/api/orders").path("of").intValue();
        String key = UUID.randomUUID().toString();
        String body = CALL.replace("%", "one");
        List<String> answers =
                inParallel(sides, n -> bad.insist("/api/orders", key, body, TIMES_MAX).body());
        that(new HashSet<>(answers).size() == 1, "other answers: " + new HashSet<>(answers));
        int after = sound.get("/api/orders").path("of").intValue();
        that(after - before == 1, (after - before) + " orders under one key");
    }

    /** Keys that come again with another body: each is refused with 422 and does nothing. */
    void otherBodies(int keys) throws IOException {
        List<String> used =
                inParallel(
                        keys,
                        n -> {
                            String key = UUID.randomUUID().toString();
                            sound.insist("/api/orders", key, CALL.replace("%", "a"), 3);
                            return key;
                        });
        int before = sound.get("/api/orders").path("of").intValue();
        List<String> statuses =
                inParallel(
                        keys,
                        n -> {
                            String other = CALL.replace("%", "b");
                            Api.Heard got = bad.insist("/api/orders", used.get(n), other, 60);
                            return Integer.toString(got.status());
                        });
        that(new HashSet<>(statuses).equals(Set.of("422")), "answered " + statuses);
        that(sound.get("/api/orders").path("of").intValue() == before, "an order came of it");
    }

    /** So many edits of one order from many sides: one winner a version, and none is lost. */
    void edits(int races) throws IOException {
        String placed = CALL.replace("%", "edits");
        String id = sound.insist("/api/orders", key(), placed, 3).json().path("order").asText();
        int version = 1;
        String path = "/api/orders/" + id + "/changes";
        for (int race = 0; race < races; race++) {
            int seen = version;
            AtomicInteger won = new AtomicInteger();
            List<String> winners =
                    inParallel(
                            4,
                            n -> {
                                int quantity = 1 + (seen * 4 + n) % 90;
                                String json =
                                        "{\"version\": "
                                                + seen
                                                + ", \"call\": \""
                                                + quantity
                                                + " fries\", \"reason\": \"race\"}";
                                Api.Heard heard = sound.insist(path, key(), json, 3);
                                that(
                                        heard.isDone() || heard.body().contains("stale-version"),
                                        heard.toString());
                                if (heard.isDone()) {
                                    won.set(quantity);
                                }
                                return heard.isDone() ? "won" : "lost";
                            });
            long wins = winners.stream().filter("won"::equals).count();
            that(wins == 1, wins + " winners of version " + seen);
            JsonNode order = sound.get("/api/orders/" + id);
            that(order.path("version").intValue() == seen + 1, "versions: " + order);
            int kept = order.path("lines").get(0).path("quantity").intValue();
            that(kept == won.get(), "the winner's edit was lost: " + kept + " of " + won);
            version++;
        }
    }

    /** What is done for one of many. */
    private interface Each {
        String of(int n) throws IOException;
    }

    private static List<String> inParallel(int count, Each each) {
        ExecutorService senders = Executors.newFixedThreadPool(Math.min(count, SENDERS));
        try {
            List<Future<String>> under = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int n = i;
                under.add(senders.submit(() -> each.of(n)));
            }
            List<String> all = new ArrayList<>();
            for (Future<String> one : under) {
                all.add(one.get());
            }
            return all;
        } catch (InterruptedException | ExecutionException failed) {
            throw new AssertionError(failed);
        } finally {
            senders.shutdownNow();
        }
    }

    private static String key() {
        return UUID.randomUUID().toString();
    }

    private static void that(boolean holds, String sentence) {
        if (!holds) {
            throw new AssertionError(sentence);
        }
    }
}
