package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.GateStand;
import sopwell.access.Actor;
import sopwell.access.Role;
import sopwell.access.Shown;
import sopwell.access.Use;

/** Sockets of a closed stand: which pages may open one, and when it ends. */
class SocketGateTest {
    private static final long END_NANOS_MAX = 5_000_000_000L;

    private static GateStand stand;

    @BeforeAll
    static void open() {
        stand = new GateStand();
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    /** Where a page might be that is not ours; an empty one stands for no Origin at all. */
    private static List<String> foreign() {
        String ours = stand.origin();
        int port = stand.port();
        return List.of(
                "",
                "null",
                "http://evil.example",
                "https://evil.example",
                "http://evil.example:" + port,
                ours + ".evil.example",
                ours.replace("127.0.0.1", "127.0.0.1.evil.example"),
                ours.replace("127.0.0.1", "127.0.0.2"),
                ours.replace("127.0.0.1", "127.1"),
                ours.replace("127.0.0.1", "0.0.0.0"),
                ours.replace("127.0.0.1", "[::1]"),
                ours.replace("http://", "http://evil.example@"),
                ours.replace("http:", "ws:"),
                "http://127.0.0.1",
                "http://127.0.0.1:" + (port + 1),
                "http://127.0.0.1:1" + port,
                ours + "/evil",
                ours + " http://evil.example",
                ours.toUpperCase(java.util.Locale.ROOT) + "X",
                "file://",
                "chrome-extension://abcdefghijklmnop");
    }

    @Test
    void noForeignPageOpensASocketWithSomebodysCookie() throws IOException {
        String cookie = "Cookie: " + stand.signedIn(Role.LINE) + "; " + stand.device(Use.LINE);
        List<String> opened = new ArrayList<>();
        for (String origin : foreign()) {
            int status = origin.isEmpty() ? status(cookie) : status(cookie, "Origin: " + origin);
            if (status != 403) {
                opened.add(origin + ": " + status);
            }
        }
        assertEquals(List.of(), opened);
        assertEquals(101, status(cookie, "Origin: " + stand.origin()));
        String behindTls = stand.origin().replace("http:", "https:");
        assertEquals(101, status(cookie, "Origin: " + behindTls), "https is spoken in front of us");
        assertTrue(foreign().size() >= 20, "variants");
    }

    private static int status(String... lines) throws IOException {
        RawScreen.Manner manner = RawScreen.Manner.json();
        for (String line : lines) {
            manner = manner.with(line);
        }
        try (RawScreen screen = new RawScreen(stand.port(), "/ws/boards/pass", manner)) {
            return Integer.parseInt(screen.answer().split(" ", 3)[1]);
        }
    }

    @Test
    void aSocketEndsWithTheSessionThatItWasOpenedWith() throws IOException {
        String cookies = stand.signedIn(Role.COUNTER);
        String session = cookies.substring(cookies.lastIndexOf('=') + 1);
        endsAfter(
                () -> stand.access().signOut(Shown.of(session, "", "")),
                "Cookie: " + cookies,
                "Origin: " + stand.origin());
    }

    @Test
    void aSocketEndsWithItsPerson() throws IOException {
        String id =
                GateStand.value(stand.access().roster().addPerson(Actor.ANYBODY, "Bo", Role.LINE))
                        .id();
        GateStand.value(stand.access().roster().setPin(Actor.ANYBODY, id, GateStand.PIN));
        String device = stand.pair(Use.COUNTER);
        Shown shown = Shown.of("", device, "");
        String session =
                GateStand.value(stand.access().byPin(shown, id, GateStand.PIN)).sessionToken();
        endsAfter(
                () -> GateStand.value(stand.access().roster().endPerson(Actor.ANYBODY, id)),
                "Cookie: sopwell-device=" + device + "; sopwell=" + session,
                "Origin: " + stand.origin());
    }

    @Test
    void aSocketEndsWithItsProgramsToken() throws IOException {
        String token = stand.token(Role.LINE);
        String id = "t" + stand.access().state().tokens().size();
        endsAfter(
                () -> GateStand.value(stand.access().roster().endToken(id)),
                "Authorization: Bearer " + token);
    }

    @Test
    void aSocketEndsWithItsDevice() throws IOException {
        String token = stand.pair(Use.LINE);
        String id = "d" + stand.access().state().devices().size();
        endsAfter(
                () -> GateStand.value(stand.access().roster().endDevice(id)),
                "Cookie: sopwell-device=" + token,
                "Origin: " + stand.origin());
    }

    private static void endsAfter(Runnable end, String... lines) throws IOException {
        RawScreen.Manner manner = RawScreen.Manner.json();
        for (String line : lines) {
            manner = manner.with(line);
        }
        try (RawScreen screen = new RawScreen(stand.port(), "/ws/boards/pass", manner)) {
            assertTrue(screen.answer().startsWith("HTTP/1.1 101 "), screen.answer());
            end.run();
            long from = System.nanoTime();
            while (screen.closeCode() == 0 && System.nanoTime() - from < 2 * END_NANOS_MAX) {
                screen.next(5_000);
            }
            assertEquals(1008, screen.closeCode());
            assertTrue(System.nanoTime() - from < END_NANOS_MAX, "took too long");
        }
    }
}
