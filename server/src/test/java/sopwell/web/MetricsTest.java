package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.GateStand;
import sopwell.SourceTree;
import sopwell.access.Role;
import sopwell.access.Shown;
import sopwell.access.Use;
import sopwell.metrics.Exposition;

/** What a program that watches over a stand is told, read as strictly as the format is written. */
class MetricsTest {
    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| `(\\w+)` \\| (counter|gauge|histogram) \\|.*$");

    private static final Pattern ROUTE =
            Pattern.compile("sopwell_request_seconds_count\\{method=(\\w+), route=(.*)}");

    private static GateStand stand;
    private static String watcher;

    @BeforeAll
    static void open() {
        stand = new GateStand();
        watcher = stand.token(Role.WATCH);
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    private static HttpResponse<String> asked(String path, String token) {
        return stand.send(stand.request(path).header("Authorization", "Bearer " + token).build());
    }

    private static Exposition scrape() {
        HttpResponse<String> got = asked("/metrics", watcher);
        assertEquals(200, got.statusCode(), got.body());
        assertEquals(
                "text/plain; version=0.0.4; charset=utf-8",
                got.headers().firstValue("Content-Type").orElse(""));
        return new Exposition(got.body());
    }

    private static int place(String token, String call) {
        return post(token, "/api/orders", "{\"call\": \"" + call + "\", \"name\": \"Zuleika\"}");
    }

    private static int post(String token, String path, String json) {
        HttpRequest.Builder request =
                stand.request(path)
                        .header("Authorization", "Bearer " + token)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", StandServer.key());
        return stand.send(request.POST(BodyPublishers.ofString(json)).build()).statusCode();
    }

    @Test
    void countsWhatWasDone() throws IOException {
        Map<String, Double> before = new TreeMap<>(scrape().samples());
        String till = stand.token(Role.OWNER);
        for (int order = 0; order < 3; order++) {
            assertEquals(201, place(till, "beef dipped hot"));
        }
        assertEquals(200, post(till, "/api/outs", "{\"out\": \"item:fries\"}"));
        assertEquals(409, place(till, "fries"));
        Shown counter = Shown.of("", stand.pair(Use.COUNTER), "");
        assertTrue(
                stand.access()
                        .byPin(counter, stand.person(Role.LINE), "9999")
                        .join()
                        .refused()
                        .isPresent());
        try (RawScreen screen =
                new RawScreen(
                        stand.port(),
                        "/ws/boards/pass",
                        RawScreen.Manner.json().with("Authorization: Bearer " + till))) {
            assertTrue(screen.answer().startsWith("HTTP/1.1 101 "), screen.answer());
            screen.next(5_000);
            Exposition now = scrape();
            assertEquals(1, now.value("sopwell_screens{board=pass}"));
            assertEquals(3, more(now, before, "sopwell_orders_total{outcome=done}"));
            assertEquals(1, more(now, before, "sopwell_orders_total{outcome=refused}"));
            assertTrue(more(now, before, "sopwell_commands_total{outcome=refused}") >= 1);
            assertEquals(1, more(now, before, "sopwell_sign_ins_total{outcome=failed}"));
            assertEquals(3, now.value("sopwell_open_orders"));
            double age = now.value("sopwell_oldest_open_order_seconds");
            assertTrue(age >= 0 && age < 60, "age " + age);
            assertEquals(1, now.value("sopwell_day_open"));
            String orders = "{method=POST, route=/api/orders}";
            assertEquals(4, now.value("sopwell_request_seconds_count" + orders));
            assertEquals(1, more(now, before, "sopwell_answers_total{status=4xx}"));
            assertTrue(more(now, before, "sopwell_commit_seconds_count") >= 3, "each was synced");
            assertTrue(now.value("sopwell_commit_seconds_sum") > 0);
            assertTrue(more(now, before, "sopwell_frames_sent_total") >= 1);
            assertEquals(0, now.value("sopwell_desk_queue"));
            assertEquals((double) stand.seq(), now.value("sopwell_log_events"));
        }
        holdsNothing("zuleika", "beef", "9999", GateStand.PIN, watcher, till, "127.0.0.1");
    }

    private static void holdsNothing(String... ofAnybody) {
        String text = asked("/metrics", watcher).body().toLowerCase(Locale.ROOT);
        for (String secret : ofAnybody) {
            assertFalse(text.contains(secret.toLowerCase(Locale.ROOT)), secret);
        }
    }

    private static double more(Exposition now, Map<String, Double> before, String sample) {
        return now.value(sample) - before.getOrDefault(sample, 0.0);
    }

    @Test
    void saysHowTheBoxIs() {
        Exposition now = scrape();
        assertTrue(now.value("sopwell_log_bytes") > 10_000);
        assertTrue(now.value("sopwell_disk_free_bytes") > 1_000_000);
        assertTrue(now.value("jvm_memory_used_bytes{area=heap}") > 1_000_000);
        assertTrue(now.value("process_resident_memory_bytes") > 10_000_000);
        assertTrue(now.value("jvm_threads_current") > 5);
        assertTrue(now.value("process_open_fds") > 5);
        double states =
                now.samples().entrySet().stream()
                        .filter(one -> one.getKey().startsWith("sopwell_backup_state{"))
                        .mapToDouble(Map.Entry::getValue)
                        .sum();
        assertEquals(1, states, "the backups are in one state");
    }

    @Test
    void pathsThatSomebodyMadeUpAreNoRoutesOfTheirOwn() {
        for (int path = 0; path < 50; path++) {
            asked("/made-up/" + path, watcher);
            asked("/boards/nowhere" + path, watcher);
        }
        Exposition now = scrape();
        Set<String> known = new TreeSet<>(Set.of("ANY none"));
        known.addAll(stand.routes());
        int routes = 0;
        for (String sample : now.samples().keySet()) {
            Matcher route = ROUTE.matcher(sample);
            if (route.matches()) {
                routes++;
                assertTrue(known.contains(route.group(1) + " " + route.group(2)), sample);
            }
        }
        assertTrue(routes >= 2, routes + " routes were asked");
        assertEquals(50, now.value("sopwell_request_seconds_count{method=ANY, route=none}"));
    }

    @Test
    void aWatcherSeesTheFiguresAndNothingElse() {
        assertEquals(200, asked("/metrics", watcher).statusCode());
        assertEquals(403, asked("/api/orders", watcher).statusCode());
        assertEquals(403, asked("/settings/access", watcher).statusCode());
        assertEquals(401, stand.send(stand.request("/metrics").build()).statusCode());
    }

    @Test
    void theGuideListsEveryFigureAndNoOther() {
        asked("/api/orders", watcher);
        Map<String, String> said = new TreeMap<>();
        String guide = SourceTree.read("docs", name -> name.equals("operating.md")).get(0).text();
        Matcher row = ROW.matcher(guide);
        while (row.find()) {
            said.put(row.group(1), row.group(2));
        }
        Map<String, String> told = new TreeMap<>(scrape().types());
        told.put("sopwell_screens", "gauge");
        // Not there before a screen is open, before the first backup and before the first check.
        told.put("sopwell_backup_age_seconds", "gauge");
        told.put("sopwell_log_check_age_seconds", "gauge");
        assertEquals(told, said);
    }
}
