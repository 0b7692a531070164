package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.Check;
import sopwell.audit.AuditEvent.DoneBy;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.audit.AuditEvent.Of;
import sopwell.audit.Who;
import sopwell.log.Blanked;
import sopwell.log.Blanking;
import sopwell.log.Entry;
import sopwell.log.LogFault;
import sopwell.log.Renaming.Place;

/** What is left of an event without its name is checked like any other; and nobody can guess. */
class ErasedNamesTest {
    private static final String NAME = "Xaveria";
    private static final int ORDERS = 40;

    @TempDir Path folder;
    private String hashes;

    @BeforeEach
    void namesWereErased() {
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            for (int n = 1; n <= ORDERS; n++) {
                log.append(List.of(Samples.entry(n, Samples.placed(n, NAME + n))));
            }
            hashes = RowHashes.of(folder, "millrace").toString();
            Blanked blanked = log.prepare(all(log)).orElseThrow();
            assertEquals(ORDERS, blanked.names());
            log.append(List.of(Samples.entry(100, said(blanked.digest()))));
            log.append(List.of(Samples.entry(101, Samples.placed(101, "Wendelin"))));
        }
    }

    @Test
    void theChainHoldsAsItWasWritten() {
        check();
        String now = RowHashes.of(folder, "millrace").subList(0, ORDERS).toString();
        assertEquals(hashes, now, "no hash is another one than before");
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            assertEquals(ORDERS + 2, EventLogContract.all(log).size());
            assertEquals(Samples.placed(7, ""), EventLogContract.all(log).get(6).event());
        }
    }

    @Test
    void noByteOfANameIsLeft() throws IOException {
        assertEquals(List.of(), NamesOnDisk.with(folder, NAME));
        assertFalse(NamesOnDisk.with(folder, "Wendelin").isEmpty(), "what stays is found so");
    }

    @Test
    void whatIsLeftCanNotBeAltered() throws SQLException {
        found(7, "UPDATE events SET body = replace(body, '790', '970') WHERE seq = 7");
        found(7, "UPDATE events SET at_ms = at_ms + 1 WHERE seq = 7");
        found(7, "UPDATE events SET fingerprint = 'another' WHERE seq = 7");
        found(7, "UPDATE events SET salt = randomblob(16) WHERE seq = 7");
        found(7, "UPDATE erased SET proof = randomblob(32) WHERE seq = 7");
        found(7, "DELETE FROM erased WHERE seq = 7");
        found(7, "UPDATE events SET hash = randomblob(32) WHERE seq = 7");
        found(7, "DELETE FROM events WHERE seq = 7");
    }

    /**
     * Whoever makes a body and its proof fit each other has the event of the erasing against them.
     */
    @Test
    void aProofThatWasMadeToFitIsFound() throws SQLException {
        try (SqliteReader reader = new SqliteReader(folder.resolve("log.sqlite"), "millrace")) {
            LogRow row = reader.rows(7, 7, 1).get(0);
            byte[] body =
                    new String(row.body(), StandardCharsets.UTF_8)
                            .replace("790", "970")
                            .getBytes(StandardCharsets.UTF_8);
            LogRow forged = row.blanked(new LogRow.Chain("millrace"), body);
            try (Connection connection = connection();
                    PreparedStatement alter =
                            connection.prepareStatement(
                                    "UPDATE events SET body = ? WHERE seq = 7");
                    PreparedStatement prove =
                            connection.prepareStatement(
                                    "UPDATE erased SET proof = ? WHERE seq = 7")) {
                alter.setString(1, new String(body, StandardCharsets.UTF_8));
                prove.setBytes(1, forged.proof());
                assertEquals(1, alter.executeUpdate());
                assertEquals(1, prove.executeUpdate());
            }
        }
        assertTrue(fault().contains("event " + (ORDERS + 1) + ": what names were taken out of"));
    }

    @Test
    void aProofOfWhichNoEventSpeaksIsFound() throws SQLException {
        run("UPDATE erased SET by_seq = " + (ORDERS + 2) + " WHERE seq = 7");
        assertTrue(fault().contains("event 7: no event says that names were taken out of it"));
    }

    /** Old events have no chance beside them: there a name can be tried against the hash. */
    @Test
    void nobodyCanTryNamesAgainstWhatIsLeft() {
        LogRow.Chain chain = new LogRow.Chain("millrace");
        try (SqliteReader reader = new SqliteReader(folder.resolve("log.sqlite"), "millrace")) {
            LogRow before = reader.rows(6, 6, 1).get(0);
            LogRow row = reader.rows(7, 7, 1).get(0);
            LogRow tried =
                    new LogRow(
                            7,
                            row.atMs(),
                            row.kind(),
                            row.version(),
                            row.key(),
                            "fingerprint-7",
                            0,
                            EventCodec.encode(Samples.placed(7, NAME + 7)),
                            row.hash(),
                            row.salt(),
                            null);
            assertEquals(null, row.salt(), "the chance went with the name");
            assertFalse(tried.follows(chain, before.hash()), "the right name is no hit");
            byte[] unsalted = tried.hashed(chain, before.hash()).hash();
            assertArrayEquals(unsalted, tried.hashed(chain, before.hash()).hash());
        }
    }

    @Test
    void nothingGoesThatWasNotPrepared() {
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            assertThrows(
                    Check.Broken.class,
                    () -> log.append(List.of(Samples.entry(200, said("0".repeat(64))))));
            assertEquals(Optional.empty(), log.prepare(new Blanking(1, ORDERS, "", (p, t) -> "")));
        }
        check();
    }

    @Test
    void damageIsNotTakenForWhatWasErased() throws SQLException {
        run("UPDATE events SET body = replace(body, '790', '970') WHERE seq = " + (ORDERS + 2));
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            assertThrows(LogFault.class, () -> log.prepare(all(log)));
        }
    }

    private static Blanking all(SqliteLog log) {
        return new Blanking(
                1, log.lastSeq(), "", (place, text) -> place == Place.GUEST ? "" : text);
    }

    private static NamesErased said(String digest) {
        return new NamesErased(Of.GUESTS, LocalDate.of(2025, 5, 3), "", 1, ORDERS, ORDERS, digest);
    }

    private void check() {
        new LogCheck(folder.resolve("log.sqlite"), "millrace").newest(ORDERS + 2, ORDERS + 2);
    }

    private String fault() {
        return assertThrows(LogFault.class, this::check).getMessage();
    }

    /** Alters, expects the fault at that place, and puts everything back. */
    private void found(long seq, String sql) throws SQLException {
        run("CREATE TABLE kept AS SELECT * FROM events");
        run("CREATE TABLE proofs AS SELECT * FROM erased");
        run(sql);
        String said =
                assertThrows(
                                LogFault.class,
                                () ->
                                        new LogCheck(folder.resolve("log.sqlite"), "millrace")
                                                .range(1, ORDERS + 2),
                                sql)
                        .getMessage();
        assertTrue(said.contains("event " + seq + ":"), sql + ": " + said);
        run("DELETE FROM events");
        run("INSERT INTO events SELECT * FROM kept");
        run("DELETE FROM erased");
        run("INSERT INTO erased SELECT * FROM proofs");
        run("DROP TABLE kept");
        run("DROP TABLE proofs");
        check();
    }

    /** Chance that stayed with what somebody did would let names be tried on what they did. */
    @Test
    void eachRowHasChanceOfItsOwnAndARowWithoutNamesHasNone() {
        Entry paid =
                new Entry(
                        5_000,
                        "key",
                        "print",
                        List.of(
                                Samples.placed(1, NAME),
                                Samples.placed(2, NAME),
                                new DoneBy(new Who("s3", "d2", "", "lead"))));
        NameWiper wiper = new NameWiper();
        assertFalse(Arrays.equals(wiper.salt(paid, 0), wiper.salt(paid, 1)));
        assertEquals(null, wiper.salt(paid, 2));
    }

    private Connection connection() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("log.sqlite"));
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = connection();
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }
}
