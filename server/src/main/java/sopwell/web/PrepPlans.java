package sopwell.web;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import sopwell.Limits;
import sopwell.desk.DayBook;
import sopwell.desk.DeskBusy;
import sopwell.desk.Follower;
import sopwell.desk.Stand;
import sopwell.log.EventLog;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.orders.Orders;
import sopwell.orders.StandSettings;
import sopwell.prep.MadePlan;
import sopwell.prep.PlanMaker;
import sopwell.prep.PrepAsk;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.stock.larder.StockNow;

/**
 * Makes the plan of prep on a thread of its own, and keeps it until something happens at the stand
 * or the hour is over. Thread-safe.
 */
public final class PrepPlans implements AutoCloseable {
    private static final long HOUR_MS = 3_600_000;

    private final Follower follower;

    /** Of the worker alone. */
    private final PrepPast past;

    private final StandSettings settings;
    private final InstantSource clock;
    private final ThreadPoolExecutor worker =
            new ThreadPoolExecutor(
                    1,
                    1,
                    0,
                    TimeUnit.SECONDS,
                    new ArrayBlockingQueue<>(Limits.PREP_QUEUE_MAX),
                    task -> new Thread(task, "prep"));
    private Optional<Kept> kept = Optional.empty();

    /**
     * A plan and the place of the last event that it knows.
     *
     * @param seq that place in the log
     */
    public record Made(long seq, MadePlan plan) {}

    private record Kept(long seq, long hour, CompletableFuture<Made> plan) {
        boolean isOf(Seen seen) {
            return seq == seen.seq()
                    && hour == seen.atMs() / HOUR_MS
                    && !plan.isCompletedExceptionally();
        }
    }

    /**
     * What is taken along from the stand.
     *
     * @param newest what its newest day sold, if that is over: no other may have followed it yet
     */
    private record Seen(
            long seq,
            long atMs,
            Menu menu,
            StockNow stock,
            OwnerCalendar calendar,
            Optional<DayTally> newest) {}

    /** Plans for one stand. */
    public PrepPlans(
            EventLog log,
            Follower follower,
            DayBook book,
            StandSettings settings,
            InstantSource clock) {
        this.follower = follower;
        this.past = new PrepPast(log, book, settings);
        this.settings = settings;
        this.clock = clock;
    }

    /** The plan as of now; refused with {@link DeskBusy} when too many wait for one. */
    public CompletableFuture<Made> now() {
        long atMs = clock.millis();
        return follower.ask(stand -> seen(stand, atMs)).thenCompose(this::of);
    }

    private Seen seen(Stand stand, long atMs) {
        StockNow stock = StockNow.of(stand.recipes(), stand.larder(), settings.safety(), atMs);
        Orders orders = stand.orders();
        boolean isOver = !orders.isDayOpen() || atMs >= orders.cutAtMs();
        LocalDate today = LocalDate.ofInstant(Instant.ofEpochMilli(atMs), settings.zone());
        Optional<DayTally> newest =
                orders.date()
                        .filter(date -> isOver && date.isBefore(today))
                        .map(date -> DayBook.mix(stand));
        return new Seen(stand.seq(), atMs, stand.menu(), stock, stand.calendar(), newest);
    }

    private synchronized CompletableFuture<Made> of(Seen seen) {
        if (kept.isEmpty() || !kept.get().isOf(seen)) {
            CompletableFuture<Made> made;
            try {
                made = CompletableFuture.supplyAsync(() -> make(seen), worker);
            } catch (RejectedExecutionException full) {
                return CompletableFuture.failedFuture(
                        new DeskBusy("Too many wait for a plan; ask again in a moment."));
            }
            kept = Optional.of(new Kept(seen.seq(), seen.atMs() / HOUR_MS, made));
        }
        return kept.get().plan();
    }

    private Made make(Seen seen) {
        Instant now = Instant.ofEpochMilli(seen.atMs());
        LocalDate today = LocalDate.ofInstant(now, settings.zone());
        PrepAsk.Past before = past.before(today, seen.menu(), seen.calendar(), seen.newest());
        PrepAsk ask =
                new PrepAsk(
                        seen.menu(),
                        seen.stock(),
                        before,
                        PrepAsk.Calendar.of(seen.calendar()),
                        seen.calendar().terms(),
                        settings.safety().food().cooling().totalMinutes(),
                        new PrepAsk.When(now, settings.zone()));
        return new Made(seen.seq(), PlanMaker.make(ask));
    }

    @Override
    public void close() {
        worker.shutdown();
    }
}
