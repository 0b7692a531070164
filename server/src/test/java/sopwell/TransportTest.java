package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.storage.DataFolder;
import sopwell.storage.StandFile;

/** When https is spoken, and what is refused. */
class TransportTest {
    private static final Instant NOW = Instant.parse("2026-11-28T12:00:00Z");

    @TempDir Path folder;

    private Transport of(Config.Serve asked) throws Exception {
        try (DataFolder data = DataFolder.open(folder.resolve("stand"))) {
            byte[] stand;
            try (java.io.InputStream in = getClass().getResourceAsStream("/demo/stand.json")) {
                stand = in.readAllBytes();
            }
            return Transport.of(asked, StandFile.read(stand).settings().orElseThrow(), data, NOW);
        }
    }

    private static Config.Serve host(String host) {
        Config.Serve asked = new Config.Serve();
        asked.host = host;
        return asked;
    }

    @Test
    void thisMachineAloneGetsHttpAndOthersGetHttps() throws Exception {
        for (String own : List.of("127.0.0.1", "127.0.0.2", "::1", "localhost")) {
            assertEquals("http", of(host(own)).scheme(), own);
        }
        for (String other : List.of("0.0.0.0", "192.168.7.20", "::")) {
            Transport transport = of(host(other));
            assertEquals("https", transport.scheme(), other);
            assertTrue(transport.trust().isPresent());
        }
    }

    @Test
    void httpToOtherMachinesMustBeAskedForByName() throws Exception {
        Config.Serve asked = host("192.168.7.20");
        asked.plainHttp = true;
        assertEquals("http", of(asked).scheme());
    }

    @Test
    void everyAddressOfTheMachineMeansEveryOneOfThem() throws Exception {
        Config.Serve asked = host("0.0.0.0");
        asked.names.add("Stand.local");
        Set<String> names = of(asked).place(asked).names();
        assertTrue(
                names.containsAll(Set.of("stand.local", "127.0.0.1", "[::1]")), () -> "" + names);
    }

    @Test
    void whatContradictsItselfIsRefused() {
        Config.Serve both = host("192.168.7.20");
        both.plainHttp = true;
        both.tls = true;
        assertThrows(StartRefused.class, () -> of(both));
        Config.Serve half = host("127.0.0.1");
        half.keyStore = folder.resolve("store.p12");
        assertThrows(StartRefused.class, () -> of(half));
        Config.Serve none = host("127.0.0.1");
        none.keyStore = folder.resolve("store.p12");
        none.keyStorePasswordFile = folder.resolve("password");
        assertThrows(StartRefused.class, () -> of(none));
    }

    @Test
    void keysAreForTheirOwnerAlone() throws Exception {
        of(host("192.168.7.20"));
        for (String file : List.of("tls-authority.pem", "tls-stand.pem")) {
            Path path = folder.resolve("stand").resolve(file);
            assertEquals(
                    "rw-------",
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(path)));
        }
    }
}
