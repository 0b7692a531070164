package sopwell.abuse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.Limits;
import sopwell.TestStand;

/** The short form of {@link AbuseMain}. */
class AbuseTest {
    /** Generous for a busy machine; one blocked by the siege would wait for seconds. */
    private static final double ORDER_MILLIS_P99_MAX = 1_000;

    @TempDir static Path data;

    private static TestStand stand;
    private static Target target;

    @BeforeAll
    static void open() {
        stand = TestStand.start(data, Limits.CONNECTIONS_PER_ADDRESS_MAX);
        int port = URI.create(stand.address()).getPort();
        target = new Target(InetAddress.getLoopbackAddress(), port);
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @Test
    void refusesEveryProbeWithoutShowingItsInsides() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<Probe> probes = Probe.all(target);
        for (Probe probe : probes) {
            String found = AbuseMain.wrongWith(probe, target.exchange(probe.request()));
            if (!found.isEmpty()) {
                wrong.add(found);
            }
        }
        assertTrue(probes.size() >= 230, "probes: " + probes.size());
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void closesWhatSendsABodyByDropsWhileOrdersGoOn() throws Exception {
        Siege.Outcome outcome = new Siege(target).run(Siege.Manner.BODY, 100);
        assertEquals(0, outcome.leftOpen(), outcome::toString);
        assertTrue(outcome.slowestClosedMillis() <= 7_000, outcome::toString);
        assertTrue(outcome.p99Millis() <= ORDER_MILLIS_P99_MAX, outcome::toString);
        assertEquals(0, outcome.failed(), outcome::toString);
    }

    @Test
    void closesTheConnectionsThatOneAddressHasTooMany() throws IOException {
        List<Socket> open = new ArrayList<>();
        try {
            for (int i = 0; i < Limits.CONNECTIONS_PER_ADDRESS_MAX; i++) {
                Socket socket = target.connect(200);
                open.add(socket);
                // Once it is answered it is counted: connections are taken by several threads.
                Target.send(socket, "GET /healthz HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n");
                assertEquals('H', socket.getInputStream().read());
            }
            try (Socket tooMany = target.connect(200)) {
                assertEquals("", Target.rest(tooMany), "closed without a word");
            }
            try (Socket other = target.connect(201)) {
                Target.send(other, "nonsense\r\n\r\n");
                assertEquals(400, Target.status(Target.rest(other)), "others come through");
            }
        } finally {
            for (Socket socket : open) {
                socket.close();
            }
        }
    }

    @Test
    void closesASocketThatSaysTooMuchAndSlowsOneThatSaysItTooOften() throws IOException {
        Sockets sockets = new Sockets(target);
        assertEquals(1009, sockets.closeCode(8_193, 1));
        assertEquals(1009, sockets.closeCode(8_193, 3));
        int pongs = sockets.pongs(3_000, 2_500);
        int most = Limits.SOCKET_FRAMES_BURST_MAX + 5 * Limits.SOCKET_FRAMES_PER_SECOND_MAX;
        assertTrue(pongs > 0 && pongs <= most, "answered " + pongs);
    }
}
