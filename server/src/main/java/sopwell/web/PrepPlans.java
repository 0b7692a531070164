package sopwell.web;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import sopwell.Limits;
import sopwell.desk.DayBook;
import sopwell.desk.DeskBusy;
import sopwell.desk.Follower;
import sopwell.desk.Stand;
import sopwell.log.EventLog;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.orders.OutEvent;
import sopwell.orders.StandSettings;
import sopwell.prep.MadePlan;
import sopwell.prep.PlanMaker;
import sopwell.prep.PrepAsk;
import sopwell.prep.PrepDays;
import sopwell.prep.PrepTerms;
import sopwell.prep.SellOuts;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.stock.larder.StockNow;

/**
 * Makes the plan of prep on a thread of its own, and keeps it until something happens at the stand
 * or the hour is over. Thread-safe.
 */
public final class PrepPlans implements AutoCloseable {
    private static final long HOUR_MS = 3_600_000;

    private final EventLog log;
    private final Follower follower;
    private final DayBook book;
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

    /** What is taken along from the stand. */
    private record Seen(long seq, long atMs, Menu menu, StockNow stock, OwnerCalendar calendar) {}

    /** Plans for one stand. */
    public PrepPlans(
            EventLog log,
            Follower follower,
            DayBook book,
            StandSettings settings,
            InstantSource clock) {
        this.log = log;
        this.follower = follower;
        this.book = book;
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
        return new Seen(stand.seq(), atMs, stand.menu(), stock, stand.calendar());
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
        List<DayTally> tallies =
                book.days(today.minusDays(Limits.PREP_HISTORY_DAYS_MAX), today.minusDays(1));
        List<PastDay> days = PrepDays.of(tallies, outs(), seen.calendar());
        PrepAsk ask =
                new PrepAsk(
                        seen.menu(),
                        seen.stock(),
                        new PrepAsk.Past(days, tallies, List.of()),
                        PrepAsk.Calendar.of(seen.calendar()),
                        PrepTerms.USUAL,
                        settings.safety().food().cooling().totalMinutes(),
                        new PrepAsk.When(now, settings.zone()));
        return new Made(seen.seq(), PlanMaker.make(ask));
    }

    /** What was out, from the marks alone: they are few. */
    private Map<LocalDate, List<OutSpan>> outs() {
        SellOuts outs = new SellOuts(settings.zone(), settings.cutHour());
        List<Long> places =
                Stream.of(OutEvent.OutMarked.class, OutEvent.OutLifted.class)
                        .flatMap(type -> log.placesOf(type).stream())
                        .sorted()
                        .toList();
        for (long place : places) {
            log.read(
                    place,
                    place,
                    recorded -> outs.apply((OutEvent) recorded.event(), recorded.atMs()));
        }
        return outs.spans();
    }

    @Override
    public void close() {
        worker.shutdown();
    }
}
