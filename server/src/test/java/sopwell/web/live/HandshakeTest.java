package sopwell.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sopwell.web.RawConnection;
import sopwell.web.RawScreen;
import sopwell.web.RawScreen.Manner;
import sopwell.web.StandServer;

/** Who gets a socket, and what a socket may be sent. */
class HandshakeTest {
    private static final int SOON = 10_000;
    private static final String PATH = "/ws/boards/line";

    private static StandServer stand;

    @BeforeAll
    static void open() {
        stand = StandServer.fresh();
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Origin: http://evil.example",
                "Origin: null",
                "Origin: http://127.0.0.1.evil.example",
                "Origin: http://127.0.0.1",
                "Origin: http://127.0.0.1:1",
                "Origin: file://",
                "Origin: \u00e9",
                "Sec-Fetch-Site: cross-site",
                "Sec-Fetch-Site: same-site"
            })
    void givesAForeignPageNoSocket(String header) throws IOException {
        try (RawScreen screen = new RawScreen(stand.port(), PATH, Manner.json().with(header))) {
            assertTrue(screen.answer().startsWith("HTTP/1.1 403 "), screen.answer());
        }
    }

    @Test
    void givesItsOwnPagesASocket() throws IOException {
        String own = "Origin: http://127.0.0.1:" + stand.port();
        Manner manner = Manner.json().with(own).with("Sec-Fetch-Site: same-origin");
        try (RawScreen screen = new RawScreen(stand.port(), PATH, manner)) {
            assertTrue(screen.answer().startsWith("HTTP/1.1 101 "), screen.answer());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"X-A : b\r\n", " X-A: b\r\n", "X-A: b\n", "X-A b\r\n"})
    void refusesMalformedHeadersOfAHandshake(String header) throws IOException {
        String got =
                RawConnection.exchange(
                        stand.port(),
                        "GET "
                                + PATH
                                + " HTTP/1.1\r\n"
                                + header
                                + "Host: 127.0.0.1:"
                                + stand.port()
                                + "\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n"
                                + "Sec-WebSocket-Version: 13\r\n"
                                + "Sec-WebSocket-Key: c29wd2VsbC10ZXN0LWtleQ==\r\n\r\n");
        assertTrue(got.startsWith("HTTP/1.1 400 "), got);
    }

    @Test
    void refusesAFragmentedTextOverTheLimit() throws IOException {
        byte[] piece = "x".repeat(7_000).getBytes(StandardCharsets.UTF_8);
        try (RawScreen screen = RawScreen.at(stand.port(), "line")) {
            screen.nextFrame(SOON);
            try {
                for (int i = 0; i < 15; i++) {
                    screen.sayPiece(i == 0, i == 14, piece);
                }
            } catch (IOException closedMeanwhile) {
                assertTrue(closedMeanwhile instanceof java.net.SocketException);
            }
            assertEquals(1009, closeCode(screen));
        }
    }

    @Test
    void refusesOneLongText() throws IOException {
        try (RawScreen screen = RawScreen.at(stand.port(), "line")) {
            screen.nextFrame(SOON);
            screen.say("x".repeat(8_193));
            assertEquals(1009, closeCode(screen));
        }
    }

    @Test
    void givesNothingElseUnderThePathOfSockets() throws IOException {
        for (String path : new String[] {"/ws/", "/ws/boards", "/ws/boards/line/x", PATH}) {
            String got =
                    RawConnection.exchange(
                            stand.port(),
                            "GET "
                                    + path
                                    + " HTTP/1.1\r\nHost: 127.0.0.1:"
                                    + stand.port()
                                    + "\r\nConnection: close\r\n\r\n");
            assertTrue(got.startsWith("HTTP/1.1 404 "), path + "\n" + got);
            assertTrue(got.contains("\"code\":\"not-found\""), path + "\n" + got);
        }
    }

    @Test
    void refusesAHandshakeThatIsNotComplete() throws IOException {
        try (RawConnection connection = new RawConnection(stand.port())) {
            connection.send(
                    "GET "
                            + PATH
                            + " HTTP/1.1\r\nHost: 127.0.0.1:"
                            + stand.port()
                            + "\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n"
                            + "Sec-WebSocket-Version: 99\r\n\r\n");
            String head = connection.head();
            assertTrue(head.startsWith("HTTP/1.1 404 "), head);
            assertTrue(head.contains("application/problem+json"), head);
        }
    }

    /** How the socket ends, if it does so before a few signs of life. */
    private static int closeCode(RawScreen screen) throws IOException {
        int signs = 0;
        while (screen.next(SOON) != null && signs < 3) {
            signs++;
        }
        return screen.closeCode();
    }
}
