package sopwell.history;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import sopwell.demo.History;
import sopwell.demo.HistoryCalendar;
import sopwell.demo.HistoryDay;
import sopwell.menu.Menu;
import sopwell.orders.StandSettings;
import sopwell.storage.DataFolder;
import sopwell.storage.MenuReader;
import sopwell.storage.SqliteLog;
import sopwell.storage.StandFile;
import sopwell.storage.TallyFile;

/**
 * Makes years of a busy stand in an empty folder: {@code HistoryMain DIR [ORDERS [YEARS [LAST
 * [SEED]]]]}; says on standard error how far it is. The same arguments make the same events.
 */
public final class HistoryMain {
    /** Orders that are made unless told otherwise. */
    public static final int ORDERS = 1_000_000;

    /** Years that they are made over. */
    public static final int YEARS = 5;

    /** The last day. */
    public static final LocalDate LAST = LocalDate.of(2026, 6, 30);

    /** What everything follows from. */
    public static final long SEED = 1;

    private static final int BAR = 30;

    private HistoryMain() {}

    /** Makes them. */
    public static void main(String[] args) throws IOException {
        make(
                Path.of(args[0]),
                args.length > 1 ? Integer.parseInt(args[1]) : ORDERS,
                args.length > 2 ? Integer.parseInt(args[2]) : YEARS,
                args.length > 3 ? LocalDate.parse(args[3]) : LAST,
                args.length > 4 ? Long.parseLong(args[4]) : SEED);
    }

    /** Makes about so many orders over so many years, up to a date. */
    public static void make(Path to, int orders, int years, LocalDate last, long seed)
            throws IOException {
        make(to, HistoryCalendar.years(last, years, orders, seed), seed);
    }

    /** Makes one day, as busy as those of the usual years. */
    public static void makeDay(Path to, LocalDate last, long seed) throws IOException {
        List<HistoryDay> days = HistoryCalendar.years(last, YEARS, ORDERS, seed);
        make(to, days.subList(days.size() - 1, days.size()), seed);
    }

    private static void make(Path to, List<HistoryDay> days, long seed) throws IOException {
        try (DataFolder folder = DataFolder.open(to)) {
            folder.putStand(demo("stand.json"));
            folder.putMenu(demo("menu.json"));
            StandSettings settings = StandFile.read(demo("stand.json")).settings().orElseThrow();
            Menu menu = MenuReader.read(demo("menu.json")).menu().orElseThrow();
            try (SqliteLog log = folder.openLog(settings.stand());
                    TallyFile tallies = folder.openTallies(settings.stand())) {
                History.play(
                        log,
                        tallies.shelves(),
                        new History.Days(settings, menu, days, seed),
                        new Bar(days.size())::at);
                System.err.printf(Locale.ROOT, "%n%,d events%n", log.lastSeq());
            }
        }
    }

    private static byte[] demo(String name) throws IOException {
        try (InputStream in = HistoryMain.class.getResourceAsStream("/demo/" + name)) {
            return in.readAllBytes();
        }
    }

    /** How far it is, and how long it will take, at most once a second. */
    private static final class Bar {
        private final long fromNanos = System.nanoTime();
        private final int ofDays;
        private long shown;

        Bar(int ofDays) {
            this.ofDays = ofDays;
        }

        void at(int days, long orders) {
            long seconds = Duration.ofNanos(System.nanoTime() - fromNanos).toSeconds();
            if (seconds == shown && days < ofDays) {
                return;
            }
            shown = seconds;
            int full = BAR * days / ofDays;
            long left = seconds * (ofDays - days) / days;
            System.err.printf(
                    Locale.ROOT,
                    "\r[%s%s] %3d %%  %,d orders  %d:%02d gone, about %d:%02d left ",
                    "#".repeat(full),
                    ".".repeat(BAR - full),
                    100 * days / ofDays,
                    orders,
                    seconds / 60,
                    seconds % 60,
                    left / 60,
                    left % 60);
        }
    }
}
