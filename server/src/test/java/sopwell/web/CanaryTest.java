package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.GateStand;
import sopwell.access.Role;
import sopwell.access.Use;
import sopwell.journal.Lines;

/** What a stand writes of a day holds nothing of those who were there. */
class CanaryTest {
    private static final String GUEST = "Zuleikaguest";
    private static final String STAFF = "Wenzelstaff";
    private static final String CALL = "unicornquesadilla";
    private static final String PIN = "918273";
    private static final String WRONG = "645372";
    private static final String PASSWORD = "canarypassword1";
    private static final String CODE = "CANARYCD";
    private static final String TOKEN = "canarytoken" + "x".repeat(32);
    private static final List<String> CANARIES =
            List.of(GUEST, STAFF, CALL, PIN, WRONG, PASSWORD, CODE, TOKEN, GateStand.PASSWORD);

    private final AtomicLong nanos = new AtomicLong(1);

    /** Everything that is logged in this process, in both forms. */
    private static final class Heard extends Handler {
        private final List<String> plain = new CopyOnWriteArrayList<>();
        private final List<String> json = new CopyOnWriteArrayList<>();

        @Override
        public void publish(LogRecord line) {
            if (Lines.isWorth(line)) {
                plain.add(new Lines(Lines.Form.plain).format(line));
                json.add(new Lines(Lines.Form.json).format(line));
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}

        long of(String event, String... parts) {
            return plain.stream()
                    .filter(line -> line.replace(":", " ").contains(" " + event + " "))
                    .filter(line -> List.of(parts).stream().allMatch(line::contains))
                    .count();
        }
    }

    @Test
    void aDayLeavesNothingOfAnybodyInTheLog() throws IOException {
        Heard heard = new Heard();
        Logger root = Logger.getLogger("");
        root.addHandler(heard);
        try (GateStand stand = new GateStand(nanos::get)) {
            Visitor owner = new Visitor(stand);
            assertEquals(
                    303,
                    owner.post("/sign-in", "how", "owner", "password", GateStand.PASSWORD)
                            .statusCode());
            people(stand, owner);
            guests(stand);
            wrongSecrets(stand, owner);
            tooMany(stand);
        } finally {
            root.removeHandler(heard);
        }
        assertEquals(1, heard.of("access-changed", "change=person-added", "byPerson=s1"));
        assertEquals(1, heard.of("access-changed", "change=pin-set", "person="));
        assertEquals(1, heard.of("access-changed", "change=token-made", "token=t"));
        assertTrue(heard.of("signed-in", "secret=owner", "device=unpaired") >= 1);
        assertEquals(19, heard.of("sign-in-failed", "secret=pin", "person=s", "device=d"));
        assertEquals(1, heard.of("locked-out", "secret=pin", "person=s", "device=d"));
        assertEquals(1, heard.of("sign-in-failed", "secret=owner"));
        assertEquals(1, heard.of("sign-in-failed", "secret=code"));
        assertEquals(1, heard.of("connections-closed", "network=127.0.0.0/24"));
        assertEquals(1, heard.of("stopped"));
        for (String line : heard.json) {
            assertFalse(new JsonMapper().readTree(line).path("event").asText().isEmpty(), line);
        }
        holdsNothing(String.join("", heard.plain) + String.join("", heard.json));
        assertFalse(String.join("", heard.plain).contains("127.0.0.1"), "whole addresses");
    }

    private static void people(GateStand stand, Visitor owner) {
        assertEquals(
                303,
                owner.post("/settings/access/people", "name", STAFF, "role", "counter")
                        .statusCode());
        String id = "s" + stand.access().state().people().size();
        owner.post("/settings/access/people/" + id + "/pin", "pin", PIN);
        owner.post("/settings/access/tokens", "name", STAFF, "role", "watch");
        owner.post("/settings/access/devices", "name", STAFF, "use", "line");
    }

    private static void guests(GateStand stand) {
        String till = stand.token(Role.OWNER);
        for (String body :
                List.of(
                        "{\"call\": \"beef dipped hot\", \"name\": \"" + GUEST + "\"}",
                        "{\"call\": \"2 " + CALL + "\", \"name\": \"" + GUEST + "\"}",
                        "{\"call\": \"beef\", \"name\": \"" + GUEST + "\", \"" + CALL + "\": 1}",
                        "{\"call\": \"beef" + GUEST)) {
            for (String token : List.of(till, TOKEN)) {
                stand.send(
                        stand.request("/api/orders?q=" + GUEST)
                                .header("Authorization", "Bearer " + token)
                                .header("Content-Type", "application/json")
                                .header("Idempotency-Key", StandServer.key())
                                .POST(BodyPublishers.ofString(body))
                                .build());
            }
        }
        stand.send(stand.request("/" + GUEST).header("Authorization", "Bearer " + till).build());
        stand.send(
                stand.request("/orders?q=" + GUEST)
                        .header("Authorization", "Bearer " + till)
                        .build());
    }

    private void wrongSecrets(GateStand stand, Visitor owner) {
        Visitor till = new Visitor(stand);
        String code = GateStand.value(stand.access().roster().offer(STAFF, Use.COUNTER)).code();
        assertEquals(303, till.post("/pair", "code", code).statusCode());
        String person = stand.person(Role.COUNTER);
        for (int times = 0; times < 20; times++) {
            stand.later(1_000_000);
            nanos.addAndGet(3_600_000_000_000L);
            till.post("/sign-in", "person", person, "pin", WRONG);
        }
        nanos.addAndGet(3_600_000_000_000L);
        new Visitor(stand).post("/sign-in", "how", "owner", "password", PASSWORD);
        new Visitor(stand).post("/pair", "code", CODE);
        owner.get("/settings/access");
    }

    /** One address has only so many connections. */
    private static void tooMany(GateStand stand) throws IOException {
        List<Socket> open = new ArrayList<>();
        try {
            boolean closed = false;
            while (!closed && open.size() < 2 * sopwell.Limits.CONNECTIONS_PER_ADDRESS_MAX) {
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), stand.port());
                open.add(socket);
                if (open.size() > sopwell.Limits.CONNECTIONS_PER_ADDRESS_MAX / 2) {
                    socket.setSoTimeout(20);
                    closed = isClosed(socket);
                }
            }
            assertTrue(closed, "one was closed at once");
        } finally {
            for (Socket socket : open) {
                socket.close();
            }
        }
    }

    private static boolean isClosed(Socket socket) {
        try {
            return socket.getInputStream().read() < 0;
        } catch (java.net.SocketTimeoutException stillOpen) {
            return false;
        } catch (IOException reset) {
            return true;
        }
    }

    @Test
    void theProgramWritesOneObjectALine(@TempDir Path folder) throws Exception {
        Path password = Files.writeString(folder.resolve("password"), GateStand.PASSWORD + "\n");
        Process stand =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:+UseSerialGC",
                                "-XX:TieredStopAtLevel=1",
                                "-Xmx160m",
                                "-cp",
                                System.getProperty("java.class.path"),
                                "sopwell.Main",
                                "serve",
                                "--data",
                                folder.resolve("stand").toString(),
                                "--port",
                                "0",
                                "--log",
                                "json",
                                "--owner-password-file",
                                password.toString())
                        .start();
        List<String> lines = new ArrayList<>();
        try (BufferedReader said =
                new BufferedReader(
                        new InputStreamReader(stand.getErrorStream(), StandardCharsets.UTF_8))) {
            String address = "";
            while (address.isEmpty()) {
                lines.add(said.readLine());
                JsonNode line = new JsonMapper().readTree(lines.get(lines.size() - 1));
                address = line.at("/fields/address").asText();
            }
            wrongPassword(address);
            stand.toHandle().destroy();
            said.lines().forEach(lines::add);
            byte[] out = stand.getInputStream().readAllBytes();
            assertEquals("", new String(out, StandardCharsets.UTF_8));
            assertTrue(stand.waitFor(20, TimeUnit.SECONDS));
        } finally {
            stand.destroyForcibly();
        }
        List<String> events = new ArrayList<>();
        for (String line : lines) {
            JsonNode read = new JsonMapper().readTree(line);
            assertTrue(
                    read.path("time").asText().matches("\\d{4}-\\d\\d-\\d\\dT.*\\.\\d{3}Z"), line);
            events.add(read.path("event").asText());
        }
        assertTrue(events.containsAll(List.of("listening", "sign-in-failed")), "" + events);
        holdsNothing(String.join("\n", lines));
    }

    private static void wrongPassword(String address) throws Exception {
        int status =
                HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(address + "/sign-in"))
                                        .header("Origin", address)
                                        .header("Content-Type", "application/x-www-form-urlencoded")
                                        .POST(
                                                BodyPublishers.ofString(
                                                        "how=owner&password=" + PASSWORD))
                                        .build(),
                                BodyHandlers.ofString())
                        .statusCode();
        assertTrue(status >= 400, "it was not let in: " + status);
    }

    private static void holdsNothing(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        for (String canary : CANARIES) {
            assertFalse(lower.contains(canary.toLowerCase(Locale.ROOT)), canary + " in " + text);
        }
        assertFalse(text.contains(GateStand.PIN + " "), text);
    }
}
