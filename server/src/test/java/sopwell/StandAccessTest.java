package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.access.Actor;
import sopwell.access.Noting;
import sopwell.access.Role;
import sopwell.access.Shown;
import sopwell.storage.DataFolder;

/** The owner's password from the command line, and what a stand does not start on. */
class StandAccessTest {
    private static final InstantSource CLOCK = InstantSource.system();

    @TempDir Path work;

    private Path secret(String text) throws IOException {
        return Files.writeString(work.resolve("secret"), text);
    }

    private Path data() {
        return work.resolve("stand");
    }

    private Config.Serve serve(String host) {
        Config.Serve asked = new Config.Serve();
        asked.data = data();
        asked.host = host;
        asked.port = 0;
        asked.startWith = Config.StartWith.menu;
        return asked;
    }

    private boolean isLetIn(String password) throws StartRefused {
        try (DataFolder folder = DataFolder.open(data());
                StandAccess access = StandAccess.start(folder, serve("127.0.0.1"), CLOCK)) {
            return access.access()
                    .byOwner(Shown.NOTHING, password, owner -> Noting.NOWHERE)
                    .join()
                    .isDone();
        }
    }

    private void owner(String password) throws IOException, InterruptedException {
        String file = secret(password).toString();
        Main.main(new String[] {"owner", "--data", data().toString(), "--password-file", file});
    }

    @Test
    void thePasswordFileCountsAlsoWhereSomebodyWasTakenOnBefore() throws Exception {
        try (DataFolder folder = DataFolder.open(data());
                StandAccess open = StandAccess.start(folder, serve("127.0.0.1"), CLOCK)) {
            assertTrue(open.access().roster().addPerson(Actor.ANYBODY, "Ana", Role.LINE).isDone());
        }
        Config.Serve asked = serve("127.0.0.1");
        asked.ownerPasswordFile = secret("a good password");
        try (DataFolder folder = DataFolder.open(data());
                StandAccess closed = StandAccess.start(folder, asked, CLOCK)) {
            assertFalse(closed.access().isOpen());
        }
        assertTrue(isLetIn("a good password"));
    }

    @Test
    void theCommandSetsThePasswordAndSetsItAnew() throws Exception {
        owner("a good password\nand another line");
        assertTrue(isLetIn("a good password"));
        owner("un año más 😀\n");
        assertTrue(isLetIn("un año más 😀"));
        assertFalse(isLetIn("a good password"));
        String kept = Files.readString(data().resolve("access.json"));
        assertFalse(kept.contains("good password") || kept.contains("año más"), kept);
    }

    @Test
    void aPasswordThatIsNoneChangesNothing() throws Exception {
        owner("a good password");
        byte[] before = Files.readAllBytes(data().resolve("access.json"));
        Config.Owner asked = new Config.Owner();
        asked.data = data();
        for (String bad : List.of("", "\n", "seven77", "x".repeat(129))) {
            asked.passwordFile = secret(bad);
            StartRefused refused =
                    assertThrows(StartRefused.class, () -> StandAccess.setOwner(asked, "", CLOCK));
            assertTrue(refused.getMessage().contains("8 to 128 characters"), bad);
        }
        asked.passwordFile = work.resolve("none");
        assertThrows(StartRefused.class, () -> StandAccess.setOwner(asked, "", CLOCK));
        assertEquals(
                List.of(before.length, java.util.Arrays.hashCode(before)),
                List.of(
                        Files.readAllBytes(data().resolve("access.json")).length,
                        java.util.Arrays.hashCode(
                                Files.readAllBytes(data().resolve("access.json")))));
    }

    @Test
    void withoutAnOwnerItStartsForThisMachineAlone() throws Exception {
        for (String host :
                List.of(
                        "0.0.0.0",
                        "::",
                        "192.168.1.20",
                        "10.0.0.1",
                        "stand.local",
                        "127.0.0.1.evil.example",
                        "localhost.evil.example")) {
            assertRefusedToStart(host);
        }
        for (String host : List.of("127.0.0.1", "127.9.9.9", "localhost", "::1", "[::1]")) {
            try (DataFolder folder = DataFolder.open(data());
                    StandAccess access = StandAccess.start(folder, serve(host), CLOCK)) {
                assertTrue(access.access().isOpen(), host);
            }
        }
        owner("a good password");
        try (DataFolder folder = DataFolder.open(data());
                StandAccess access = StandAccess.start(folder, serve("0.0.0.0"), CLOCK)) {
            assertFalse(access.access().isOpen());
        }
    }

    private void assertRefusedToStart(String host) throws StartRefused {
        try (DataFolder folder = DataFolder.open(data())) {
            StartRefused refused =
                    assertThrows(
                            StartRefused.class,
                            () -> StandAccess.start(folder, serve(host), CLOCK),
                            host);
            assertTrue(refused.getMessage().contains("sopwell owner --data"), host);
            assertEquals(1, refused.getMessage().lines().count());
        }
    }

    @Test
    void theWholeStandRefusesToo() {
        StartRefused refused =
                assertThrows(
                        StartRefused.class,
                        () ->
                                RunningStand.start(
                                        serve("0.0.0.0"),
                                        new RunningStand.Clocks(CLOCK, System::nanoTime),
                                        DiskWatch.Disk.of(data())));
        assertTrue(refused.getMessage().contains("nobody has a password yet"), refused.toString());
    }

    @Test
    void aDamagedFileIsRefusedInOneLineAndLeftAsItIs() throws Exception {
        owner("a good password");
        Path file = data().resolve("access.json");
        String whole = Files.readString(file);
        for (String damaged :
                List.of("", "{", "{}", "[]", "null", whole.substring(9), whole.replace("s1", ""))) {
            Files.writeString(file, damaged);
            try (DataFolder folder = DataFolder.open(data())) {
                StartRefused refused =
                        assertThrows(
                                StartRefused.class,
                                () -> StandAccess.start(folder, serve("127.0.0.1"), CLOCK),
                                damaged);
                assertTrue(refused.getMessage().startsWith("access.json can't be read: "));
                assertEquals(1, refused.getMessage().lines().count(), refused.getMessage());
            }
            assertEquals(damaged, Files.readString(file));
        }
    }
}
