package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A box that starts without knowing the time sells on, and its pages say what to do. */
class BoxClockTest {
    private static final long LUNCH = Instant.parse("2026-01-14T18:00:00Z").toEpochMilli();

    @TempDir Path folder;
    private final AtomicLong boxMs = new AtomicLong(LUNCH);
    private final InstantSource box = () -> Instant.ofEpochMilli(boxMs.get());

    @Test
    void aBoxThatStartsIn1970SellsOnAndSaysThatItsClockIsWrong() {
        StandServer before = StandServer.over(folder, box);
        String first = before.place("fries").path("order").textValue();
        before.stop();

        boxMs.set(7_000);
        try (StandServer stand = StandServer.over(folder, box)) {
            assertEquals("behind", clock(stand).path("box").textValue());
            String home = stand.get("/?lang=en").text();
            assertTrue(home.contains("The clock of this box says"), home);
            assertTrue(home.contains("Connect the box to the internet"), home);
            String es = stand.get("/?lang=es").text();
            assertTrue(es.contains("Conecte la máquina a internet"), es);
            JsonNode second = stand.place("fries");
            assertEquals("20260114-0001", first);
            assertEquals("20260114-0002", second.path("order").textValue(), "the day goes on");
            JsonNode kept = stand.get("/api/orders/20260114-0002").json();
            assertTrue(Instant.parse(kept.path("placedAt").asText()).toEpochMilli() >= LUNCH);

            boxMs.set(LUNCH + 1_200_000);
            long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
            while (!clock(stand).path("box").textValue().equals("right")
                    && System.nanoTime() < until) {
                Thread.onSpinWait();
            }
            assertTrue(clock(stand).path("standMs").longValue() >= LUNCH + 1_200_000);
            assertFalse(stand.get("/?lang=en").text().contains("The clock of this box"));
            assertEquals(
                    "20260114-0003", stand.place("fries").path("order").textValue(), "one day");
        }
    }

    private static JsonNode clock(StandServer stand) {
        return stand.get("/healthz").json().path("clock");
    }
}
