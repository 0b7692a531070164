package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.GateStand;
import sopwell.access.AccessRules;
import sopwell.access.Actor;
import sopwell.access.Right;
import sopwell.access.Role;
import sopwell.access.Secrets;
import sopwell.access.Use;

/** Every route of the stand, asked by everybody there is. */
class GateTest {
    private static GateStand stand;
    private static Set<String> routes;

    @BeforeAll
    static void open() {
        stand = new GateStand();
        routes = new LinkedHashSet<>(new TreeSet<>(stand.routes()));
        // It ends what the others are asked with, so it is asked last.
        routes.remove("POST /sign-out");
        routes.add("POST /sign-out");
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    /** One request with headers, two a pair. */
    private static HttpResponse<String> ask(String route, String... headers) {
        String method = route.substring(0, route.indexOf(' '));
        String path = route.substring(route.indexOf(' ') + 1);
        path = path.replaceAll("\\{date\\}", "2026-01-31").replaceAll("\\{\\w+\\}", "beef");
        HttpRequest.Builder request = stand.request(path.replace("*", "x"));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return stand.send(
                request.method(
                                method,
                                method.equals("GET")
                                        ? BodyPublishers.noBody()
                                        : BodyPublishers.ofString("not what anybody wants"))
                        .build());
    }

    private static Right right(String route) {
        int space = route.indexOf(' ');
        return AccessRules.right(route.substring(0, space), route.substring(space + 1))
                .orElseThrow(() -> new AssertionError(route + " has no rule"));
    }

    private static boolean isRefused(HttpResponse<String> got) {
        return got.statusCode() == 401
                || (got.statusCode() == 403 && !got.body().contains("foreign-origin"));
    }

    private static void refusesAll(String who, String... headers) {
        long before = stand.seq();
        List<String> wrong = new ArrayList<>();
        for (String route : routes) {
            if (right(route) != Right.OPEN && !isRefused(ask(route, headers))) {
                wrong.add(route);
            }
        }
        assertEquals(List.of(), wrong, who);
        assertEquals(before, stand.seq(), "nothing was changed");
    }

    @Test
    void everyRouteHasARuleAndEveryRuleARoute() {
        Set<String> ruled = new TreeSet<>(AccessRules.routes());
        ruled.removeIf(route -> route.startsWith("GET /ws/"));
        ruled.remove("GET /api/boards/ready");
        ruled.remove("GET /api/boards/counter");
        assertEquals(ruled, routes);
        assertTrue(routes.size() > 100, "the list is the stand's own");
    }

    @Test
    void nobodyGetsInWithNothingOrWithWhatIsNoToken() {
        refusesAll("nothing");
        refusesAll("a made-up cookie", "Cookie", "sopwell=" + "x".repeat(43));
        refusesAll("a made-up device", "Cookie", "sopwell-device=" + "x".repeat(43));
        refusesAll("a made-up token", "Authorization", "Bearer " + "x".repeat(43));
    }

    @Test
    void aSessionThatIsOverOrARevokedOneIsNothing() {
        try (GateStand other = new GateStand()) {
            String owner = other.proven(Role.OWNER);
            HttpRequest look =
                    other.request("/api/days/2026-01-31/till").header("Cookie", owner).build();
            assertEquals(404, other.send(look).statusCode());
            other.later(900_000);
            assertEquals(401, other.send(look).statusCode());
            String token = other.token(Role.LEAD);
            HttpRequest program =
                    other.request("/api/mix").header("Authorization", "Bearer " + token).build();
            assertNotEquals(401, other.send(program).statusCode());
            GateStand.value(other.access().roster().endToken("t1"));
            assertEquals(401, other.send(program).statusCode());
        }
    }

    /** Whoever there is, with what they may do and whether their password is fresh. */
    private static Map<String, Actor> everybody() {
        Map<String, Actor> all = new LinkedHashMap<>();
        for (Use use : Use.values()) {
            all.put(
                    "Cookie " + stand.device(use),
                    new Actor(Actor.Kind.DEVICE, "", "d", "", null, AccessRules.rights(use), 0));
        }
        for (Role role : Role.values()) {
            Set<Right> rights = AccessRules.rights(role);
            all.put(
                    "Cookie " + stand.signedIn(role),
                    new Actor(Actor.Kind.PERSON, "s", "d", "", role, rights, 0));
            if (role.hasPassword()) {
                all.put(
                        "Cookie " + stand.proven(role),
                        new Actor(Actor.Kind.PERSON, "s", "d", "", role, rights, Long.MAX_VALUE));
            }
            all.put(
                    "Authorization Bearer " + stand.token(role),
                    new Actor(Actor.Kind.PROGRAM, "", "", "t", role, rights, Long.MAX_VALUE));
        }
        return all;
    }

    @Test
    void everybodyGetsWhatTheTableSaysAndNoMore() {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        for (Map.Entry<String, Actor> one : everybody().entrySet()) {
            String header = one.getKey().substring(0, one.getKey().indexOf(' '));
            String value = one.getKey().substring(header.length() + 1);
            Actor actor = one.getValue();
            for (String route : routes) {
                Right right = right(route);
                int expected = 0;
                if (!actor.may(right)) {
                    expected = actor.role() == null ? 401 : 403;
                } else if (actor.mustProve(right, 0)) {
                    expected = 403;
                }
                HttpResponse<String> got = ask(route, header, value, "Origin", stand.origin());
                asked++;
                if (isRefused(got) ? got.statusCode() != expected : expected != 0) {
                    wrong.add(
                            route
                                    + " by "
                                    + actor.role()
                                    + " "
                                    + actor.kind()
                                    + ": "
                                    + got.statusCode());
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(asked > 1_500, asked + " were asked");
    }

    @Test
    void aChangeWithACookieMustComeFromOurOwnPage() {
        String cookie = stand.proven(Role.OWNER);
        String session = cookie.substring(cookie.lastIndexOf('=') + 1);
        long before = stand.seq();
        List<String[]> foreign =
                List.of(
                        new String[] {},
                        new String[] {"X-CSRF", "wrong"},
                        new String[] {"Origin", "http://evil.example"},
                        new String[] {"Origin", "null"},
                        new String[] {"Origin", stand.origin() + ".evil.example"},
                        new String[] {"Origin", "http://127.0.0.1:1"},
                        new String[] {"Origin", stand.origin(), "Sec-Fetch-Site", "cross-site"},
                        new String[] {"Content-Type", "text/plain"},
                        new String[] {"Content-Type", "application/x-www-form-urlencoded"});
        for (String route : routes) {
            if (route.startsWith("GET ")) {
                continue;
            }
            for (String[] with : foreign) {
                List<String> headers = new ArrayList<>(List.of("Cookie", cookie));
                headers.addAll(List.of(with));
                assertEquals(
                        403,
                        ask(route, headers.toArray(String[]::new)).statusCode(),
                        route + " " + headers);
            }
            int own = ask(route, "Cookie", cookie, "X-CSRF", Secrets.csrf(session)).statusCode();
            assertNotEquals(403, own, route);
        }
        assertEquals(before, stand.seq());
    }

    @Test
    void noMethodStandsForAnother() {
        String cookie = stand.proven(Role.OWNER);
        long before = stand.seq();
        for (String route : routes) {
            String path = route.substring(route.indexOf(' ') + 1);
            if (route.startsWith("GET ") || routes.contains("GET " + path)) {
                continue;
            }
            for (String method : List.of("GET", "HEAD")) {
                int status =
                        ask(method + " " + path, "Cookie", cookie, "X-HTTP-Method-Override", "POST")
                                .statusCode();
                // A GET of a path that another route's parameter takes is that look, no change.
                assertTrue(status == 405 || method.equals("GET"), method + " " + path + status);
            }
        }
        assertEquals(before, stand.seq());
    }

    @Test
    void whatWasCapturedDoesNothingTwice() {
        String token = stand.token(Role.COUNTER);
        HttpRequest order =
                stand.request("/api/orders")
                        .header("Authorization", "Bearer " + token)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", "captured")
                        .POST(BodyPublishers.ofString("{\"call\": \"2 beef dipped hot\"}"))
                        .build();
        HttpResponse<String> first = stand.send(order);
        long after = stand.seq();
        assertEquals(201, first.statusCode());
        HttpResponse<String> second = stand.send(order);
        assertEquals(first.body(), second.body());
        assertEquals(after, stand.seq());
    }

    @Test
    void aPaidOrderIsVoidedByALeadWithThePasswordAlone() {
        String counter = "Bearer " + stand.token(Role.COUNTER);
        String order = field(post("/api/orders", counter, "{\"call\": \"fries\"}"), "order");
        String totals = post("/api/orders", counter, "{\"call\": \"fries\"}").body();
        long cents = StandServer.tree(totals).at("/totals/totalCents").longValue();
        String pay = "{\"means\": \"cash\", \"cents\": " + cents + ", \"cashier\": \"Ana\"}";
        HttpResponse<String> paid = post("/api/orders/" + order + "/payments", counter, pay);
        assertEquals(2, paid.statusCode() / 100, paid.body());
        String why = "{\"version\": 1, \"reason\": \"wrong\"}";
        assertEquals(403, post("/api/orders/" + order + "/voids", counter, why).statusCode());
        String lead = "Bearer " + stand.token(Role.LEAD);
        assertNotEquals(403, post("/api/orders/" + order + "/voids", lead, why).statusCode());
        String free = field(post("/api/orders", counter, "{\"call\": \"fries\"}"), "order");
        assertNotEquals(403, post("/api/orders/" + free + "/voids", counter, why).statusCode());
    }

    @Test
    void aPageThatNeedsSigningInLeadsThere() {
        HttpResponse<String> page =
                stand.send(stand.request("/mix?from=x").header("Accept", "text/html").build());
        assertEquals(303, page.statusCode());
        assertEquals(
                "/sign-in?back=%2Fmix%3Ffrom%3Dx", page.headers().firstValue("Location").get());
        String html = "text/html,application/xhtml+xml,*/*;q=0.8";
        HttpResponse<String> byWorker =
                ask("GET /counter", "Sec-Fetch-Mode", "same-origin", "Accept", html);
        assertEquals(303, byWorker.statusCode(), "a service worker hands a person's way on");
        HttpResponse<String> script =
                ask("GET /counter", "Sec-Fetch-Mode", "same-origin", "Accept", "*/*");
        assertEquals(401, script.statusCode());
        HttpResponse<String> press =
                ask("POST /outs", "HX-Request", "true", "HX-Current-URL", stand.origin() + "/outs");
        assertEquals("/sign-in?back=%2Fouts", press.headers().firstValue("HX-Redirect").get());
    }

    @Test
    void aSocketNeedsACookieFromOurOriginOrAToken() throws IOException {
        String cookie = "Cookie: " + stand.device(Use.LINE);
        String bearer = "Authorization: Bearer " + stand.token(Role.LINE);
        assertEquals(101, socket("pass", cookie, "Origin: " + stand.origin()));
        assertEquals(101, socket("pass", bearer));
        assertEquals(401, socket("pass"));
        assertEquals(403, socket("pass", cookie));
        assertEquals(403, socket("pass", cookie, "Origin: null"));
        assertEquals(403, socket("pass", cookie, "Origin: http://evil.example"));
        assertEquals(403, socket("pass", cookie, "Origin: " + stand.origin() + ".evil"));
        assertEquals(403, socket("pass", cookie, "Origin: http://127.0.0.1:1"));
        String guests = "Cookie: " + stand.device(Use.GUESTS);
        assertEquals(101, socket("ready", guests, "Origin: " + stand.origin()));
        assertEquals(401, socket("pass", guests, "Origin: " + stand.origin()));
        assertEquals(401, socket("counter", cookie, "Origin: " + stand.origin()));
    }

    @Test
    void aSocketOfARevokedDeviceClosesWithinFiveSeconds() throws IOException {
        String token = stand.pair(Use.LINE);
        String id = "d" + stand.access().state().devices().size();
        RawScreen.Manner manner =
                RawScreen.Manner.json()
                        .with("Cookie: sopwell-device=" + token)
                        .with("Origin: " + stand.origin());
        try (RawScreen screen = new RawScreen(stand.port(), "/ws/boards/pass", manner)) {
            assertTrue(screen.answer().startsWith("HTTP/1.1 101 "), screen.answer());
            GateStand.value(stand.access().roster().endDevice(id));
            long from = System.nanoTime();
            while (screen.closeCode() == 0 && System.nanoTime() - from < 10_000_000_000L) {
                screen.next(5_000);
            }
            assertEquals(1008, screen.closeCode());
            assertTrue(System.nanoTime() - from < 5_000_000_000L, "took too long");
        }
    }

    private static int socket(String board, String... lines) throws IOException {
        RawScreen.Manner manner = RawScreen.Manner.json();
        for (String line : lines) {
            manner = manner.with(line);
        }
        try (RawScreen screen = new RawScreen(stand.port(), "/ws/boards/" + board, manner)) {
            return Integer.parseInt(screen.answer().split(" ", 3)[1]);
        }
    }

    private static HttpResponse<String> post(String path, String bearer, String json) {
        return stand.send(
                stand.request(path)
                        .header("Authorization", bearer)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", StandServer.key())
                        .POST(BodyPublishers.ofString(json))
                        .build());
    }

    private static String field(HttpResponse<String> got, String name) {
        assertFalse(StandServer.tree(got.body()).path(name).isMissingNode(), got.body());
        return StandServer.tree(got.body()).path(name).textValue();
    }
}
