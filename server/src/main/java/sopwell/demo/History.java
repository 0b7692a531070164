package sopwell.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import sopwell.desk.BulkDesk;
import sopwell.desk.DayBook;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.AdoptMenu;
import sopwell.log.Entry;
import sopwell.log.EventLog;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.mix.ExceptionTally;
import sopwell.mix.TallyShelf.Shelved;
import sopwell.mix.TallyShelves;
import sopwell.mix.WaitTally;
import sopwell.orders.StandSettings;

/**
 * Plays invented days into an empty log, through the rules that the desk goes by, and counts each
 * when it is over. The same seed makes the same days. While a batch of events is written, the next
 * is decided; what {@link #play} returns from is on the disk. Not thread-safe.
 */
public final class History {
    private static final long DEMO_SEED = 20_260_109L;
    private static final int DAYS_SHELVED_AT_ONCE = 30;

    private final EventLog log;
    private final TallyShelves shelves;
    private final List<Shelved<DayTally>> mixes = new ArrayList<>();
    private final List<Shelved<WaitTally>> waits = new ArrayList<>();
    private final List<Shelved<ExceptionTally>> exceptions = new ArrayList<>();
    private final ExecutorService writer =
            Executors.newSingleThreadExecutor(task -> new Thread(task, "history"));
    private CompletableFuture<Void> written = CompletableFuture.completedFuture(null);

    /** Is told how far it is. */
    public interface Progress {
        /** So many days are played, with so many orders in all. */
        void at(int days, long orders);
    }

    /**
     * Which days to play, and at which stand.
     *
     * @param menu the demo's
     * @param days in order, at least one
     * @param seed what happens on them follows from it
     */
    public record Days(StandSettings settings, Menu menu, List<HistoryDay> days, long seed) {
        public Days {
            days = List.copyOf(days);
        }
    }

    /**
     * The demo's eight weeks.
     *
     * @param last the last of its days
     */
    public static Days eightWeeks(StandSettings settings, Menu menu, LocalDate last) {
        return new Days(settings, menu, HistoryCalendar.eightWeeks(last, DEMO_SEED), DEMO_SEED);
    }

    private History(EventLog log, TallyShelves shelves) {
        this.log = log;
        this.shelves = shelves;
    }

    /**
     * Plays days.
     *
     * @param log an empty log
     * @param shelves are given the tallies of the days
     */
    public static void play(EventLog log, TallyShelves shelves, Days days, Progress progress) {
        History history = new History(log, shelves);
        try {
            history.run(new BulkDesk(log, days.settings(), history::write), days, progress);
        } finally {
            history.writer.shutdown();
        }
    }

    private void run(BulkDesk desk, Days all, Progress progress) {
        HistoryGuests guests = new HistoryGuests(all.menu());
        DemoCalls names = DemoCalls.read();
        List<HistoryDay> days = all.days();
        long firstMs =
                days.get(0)
                        .date()
                        .atStartOfDay(desk.stand().settings().zone())
                        .toInstant()
                        .toEpochMilli();
        desk.submit(firstMs, "history-menu", "history-menu", new AdoptMenu(all.menu()));
        long orders = 0;
        for (int done = 0; done < days.size(); done++) {
            HistoryDay day = days.get(done);
            if (day.orders() > 0) {
                new HistoryShift(desk, guests, names, day, all.seed()).play();
                orders += desk.stand().orders().all().size();
                count(desk.stand());
            }
            progress.at(done + 1, orders);
        }
        desk.flush();
        written.join();
        desk.verify();
        // The newest day may be opened again, and is not kept.
        mixes.remove(mixes.size() - 1);
        waits.remove(waits.size() - 1);
        exceptions.remove(exceptions.size() - 1);
        shelve();
    }

    private void count(Stand stand) {
        if (mixes.size() == DAYS_SHELVED_AT_ONCE) {
            shelve();
        }
        LocalDate date = stand.orders().date().orElseThrow();
        mixes.add(Shelved.of(date, stand.seq(), DayBook.mix(stand)));
        waits.add(Shelved.of(date, stand.seq(), DayBook.waits(stand)));
        exceptions.add(Shelved.of(date, stand.seq(), DayBook.exceptions(stand)));
    }

    private void shelve() {
        shelves.mixes().put(List.copyOf(mixes));
        shelves.waits().put(List.copyOf(waits));
        shelves.exceptions().put(List.copyOf(exceptions));
        mixes.clear();
        waits.clear();
        exceptions.clear();
    }

    /** One batch at a time; a failure shows itself with the next. */
    private void write(List<Entry> batch) {
        written.join();
        written = CompletableFuture.runAsync(() -> log.append(batch), writer);
    }
}
