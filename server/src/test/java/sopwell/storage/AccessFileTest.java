package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.access.AccessState;
import sopwell.access.Device;
import sopwell.access.Person;
import sopwell.access.ProgramToken;
import sopwell.access.Role;
import sopwell.access.Session;
import sopwell.access.Tries;
import sopwell.access.Use;

/** Who may do what, as it is kept in a file. */
class AccessFileTest {
    private static final AccessState STATE =
            new AccessState(
                    List.of(
                            new Person(
                                    "s1", "Olga \"O\" <b>", Role.OWNER, "", "argon2id$x", false, 0),
                            new Person(
                                    "s2", "Añá \u2028 😀", Role.LINE, "argon2id$y", "", false, 0),
                            new Person("s3", "", Role.LEAD, "", "", true, 1_700_000_000_000L)),
                    List.of(
                            new Device(
                                    "d1", "till", Use.COUNTER, "ab12", 1_790_000_000_000L, false),
                            new Device("d2", "", Use.GUESTS, "cd34", 0, true)),
                    List.of(new ProgramToken("t1", "phone", Role.COUNTER, "ef56", 7, false)),
                    List.of(new Session("aa", "s2", "d1", 1, 2, Long.MAX_VALUE)),
                    Map.of("s2@d1/pin", new Tries(19, 1_790_000_900_000L)));

    @Test
    void isReadAsItWasWritten() {
        for (AccessState state : List.of(STATE, AccessState.EMPTY)) {
            AccessReading read = AccessFile.read(AccessFile.write(state));
            assertEquals(List.of(), read.faults());
            assertEquals(Optional.of(state), read.state());
            assertArrayEquals(AccessFile.write(state), AccessFile.write(read.state().get()));
        }
    }

    @Test
    void nobodyButTheFoldersOwnerReadsIt(@TempDir Path work) throws IOException {
        Path data = work.resolve("stand");
        try (DataFolder folder = DataFolder.open(data)) {
            for (int i = 0; i < 2; i++) {
                folder.putAccess(AccessFile.write(STATE));
                Path file = data.resolve("access.json");
                String mode = PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
                assertEquals("rw-------", mode);
                assertArrayEquals(AccessFile.write(STATE), Files.readAllBytes(file));
            }
        }
    }

    @Test
    void whatIsCutShortIsAFaultAndNeverAnOpenStand() {
        byte[] whole = AccessFile.write(STATE);
        int end =
                new String(whole, StandardCharsets.UTF_8)
                        .stripTrailing()
                        .getBytes(StandardCharsets.UTF_8)
                        .length;
        for (int length = 0; length < end; length++) {
            AccessReading read = AccessFile.read(Arrays.copyOf(whole, length));
            assertTrue(read.state().isEmpty(), "cut at " + length);
            assertFalse(read.faults().isEmpty(), "cut at " + length);
        }
    }

    @Test
    void whatIsNotOursIsAFault() {
        String good = new String(AccessFile.write(STATE), StandardCharsets.UTF_8);
        for (String[] change :
                List.of(
                        new String[] {"\"owner\"", "\"king\""},
                        new String[] {"\"counter\",\n    \"token\"", "\"shed\",\n    \"token\""},
                        new String[] {"\"ended\" : true", "\"ended\" : \"no\""},
                        new String[] {"\"count\" : 19", "\"count\" : \"few\""},
                        new String[] {"\"people\"", "\"persons\""},
                        new String[] {"\"id\" : \"s1\"", "\"id\" : 1"})) {
            String bad = good.replace(change[0], change[1]);
            assertFalse(bad.equals(good), change[0]);
            AccessReading read = AccessFile.read(bad.getBytes(StandardCharsets.UTF_8));
            assertTrue(read.state().isEmpty(), change[1]);
        }
    }
}
