package sopwell.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import sopwell.desk.DaysDesk;
import sopwell.orders.StandSettings;
import sopwell.storage.BackupRule;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;
import sopwell.storage.StandFile;

/** A stand's folder with its log open, a desk that fills it, and backups by one's own clock. */
final class BackedUp implements AutoCloseable {
    static final LocalDate FIRST = LocalDate.of(2026, 1, 14);

    final DataFolder data;
    final SqliteLog log;
    final DaysDesk desk;
    volatile Instant now = Instant.parse("2026-01-15T11:00:00Z");

    BackedUp(Path folder) {
        data = DataFolder.open(folder);
        if (data.stand().isEmpty()) {
            data.putStand(demo("stand.json"));
            data.putMenu(demo("menu.json"));
            data.putRecipes(demo("recipes.json"));
        }
        log = data.openLog(settings().stand());
        desk = new DaysDesk(log, FIRST);
    }

    /** The demo's settings. */
    static StandSettings settings() {
        return StandFile.read(demo("stand.json")).settings().orElseThrow();
    }

    /** Backups that are not started: they are made when they are asked for. */
    Backups backups(BackupRule rule) {
        return new Backups(
                new Backups.Source(data, log, settings(), rule), () -> now, System::nanoTime);
    }

    static BackupRule into(Path folder, int days, int weeks) {
        return new BackupRule(folder.toString(), 4, days, weeks);
    }

    static byte[] demo(String name) {
        try (InputStream in = BackedUp.class.getResourceAsStream("/demo/" + name)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public void close() {
        desk.close();
        log.close();
        data.close();
    }
}
