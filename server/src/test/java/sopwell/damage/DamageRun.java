package sopwell.damage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import sopwell.desk.Script;
import sopwell.desk.StandCommand;
import sopwell.desk.SteppedDesk;
import sopwell.desk.SteppedDesk.Asking;
import sopwell.log.LogFault;
import sopwell.orders.OrderCommand;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;

/**
 * Makes a log, damages copies of its files one way each, and holds what Sopwell finds when it
 * starts and checks against what can be read out of them without Sopwell.
 */
final class DamageRun {
    private static final int ORDERS = 240;
    private static final int PAGE_BYTES = 4_096;
    private static final int SECTOR_BYTES = 512;
    private static final String LOG = "log.sqlite";
    private static final String AHEAD = "log.sqlite-wal";

    /** How the names of damages to that file end. */
    private static final String AHEAD_NAMES = "_AHEAD";

    private final Path work;
    private final SplittableRandom random;

    /** What is done to a file. */
    enum Damage {
        FLIPPED_BIT,
        ZEROED_SECTOR,
        SWAPPED_PAGES,
        FLIPPED_BIT_AHEAD,
        ZEROED_SECTOR_AHEAD,
        CUT_AHEAD
    }

    /**
     * What a run came to.
     *
     * @param cases damages that were done
     * @param changing those that changed or hid something
     * @param silent those of them that were not found
     * @param falseAlarms those that changed nothing and were called damage
     * @param byDamage how many were changing, of each
     */
    record Result(
            int cases,
            int changing,
            List<String> silent,
            List<String> falseAlarms,
            Map<Damage, Integer> byDamage) {}

    DamageRun(Path work, long seed) {
        this.work = work;
        this.random = new SplittableRandom(seed);
    }

    Result run(int cases) throws IOException, SQLException {
        Path sound = work.resolve("sound");
        Path ahead = work.resolve("ahead");
        make(sound, ahead);
        List<String> before = Contents.of(copied(sound));
        List<String> beforeAhead = Contents.of(copied(ahead));
        List<String> silent = new ArrayList<>();
        List<String> falseAlarms = new ArrayList<>();
        Map<Damage, Integer> byDamage = new EnumMap<>(Damage.class);
        int changing = 0;
        for (int i = 0; i < cases; i++) {
            Damage damage = Damage.values()[i % Damage.values().length];
            boolean onAhead = damage.name().endsWith(AHEAD_NAMES);
            Path image = copied(onAhead ? ahead : sound);
            String what = damage + " " + damage(image.resolve(onAhead ? AHEAD : LOG), damage);
            String changed = changed(image, onAhead ? beforeAhead : before);
            String found = found(image);
            if (!changed.isEmpty()) {
                changing++;
                byDamage.merge(damage, 1, Integer::sum);
            }
            if (!changed.isEmpty() && found.isEmpty()) {
                silent.add(what + ": " + changed);
            } else if (changed.isEmpty() && !found.isEmpty() && Contents.isSound(image)) {
                falseAlarms.add(what + ": " + found);
            }
            delete(image);
        }
        return new Result(cases, changing, silent, falseAlarms, byDamage);
    }

    /** One log that was closed, and one whose server was killed before it moved anything. */
    private void make(Path sound, Path ahead) throws IOException {
        try (DataFolder folder = DataFolder.open(sound);
                SqliteLog log = folder.openLog(Script.SETTINGS.stand())) {
            Script script = new Script();
            SteppedDesk desk = new SteppedDesk(log, Script.SETTINGS, () -> instant(script));
            run(desk, "menu", new StandCommand.AdoptMenu(script.menu()));
            for (int i = 0; i < ORDERS; i++) {
                List<sopwell.orders.Asked> lines = script.asked("2 beef dipped hot, fries");
                OrderCommand place = new OrderCommand.Place("", true, lines);
                run(desk, "key-" + i, new StandCommand.ForOrders(place));
            }
            copy(sound, ahead);
        }
    }

    private static java.time.Instant instant(Script script) {
        return java.time.Instant.ofEpochMilli(script.nowMs());
    }

    private static void run(SteppedDesk desk, String key, StandCommand command) {
        desk.run(List.of(new Asking(key, key, command))).get(0).join();
    }

    /** Damages a file; says where. */
    private String damage(Path file, Damage damage) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int at = random.nextInt(bytes.length);
        switch (damage) {
            case FLIPPED_BIT, FLIPPED_BIT_AHEAD -> bytes[at] ^= (byte) (1 << random.nextInt(8));
            case ZEROED_SECTOR, ZEROED_SECTOR_AHEAD -> {
                at = at / SECTOR_BYTES * SECTOR_BYTES;
                Arrays.fill(bytes, at, Math.min(at + SECTOR_BYTES, bytes.length), (byte) 0);
            }
            case SWAPPED_PAGES -> {
                int pages = bytes.length / PAGE_BYTES;
                at = random.nextInt(pages) * PAGE_BYTES;
                int other = random.nextInt(pages) * PAGE_BYTES;
                byte[] page = Arrays.copyOfRange(bytes, at, at + PAGE_BYTES);
                System.arraycopy(bytes, other, bytes, at, PAGE_BYTES);
                System.arraycopy(page, 0, bytes, other, PAGE_BYTES);
            }
            case CUT_AHEAD -> bytes = Arrays.copyOf(bytes, at);
        }
        Files.write(file, bytes);
        return "at " + at;
    }

    /** The first thing that reads otherwise, or nothing. */
    private String changed(Path image, List<String> before) throws IOException {
        Path copy = copied(image);
        try {
            List<String> now = Contents.of(copy);
            for (int at = 0; at < Math.max(now.size(), before.size()); at++) {
                String was = at < before.size() ? before.get(at) : "nothing";
                String is = at < now.size() ? now.get(at) : "nothing";
                if (!is.equals(was)) {
                    return "line " + at + " was " + was + " and is " + is;
                }
            }
            return "";
        } catch (SQLException unreadable) {
            return unreadable.getMessage();
        } finally {
            delete(copy);
        }
    }

    /** What a stand says when it starts on it, or once it has looked at all of it. */
    private static String found(Path image) {
        try (DataFolder folder = DataFolder.open(image);
                SqliteLog log = folder.openLog(Script.SETTINGS.stand())) {
            folder.checkOf(Script.SETTINGS.stand()).newest(log.lastSeq(), log.lastSeq());
            return "";
        } catch (LogFault fault) {
            return fault.getMessage();
        }
    }

    private Path copied(Path folder) throws IOException {
        Path copy = Files.createTempDirectory(work, "image");
        copy(folder, copy);
        return copy;
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                if (!file.toString().endsWith("-shm")) {
                    Path target = to.resolve(file.getFileName());
                    Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
