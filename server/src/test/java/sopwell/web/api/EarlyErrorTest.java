package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.web.RawConnection;
import sopwell.web.StandServer;

/** Requests that never reach a handler: refused by the server itself, without showing insides. */
class EarlyErrorTest {
    private static final Pattern INSIDES =
            Pattern.compile("(?i)<html|exception|\\tat |undertow|io\\.|java\\.");

    private static StandServer stand;

    @BeforeAll
    static void open() {
        stand = StandServer.fresh();
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @Test
    void refusesAHeaderOverTheLimit() throws IOException {
        refused("400|431", get("X-Long: " + "x".repeat(17_000)));
    }

    @Test
    void refusesTooManyHeaders() throws IOException {
        refused("400|431", get("X-A: 1\r\n".repeat(60) + "X-B: 2"));
    }

    @Test
    void refusesTooManyParameters() throws IOException {
        refused("400|414", "GET /healthz?" + "a=1&".repeat(120) + " HTTP/1.1\r\n" + host() + end());
    }

    @Test
    void refusesAnAddressOverTheLimit() throws IOException {
        String path = "/" + "x".repeat(20_000);
        refused("400|414|431", "GET " + path + " HTTP/1.1\r\n" + host() + end());
    }

    @Test
    void refusesBytesThatAreNoRequest() throws IOException {
        refused("400", "\u0016\u0003\u0001 hello\r\n\r\n");
        refused("400", "GET\r\n\r\n");
        refused("400", "GET /healthz SPDY/1\r\n" + host() + end());
    }

    @Test
    void refusesHeadersThatOnlySomeServersWouldUnderstand() throws IOException {
        refused("400", get("X-A : b"));
        refused("400", "GET /healthz HTTP/1.1\r\n X-A: b\r\n" + host() + end());
        refused("400", "GET /healthz HTTP/1.1\n" + host().replace("\r", "") + "\n");
    }

    @Test
    void refusesARequestThatCouldBeTwo() throws IOException {
        String two = "Content-Length: 4\r\nContent-Length: 9";
        refused("400", "POST /api/calls HTTP/1.1\r\n" + host() + two + "\r\n" + end() + "{}{}{}");
        String both = "Content-Length: 4\r\nTransfer-Encoding: chunked";
        refused(
                "400",
                "POST /api/calls HTTP/1.1\r\n" + host() + both + "\r\n" + end() + "0\r\n\r\n");
    }

    @Test
    void refusesEveryNameThatIsNotTheStands() throws IOException {
        for (String name :
                new String[] {
                    "evil.example",
                    "127.0.0.1.evil.example",
                    "evil.example:" + stand.port(),
                    "user@127.0.0.1",
                    "127.0.0.1@evil.example",
                    "",
                    "127.1",
                    "[::2]",
                    "0.0.0.0",
                    "localhost."
                }) {
            String got =
                    refused("400|421", "GET /healthz HTTP/1.1\r\nHost: " + name + "\r\n" + end());
            assertFalse(got.contains("\"seq\""), name);
        }
        refused("400|421", "GET /healthz HTTP/1.1\r\n" + host() + "Host: evil.example\r\n" + end());
        refused("400|421", "GET /healthz HTTP/1.1\r\n" + end());
        refused("400|421", "GET http://evil.example/healthz HTTP/1.1\r\n" + host() + end());
    }

    @Test
    void saysThatANameIsNotTheStands() throws IOException {
        String got =
                RawConnection.exchange(
                        stand.port(),
                        "GET /healthz HTTP/1.1\r\nHost: evil.example\r\nAccept-Language: es\r\n"
                                + end());
        assertTrue(got.contains("\"code\":\"wrong-host\""), got);
        assertTrue(got.contains("Este puesto no se conoce"), got);
    }

    @Test
    void refusesABodyOverTheLimitWithoutReadingIt() throws IOException {
        String announced =
                RawConnection.exchange(
                        stand.port(), post("Content-Length: 1000000000") + "{\"call\": \"");
        assertTrue(announced.startsWith("HTTP/1.1 413 "), announced);
        assertTrue(announced.contains("\"code\":\"too-large\""), announced);
        String chunk = "2000\r\n" + " ".repeat(0x2000) + "\r\n";
        String chunked =
                RawConnection.exchange(
                        stand.port(), post("Transfer-Encoding: chunked") + chunk.repeat(9));
        assertTrue(chunked.startsWith("HTTP/1.1 413 "), chunked);
    }

    @Test
    void readsABodyThatComesInPieces() throws IOException {
        try (RawConnection connection = new RawConnection(stand.port())) {
            connection.send(post("Content-Length: 16"));
            connection.send("{\"call\":");
            connection.send(" \"beef\"}");
            String got = connection.rest();
            assertTrue(got.startsWith("HTTP/1.1 200 "), got);
            assertTrue(got.contains("\"readBack\":\"regular beef, wet.\""), got);
        }
    }

    @Test
    void takesOddHeadersThatMeanNothingHere() throws IOException {
        String odd = "Accept-Language: ,;q=x, *;q=\r\nCookie: lang=\"; =; ;;\r\nAccept: ???";
        String got = RawConnection.exchange(stand.port(), get(odd));
        assertTrue(got.startsWith("HTTP/1.1 200 "), got);
        String crumbs = "Cookie: " + "a=b; ".repeat(30) + "c=d";
        String many = RawConnection.exchange(stand.port(), get(crumbs));
        assertTrue(many.matches("(?s)HTTP/1.1 (200|400) .*"), many);
        assertFalse(INSIDES.matcher(many).find(), many);
    }

    @Test
    void goesOnAfterAllOfThis() {
        assertEquals(200, stand.get("/healthz").status());
    }

    private static String get(String header) {
        return "GET /healthz HTTP/1.1\r\n" + host() + header + "\r\n" + end();
    }

    private static String post(String length) {
        return "POST /api/calls HTTP/1.1\r\n"
                + host()
                + "Content-Type: application/json\r\n"
                + length
                + "\r\n"
                + end();
    }

    private static String host() {
        return "Host: 127.0.0.1:" + stand.port() + "\r\n";
    }

    private static String end() {
        return "Connection: close\r\n\r\n";
    }

    private static String refused(String statuses, String request) throws IOException {
        String got = RawConnection.exchange(stand.port(), request);
        assertTrue(got.matches("(?s)HTTP/1\\.1 (" + statuses + ") .*"), request + "\n" + got);
        assertFalse(INSIDES.matcher(got).find(), got);
        return got;
    }
}
