package sopwell.web;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
import sopwell.desk.PrepBook;
import sopwell.log.EventLog;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.orders.StandSettings;
import sopwell.prep.MadePlan;
import sopwell.prep.PrepAsk;
import sopwell.prep.PrepDays;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.forecast.Accuracy;
import sopwell.prep.forecast.History;
import sopwell.prep.past.PastLimits;
import sopwell.prep.past.PastPrep;

/**
 * Reads what became of past plans, and how right forecasts were, on a thread of its own.
 * Thread-safe.
 */
public final class PastPreps implements AutoCloseable {
    /** The forecast of so many open days ahead is judged: beef is decided on two days before. */
    private static final Accuracy.Asked JUDGED = new Accuracy.Asked(8, 2);

    private final Follower follower;
    private final StandSettings settings;
    private final InstantSource clock;
    private final PrepBook book;

    /** Of the worker alone. */
    private final PrepPast past;

    /** What was asked for last: whoever asks for the same while it is read waits with the first. */
    private Optional<Asked> asked = Optional.empty();

    /** Of the worker alone. */
    private Optional<Judged> judged = Optional.empty();

    private final ThreadPoolExecutor worker =
            new ThreadPoolExecutor(
                    1,
                    1,
                    0,
                    TimeUnit.SECONDS,
                    new ArrayBlockingQueue<>(Limits.PREP_QUEUE_MAX),
                    task -> new Thread(task, "past-prep"));

    /**
     * What was found.
     *
     * @param accuracy empty when no day can be judged yet
     * @param ahead how many open days ahead the judged forecast was made
     */
    public record Found(PastPrep prep, Optional<Accuracy> accuracy, int ahead) {}

    private record Asked(LocalDate date, Instant asOf, Instant at, CompletableFuture<Found> found) {
        /** While it is read, and for a while after, for a page that comes back for it. */
        boolean stands(Instant now) {
            return !found.isDone()
                    || (!found.isCompletedExceptionally()
                            && now.isBefore(at.plusMillis(PastLimits.FOUND_MILLIS_MAX)));
        }
    }

    private record Judged(PrepAsk.Past past, OwnerCalendar calendar, Optional<Accuracy> accuracy) {}

    private record Seen(Menu menu, OwnerCalendar calendar, Optional<DayTally> newest) {}

    /** What became of one stand's plans. */
    public PastPreps(
            EventLog log,
            Follower follower,
            DayBook days,
            StandSettings settings,
            InstantSource clock) {
        this.follower = follower;
        this.settings = settings;
        this.clock = clock;
        this.book = new PrepBook(log, settings);
        this.past = new PrepPast(log, days, settings);
    }

    /**
     * The eight weeks up to a date, that date included.
     *
     * @param plan what costs are taken from
     */
    public synchronized CompletableFuture<Found> upTo(LocalDate date, MadePlan plan) {
        boolean isSame =
                asked.isPresent()
                        && asked.get().date().equals(date)
                        && asked.get().asOf().equals(plan.asOf())
                        && asked.get().stands(clock.instant());
        if (!isSame) {
            asked = Optional.of(new Asked(date, plan.asOf(), clock.instant(), read(date, plan)));
        }
        return asked.get().found();
    }

    /** An answer was shown: who asks next gets a new one. */
    public synchronized void shown(CompletableFuture<Found> answer) {
        asked = asked.filter(one -> one.found() != answer);
    }

    private CompletableFuture<Found> read(LocalDate date, MadePlan plan) {
        return follower.ask(
                        stand ->
                                new Seen(
                                        stand.menu(),
                                        stand.calendar(),
                                        stand.orders().date().map(newest -> DayBook.mix(stand))))
                .thenCompose(
                        seen -> {
                            try {
                                return CompletableFuture.supplyAsync(
                                        () -> find(seen, date, plan), worker);
                            } catch (RejectedExecutionException full) {
                                return CompletableFuture.failedFuture(
                                        new DeskBusy("Too many ask for past days; ask again."));
                            }
                        });
    }

    private Found find(Seen seen, LocalDate date, MadePlan plan) {
        LocalDate today =
                LocalDate.ofInstant(Instant.ofEpochMilli(clock.millis()), settings.zone());
        Optional<DayTally> over = seen.newest().filter(day -> day.date().isBefore(today));
        PrepAsk.Past before = past.before(today, seen.menu(), seen.calendar(), over);
        List<DayTally> sold = new ArrayList<>(before.tallies());
        seen.newest().filter(day -> !day.date().isBefore(today)).ifPresent(sold::add);
        LocalDate from = date.minusDays(Limits.PREP_PAST_DAYS_MAX - 1L);
        PastPrep prep =
                PastPrep.of(
                        new PastPrep.Known(
                                book.days(from, date),
                                sold,
                                past.outs(),
                                plan.book(),
                                plan.stakes()));
        return new Found(prep, accuracy(before, seen.calendar()), JUDGED.ahead());
    }

    private Optional<Accuracy> accuracy(PrepAsk.Past before, OwnerCalendar calendar) {
        boolean isSame =
                judged.isPresent()
                        && judged.get().past().days().equals(before.days())
                        && judged.get().calendar().equals(calendar);
        if (!isSame) {
            History history = new History(PrepDays.BIN_MINUTES, before.days(), before.outlooks());
            judged =
                    Optional.of(
                            new Judged(
                                    before,
                                    calendar,
                                    Accuracy.of(history, calendar.guesses(), JUDGED)));
        }
        return judged.get().accuracy();
    }

    @Override
    public void close() {
        worker.shutdown();
    }
}
