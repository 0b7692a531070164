package sopwell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sopwell.desk.Answer;
import sopwell.desk.Desk;
import sopwell.desk.NameErasing;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.log.Kept;
import sopwell.menu.Selection;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.StandSettings;
import sopwell.storage.DataFolder;
import sopwell.storage.FolderFault;
import sopwell.storage.NamesOnDisk;
import sopwell.storage.SqliteLog;
import sopwell.storage.StandFile;
import sopwell.till.Drawer;
import sopwell.web.Fingerprint;

/**
 * A data folder of each form that the log ever had, written by the Sopwell of its time through its
 * own interface: today's goes on with it as if it had written it itself.
 */
class GoldenFoldersTest {
    private static final int NEWEST = 6;
    private static final LocalDate DATE = LocalDate.of(2026, 11, 28);

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, NEWEST})
    void anOldFolderIsGoneOnWith(int schema) throws IOException {
        JsonNode expected = copied(schema);
        StandSettings settings = settings();
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog(settings.stand())) {
            Stand stand = Replay.newestDay(log, settings, event -> {});
            data.checkOf(settings.stand()).newest(log.lastSeq(), log.lastSeq());
            assertOrders(expected, stand);
            assertMoney(expected, stand);
            Instant now = Instant.ofEpochMilli(stand.atMs() + 60_000);
            try (Desk desk = new Desk(log, settings, () -> now, events -> {})) {
                assertAnswered(expected, log, desk);
                assertEquals(5, next(desk), "the next order has the next number");
            }
            data.checkOf(settings.stand()).newest(log.lastSeq(), log.lastSeq());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, NEWEST})
    void namesAreErasedInAnOldFolder(int schema) throws IOException {
        copied(schema);
        StandSettings settings = settings();
        assertFalse(NamesOnDisk.with(folder, "\"Oskar\"").isEmpty());
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog(settings.stand())) {
            Stand before = Replay.newestDay(log, settings, event -> {});
            Instant now = Instant.ofEpochMilli(before.atMs() + 60_000);
            try (Desk desk = new Desk(log, settings, () -> now, events -> {})) {
                NameErasing erasing = new NameErasing(log, desk::submit, date -> {}, date -> {});
                assertEquals(3, erasing.guests(DATE, Optional.empty()));
                assertEquals(3, erasing.staff(DATE, name -> false, Optional.empty()));
            }
            Stand after = Replay.newestDay(log, settings, event -> {});
            for (Order order : after.orders().all()) {
                assertEquals("", order.name());
                Order was = before.orders().find(order.id()).orElseThrow();
                assertEquals(was.totals(), order.totals());
                assertEquals(before.till().dueCents(was), after.till().dueCents(order));
            }
            assertEquals("#1", after.till().open().get(0).cashier());
            data.checkOf(settings.stand()).newest(log.lastSeq(), log.lastSeq());
        }
        assertEquals(List.of(), NamesOnDisk.with(folder, "Ines"));
        assertEquals(List.of(), NamesOnDisk.with(folder, "Oskar"));
        assertEquals(List.of(), NamesOnDisk.with(folder, "Petra"));
    }

    @Test
    void aNewerFolderIsLeftAsItIs() throws IOException, SQLException {
        copied(NEWEST);
        Path log = folder.resolve("log.sqlite");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + log);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("PRAGMA user_version = " + (NEWEST + 1));
        }
        byte[] before = Files.readAllBytes(log);
        try (DataFolder data = DataFolder.open(folder)) {
            FolderFault fault =
                    assertThrows(FolderFault.class, () -> data.openLog(settings().stand()));
            assertTrue(fault.getMessage().contains("newer Sopwell"), fault.getMessage());
        }
        assertArrayEquals(before, Files.readAllBytes(log));
    }

    private static void assertOrders(JsonNode expected, Stand stand) {
        assertEquals(expected.get("orders").size(), stand.orders().all().size());
        for (JsonNode one : expected.get("orders")) {
            String id = one.get("order").asText();
            Order order = stand.orders().find(id).orElseThrow();
            assertEquals(one.get("number").asInt(), order.number(), id);
            assertEquals(one.get("name").asText(), order.name(), id);
            assertEquals(one.get("version").asInt(), order.version(), id);
            assertEquals(one.get("state").asText().equals("void"), order.isVoid(), id);
            assertEquals(one.get("totalCents").asLong(), order.totals().totalCents(), id);
            assertEquals(one.get("dueCents").asLong(), stand.till().dueCents(order), id);
        }
    }

    private static void assertMoney(JsonNode expected, Stand stand) {
        List<Drawer> tills = stand.till().open();
        assertEquals(1, tills.size());
        Drawer till = tills.get(0);
        assertEquals(expected.get("cashier").asText(), till.cashier());
        assertEquals(expected.get("cashCents").asLong(), till.takings().cashCents());
        assertEquals(expected.get("cardCents").asLong(), till.takings().cardCents());
        assertEquals(expected.get("expectedCents").asLong(), till.expectedCents());
    }

    /** What was asked then, as the interface would ask the desk today. */
    private static void assertAnswered(JsonNode expected, SqliteLog log, Desk desk) {
        assertEquals(9, expected.get("calls").size());
        for (JsonNode call : expected.get("calls")) {
            String key = call.get("key").asText();
            String asked =
                    new Fingerprint()
                            .add("POST".getBytes(StandardCharsets.UTF_8))
                            .add(call.get("path").asText().getBytes(StandardCharsets.UTF_8))
                            .add(call.get("body").asText().getBytes(StandardCharsets.UTF_8))
                            .hex();
            Kept kept = log.find(key).orElseThrow();
            StandCommand any = new StandCommand.ForOrders(new OrderCommand.OpenDay());
            Answer again = desk.submit(key, asked, any).join();
            assertEquals(Answer.Outcome.REPEATED, again.outcome(), key);
            assertEquals(kept.events().get(0), again.events().get(0), key);
            Answer other = desk.submit(key, asked + "-other", any).join();
            assertEquals(Answer.Outcome.KEY_REUSED, other.outcome(), key);
        }
    }

    private static int next(Desk desk) {
        Asked fries = new Asked(1, new Selection("fries", "", List.of(), List.of()));
        Answer answer =
                desk.submit(
                                "next",
                                "next",
                                new StandCommand.ForOrders(
                                        new OrderCommand.Place("", true, List.of(fries))))
                        .join();
        assertEquals(Optional.empty(), answer.refusal());
        OrderPlaced placed = (OrderPlaced) answer.events().get(0).event();
        assertEquals("20261128-0005", placed.order());
        return placed.number();
    }

    private StandSettings settings() throws IOException {
        return StandFile.read(Files.readAllBytes(folder.resolve("stand.json")))
                .settings()
                .orElseThrow();
    }

    /** The folder as it was left then, and what its interface said of it. */
    private JsonNode copied(int schema) throws IOException {
        Path golden =
                Path.of(System.getProperty("sopwell.basedir"))
                        .resolve("server/src/test/resources/golden/schema-" + schema);
        try (Stream<Path> files = Files.list(golden)) {
            for (Path file : files.filter(f -> !f.endsWith("expected.json")).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        return new JsonMapper().readTree(Files.readAllBytes(golden.resolve("expected.json")));
    }
}
