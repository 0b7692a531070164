package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.GateStand;
import sopwell.access.AccessLimits;
import sopwell.access.AccessRules;
import sopwell.access.AccessState;
import sopwell.access.Right;
import sopwell.access.Role;
import sopwell.access.Secrets;
import sopwell.access.Tries;
import sopwell.access.Use;

/**
 * What another page, another person or another address sends in somebody's name, at every route
 * that changes something, read from the stand's own list. The forgeries are those of OWASP's
 * Cross-Site Request Forgery Prevention Cheat Sheet.
 */
class ForgeryTest {
    private static final Set<Integer> REFUSED = Set.of(401, 403, 405);

    private static GateStand stand;
    private static Set<String> changes;

    @BeforeAll
    static void open() {
        stand = new GateStand();
        changes = new TreeSet<>(stand.routes());
        changes.removeIf(route -> route.startsWith("GET "));
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    /** Every forgery by its name, as headers, two a pair. */
    private static Map<String, String[]> forgeries() {
        String owner = stand.proven(Role.OWNER);
        String lead = stand.proven(Role.LEAD);
        String line = stand.signedIn(Role.LINE);
        String ours = stand.origin();
        String form = "application/x-www-form-urlencoded";
        Map<String, String[]> all = new LinkedHashMap<>();
        all.put("no cookie", new String[] {"Origin", ours});
        all.put("a line person's cookie", new String[] {"Cookie", line, "Origin", ours});
        all.put("no origin", new String[] {"Cookie", owner, "Content-Type", form});
        all.put("another's token", new String[] {"Cookie", owner, "X-CSRF", csrf(lead)});
        all.put("no token in the header", new String[] {"Cookie", owner, "X-CSRF", ""});
        all.put("foreign", new String[] {"Cookie", owner, "Origin", "http://evil.example"});
        all.put("null", new String[] {"Cookie", owner, "Origin", "null"});
        all.put(
                "cross-site",
                new String[] {"Cookie", owner, "Origin", ours, "Sec-Fetch-Site", "cross-site"});
        all.put(
                "cross-site, no origin",
                new String[] {"Cookie", owner, "Sec-Fetch-Site", "cross-site"});
        all.put("text/plain", new String[] {"Cookie", owner, "Content-Type", "text/plain"});
        return all;
    }

    private static String csrf(String cookies) {
        return Secrets.csrf(cookies.substring(cookies.lastIndexOf('=') + 1));
    }

    private static Right right(String route) {
        int space = route.indexOf(' ');
        return AccessRules.right(route.substring(0, space), route.substring(space + 1))
                .orElseThrow();
    }

    /** Whether a route is for everybody who comes from our own pages, or for the line too. */
    private static boolean isFor(String who, String route) {
        if (who.equals("no cookie")) {
            return right(route) == Right.OPEN;
        }
        return who.equals("a line person's cookie")
                && AccessRules.rights(Role.LINE).contains(right(route));
    }

    private static int ask(String method, String template, String... headers) {
        String path =
                template.replaceAll("\\{date\\}", "2026-01-31").replaceAll("\\{\\w+\\}", "s2");
        HttpRequest.BodyPublisher body =
                method.equals("GET")
                        ? BodyPublishers.noBody()
                        : BodyPublishers.ofString("name=x&role=owner&password=another+good+one");
        HttpRequest.Builder request = stand.request(path).headers(headers);
        HttpResponse<String> got = stand.send(request.method(method, body).build());
        return got.statusCode();
    }

    @Test
    void noRouteThatChangesSomethingTakesAForgery() {
        Map<String, String[]> forgeries = forgeries();
        long before = stand.seq();
        Map<String, String> state = rules();
        List<String> taken = new ArrayList<>();
        int asked = 0;
        for (String route : changes) {
            String method = route.substring(0, route.indexOf(' '));
            for (Map.Entry<String, String[]> forgery : forgeries.entrySet()) {
                if (isFor(forgery.getKey(), route)) {
                    continue;
                }
                int status = ask(method, route.substring(method.length() + 1), forgery.getValue());
                asked++;
                if (!REFUSED.contains(status)) {
                    taken.add(route + " with " + forgery.getKey() + ": " + status);
                }
            }
        }
        assertEquals(List.of(), taken);
        assertEquals(before, stand.seq(), "nothing was written");
        assertEquals(state, rules(), "nobody may do more");
        assertTrue(asked > 700, asked + " were asked");
    }

    /** A look at the same address changes nothing, whatever it says that it stands for. */
    @Test
    void noLookIsAChange() {
        String owner = stand.proven(Role.OWNER);
        Set<String> looks = new TreeSet<>(stand.routes());
        looks.removeIf(route -> !route.startsWith("GET "));
        long before = stand.seq();
        Map<String, String> state = rules();
        List<String> taken = new ArrayList<>();
        for (String route : changes) {
            String template = route.substring(route.indexOf(' ') + 1);
            if (looks.stream().anyMatch(look -> fits(look, template))) {
                continue;
            }
            int status = ask("GET", template, "Cookie", owner, "X-HTTP-Method-Override", "POST");
            if (status != 405) {
                taken.add(template + ": " + status);
            }
        }
        assertEquals(List.of(), taken);
        assertEquals(before, stand.seq());
        assertEquals(state, rules());
    }

    private static boolean fits(String look, String template) {
        String pattern = look.substring(4).replaceAll("\\{\\w+\\}", "[^/]+").replace("*", ".*");
        return template.matches(pattern);
    }

    /** Who may do what, without when somebody was last seen. */
    private static Map<String, String> rules() {
        AccessState state = stand.access().state();
        Map<String, String> rules = new TreeMap<>();
        rules.put("people", state.people().toString());
        rules.put("devices", state.devices().toString());
        rules.put("tokens", state.tokens().toString());
        return rules;
    }

    /** Browsers name the origin with every form, so a page needs no script to be trusted. */
    @Test
    void aFormOfOurOwnPageNeedsNoScript() {
        String owner = stand.proven(Role.OWNER);
        String[] form = {
            "Cookie", owner,
            "Origin", stand.origin(),
            "Sec-Fetch-Site", "same-origin",
            "Sec-Fetch-Mode", "navigate",
            "Content-Type", "application/x-www-form-urlencoded",
            "Accept", "text/html"
        };
        long before = stand.seq();
        int people = stand.access().state().people().size();
        HttpRequest.Builder hire = stand.request("/settings/access/people").headers(form);
        HttpResponse<String> hired =
                stand.send(hire.POST(BodyPublishers.ofString("name=Bo&role=line")).build());
        assertEquals(303, hired.statusCode(), hired.body());
        assertEquals(people + 1, stand.access().state().people().size());
        assertTrue(stand.seq() > before, "it was noted");
    }

    /** The count is the person's at the device: coming from elsewhere gives no more. */
    @Test
    void fiftyAddressesHaveNoMoreTriesThanOne() throws IOException {
        String device = "sopwell-device=" + stand.pair(Use.COUNTER);
        String id = "d" + stand.access().state().devices().size();
        String person = stand.person(Role.COUNTER);
        int wrong = 0;
        int waits = 0;
        for (int from = 2; from < 52; from++) {
            String answer = pin(from, device, person, "0000");
            wrong += answer.startsWith("HTTP/1.1 422 ") ? 1 : 0;
            waits += answer.startsWith("HTTP/1.1 429 ") ? 1 : 0;
        }
        assertEquals(List.of(4, 46), List.of(wrong, waits));
        Tries tries = stand.access().state().tries().get(person + "@" + id + "/pin");
        assertEquals(AccessLimits.SECRET_TRIES_MAX, tries.count());
        String right = pin(60, device, person, GateStand.PIN);
        assertTrue(right.startsWith("HTTP/1.1 429 "), right);
    }

    /** One press of the number pad's page from 127.0.0.x. */
    private static String pin(int from, String cookie, String person, String pin)
            throws IOException {
        String body = "person=" + person + "&pin=" + pin;
        InetAddress here = InetAddress.getByAddress(new byte[] {127, 0, 0, (byte) from});
        try (Socket socket = new Socket()) {
            socket.setSoTimeout(20_000);
            socket.bind(new InetSocketAddress(here, 0));
            socket.connect(
                    new InetSocketAddress(InetAddress.getLoopbackAddress(), stand.port()), 10_000);
            String request =
                    "POST /sign-in HTTP/1.1\r\nHost: 127.0.0.1:"
                            + stand.port()
                            + "\r\nOrigin: "
                            + stand.origin()
                            + "\r\nCookie: "
                            + cookie
                            + "\r\nContent-Type: application/x-www-form-urlencoded"
                            + "\r\nConnection: close\r\nContent-Length: "
                            + body.length()
                            + "\r\n\r\n"
                            + body;
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
