package sopwell.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import sopwell.desk.Replay;

/**
 * Makes a year, backs it up and restores it elsewhere: {@code RestoreMain [days] [orders]}, so many
 * orders on each day. Says how long each took, and whether the two are the same.
 */
public final class RestoreMain {
    private RestoreMain() {}

    /** Ends with 1 when the restored stand is another. */
    public static void main(String[] args) throws IOException {
        int days = args.length > 0 ? Integer.parseInt(args[0]) : 365;
        int orders = args.length > 1 ? Integer.parseInt(args[1]) : 120;
        Path folder = Files.createTempDirectory("sopwell-restore");
        boolean same;
        try {
            same = drill(folder, days, orders);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
        System.exit(same ? 0 : 1);
    }

    private static boolean drill(Path folder, int days, int orders) throws IOException {
        Path stick = Files.createDirectory(folder.resolve("stick"));
        Path fresh = folder.resolve("fresh");
        Fold before;
        Path file;
        try (BackedUp stand = new BackedUp(folder.resolve("stand"));
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            long from = System.nanoTime();
            for (int day = 0; day < days; day++) {
                stand.desk.day(BackedUp.FIRST.plusDays(day), orders);
            }
            said("made", from);
            from = System.nanoTime();
            if (!backups.makeNow().join()) {
                throw new IOException("no backup: " + backups.state());
            }
            said("backed up", from);
            file = stick.resolve(backups.state().last().orElseThrow().name());
            before = Fold.of(Replay.newestDay(stand.log, BackedUp.settings(), event -> {}));
            System.out.printf(
                    Locale.ROOT,
                    "%d orders, %d events, %.1f MB%n",
                    days * orders,
                    stand.log.lastSeq(),
                    Files.size(file) / 1e6);
        }
        long from = System.nanoTime();
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        new Restore(file, fresh, InstantSource.system(), out).run(false);
        said("restored", from);
        try (BackedUp stand = new BackedUp(fresh)) {
            Fold after = Fold.of(Replay.at(stand.log, BackedUp.settings(), before.seq(), e -> {}));
            System.out.println(after.equals(before) ? "the same" : "ANOTHER");
            return after.equals(before);
        }
    }

    private static void said(String what, long fromNanos) {
        long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - fromNanos);
        System.out.printf(Locale.ROOT, "%s in %.1f s%n", what, millis / 1e3);
    }
}
