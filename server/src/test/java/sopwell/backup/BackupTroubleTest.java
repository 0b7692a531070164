package sopwell.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.backup.BackupState.Warning;
import sopwell.web.StandServer;

/** A place for backups that is full or takes nothing is said, and leaves nothing half made. */
class BackupTroubleTest {
    /** Linux shows its kernel here; there is never any room. */
    private static final Path FULL = Path.of("/sys/kernel");

    @TempDir Path folder;
    @TempDir Path stick;

    @Test
    void aFullDiskIsSaidWithWhatIsFreeAndWhatIsNeeded() throws IOException {
        full();
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(FULL, 14, 8))) {
            assertFalse(backups.makeNow().join());
            assertEquals(Warning.FAILED, backups.state().warning());
            String why = backups.state().failure().orElseThrow().why();
            assertTrue(why.contains("no room") && why.contains("0 MB are free"), why);
        }
    }

    @Test
    void aFolderThatTakesNothingIsSaidUntilItDoes() throws IOException, InterruptedException {
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            readOnly();
            try {
                assertFalse(backups.makeNow().join());
                assertEquals(Warning.FAILED, backups.state().warning());
                assertEquals(0, backups.state().kept());
                String why = backups.state().failure().orElseThrow().why();
                assertTrue(why.contains("can't be written"), why);
            } finally {
                writable();
            }
            assertTrue(backups.makeNow().join());
            assertEquals(Warning.NONE, backups.state().warning());
            assertEquals(1, backups.state().kept());
        }
    }

    @Test
    void whatCannotBeFinishedIsNoBackup() throws IOException {
        // Where the unfinished file would be stands something that can't be thrown away.
        Path part = stick.resolve("millrace-20260115T110000.backup.part");
        Files.writeString(Files.createDirectory(part).resolve("full"), "of something else");
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            assertFalse(backups.makeNow().join());
            assertEquals(Warning.FAILED, backups.state().warning());
            assertEquals(0, backups.state().kept());
            try (Stream<Path> all = Files.list(stick)) {
                assertEquals(List.of(part), all.toList());
            }
        }
    }

    @Test
    void thePageAndTheHealthOfTheStandSaySo() throws IOException {
        full();
        String settings = new String(BackedUp.demo("stand.json"), StandardCharsets.UTF_8);
        String rule = "{\n  \"backup\": {\"folder\": \"" + FULL + "\"},";
        Files.writeString(folder.resolve("stand.json"), settings.replaceFirst("\\{", rule));
        Files.write(folder.resolve("menu.json"), BackedUp.demo("menu.json"));
        try (StandServer stand = StandServer.over(folder)) {
            stand.send(
                    stand.request("/settings/backup")
                            .header("Origin", stand.uri("").toString())
                            .POST(BodyPublishers.noBody())
                            .build());
            String page = stand.get("/settings/backup?lang=en").text();
            assertTrue(page.contains("came to nothing"), page);
            assertTrue(page.contains("There is no room for a backup"), page);
            assertTrue(stand.get("/?lang=es").text().contains("no dio nada"));
            assertEquals(
                    "failed",
                    stand.get("/healthz").json().path("backup").path("warning").textValue());
        }
    }

    private static void full() throws IOException {
        assumeTrue(
                Files.isDirectory(FULL) && Files.getFileStore(FULL).getUsableSpace() == 0,
                "no folder without any room here");
    }

    /** By its permissions, or for a user who stands above those by mounting it so. */
    private void readOnly() throws IOException, InterruptedException {
        Files.setPosixFilePermissions(stick, PosixFilePermissions.fromString("r-xr-xr-x"));
        if (Files.isWritable(stick)) {
            boolean bound = mount("--bind", stick.toString(), stick.toString());
            boolean mounted = bound && mount("-o", "remount,bind,ro", stick.toString());
            assumeTrue(mounted, "this user may write everywhere and mount nothing");
        }
    }

    private void writable() throws IOException, InterruptedException {
        if (new ProcessBuilder("mountpoint", "-q", stick.toString()).start().waitFor() == 0) {
            new ProcessBuilder("umount", stick.toString()).start().waitFor();
        }
        Files.setPosixFilePermissions(stick, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static boolean mount(String... how) throws IOException, InterruptedException {
        List<String> command = Stream.concat(Stream.of("mount"), Stream.of(how)).toList();
        return new ProcessBuilder(command).start().waitFor() == 0;
    }
}
