package sopwell.web.past;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import sopwell.Limits;
import sopwell.desk.DeskBusy;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.kitchen.StationEvent;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.mix.OrderStory;
import sopwell.mix.Slowest;
import sopwell.orders.StandSettings;

/**
 * Answers what is asked of days that are over, or of the newest as far as it got. Thread-safe.
 *
 * <p>All of it is done on one thread, in the order in which it was asked; what takes long lets
 * others in between. The last few boards that were looked at, and the last few days, are kept.
 */
public final class PastDays implements AutoCloseable {
    /** Events that are drawn before somebody else has a turn. */
    private static final int TURN_EVENTS = 100;

    private static final long CLOSE_SECONDS_MAX = 5;

    private final EventLog log;
    private final StandSettings settings;
    private final ThreadPoolExecutor worker =
            new ThreadPoolExecutor(
                    1,
                    1,
                    0,
                    TimeUnit.SECONDS,
                    new LinkedBlockingQueue<>(Limits.PAST_QUEUE_MAX),
                    task -> new Thread(task, "past"));

    private final Map<Wanted, Filming> films = new Kept<>(Limits.PAST_BOARDS_MAX);
    private final Map<LocalDate, Read> days = new Kept<>(Limits.PAST_DAYS_MAX);

    /** Days of a log; nothing is read before it is asked for. */
    public PastDays(EventLog log, StandSettings settings) {
        this.log = log;
        this.settings = settings;
    }

    /**
     * A day as it was at its end.
     *
     * @param stand belongs to whoever asked, on the thread of the asking
     * @param hands what was said of stations during the day, in order
     */
    public record Over(Stand stand, List<Recorded> hands) {
        /** The menu that the day was worked by; empty when there was none. */
        public Optional<Menu> menu() {
            return Curve.menu(stand);
        }
    }

    private record Wanted(LocalDate date, String board) {}

    private record Read(long toSeq, PastDay day) {}

    private record Waiter(long atMs, CompletableFuture<Optional<Picture>> answer) {}

    /** The last few that were used. */
    private static final class Kept<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1L;
        private final int most;

        Kept(int most) {
            super(16, 0.75f, true);
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
        }
    }

    /** A board that is being drawn, and who waits for some moment of it. */
    private static final class Filming {
        private final Reel reel;
        private final List<Waiter> waiters = new ArrayList<>();
        private long toSeq;
        private boolean running;

        Filming(Reel reel) {
            this.reel = reel;
        }

        boolean isDone() {
            return reel.reaches(Long.MAX_VALUE, toSeq);
        }

        void answer() {
            List<Waiter> served = new ArrayList<>();
            for (Waiter waiter : waiters) {
                if (reel.reaches(waiter.atMs(), toSeq)) {
                    waiter.answer().complete(reel.at(waiter.atMs()));
                    served.add(waiter);
                }
            }
            waiters.removeAll(served);
        }

        void fail(RuntimeException fault) {
            running = false;
            waiters.forEach(waiter -> waiter.answer().completeExceptionally(fault));
            waiters.clear();
        }
    }

    /**
     * A day, or empty when none was opened on that date.
     *
     * @throws DeskBusy when too many wait already
     */
    public CompletableFuture<Optional<PastDay>> day(LocalDate date) {
        return ask(() -> Replay.span(log, date).map(span -> read(date, span)));
    }

    /**
     * A board at a moment, or empty when there was no such day, or no such board then. From then on
     * the rest of the day is drawn too, so that any other moment is at hand.
     *
     * @param second since the day's opening; what is before or after is its first or last moment
     * @throws DeskBusy when too many wait already
     */
    public CompletableFuture<Optional<Picture>> board(LocalDate date, String name, int second) {
        CompletableFuture<Optional<Picture>> answer = new CompletableFuture<>();
        execute(
                answer,
                () -> {
                    Optional<Replay.Span> span = Replay.span(log, date);
                    if (span.isEmpty()) {
                        answer.complete(Optional.empty());
                        return;
                    }
                    PastDay day = read(date, span.get());
                    int at = Math.max(0, Math.min(second, day.seconds()));
                    Filming film = film(date, name, span.get());
                    film.waiters.add(new Waiter(day.fromMs() + at * 1000L, answer));
                    film.answer();
                    if (!film.running && !film.isDone()) {
                        film.running = true;
                        draw(film);
                    }
                });
        return answer;
    }

    /**
     * Asks about a whole day; empty when none was opened on that date.
     *
     * @throws DeskBusy when too many wait already
     */
    public <A> CompletableFuture<Optional<A>> ask(LocalDate date, Function<Over, A> question) {
        return ask(() -> Replay.span(log, date).map(span -> question.apply(over(span))));
    }

    /**
     * The orders of a day that guests waited for longest, step by step; empty when none was opened
     * on that date.
     *
     * @param most how many at most
     * @throws DeskBusy when too many wait already
     */
    public CompletableFuture<Optional<List<OrderStory>>> slowest(LocalDate date, int most) {
        return ask(() -> Replay.span(log, date).map(span -> slowest(span, most)));
    }

    private List<OrderStory> slowest(Replay.Span span, int most) {
        Stand stand = Replay.before(log, settings, span.from());
        Slowest slowest = new Slowest();
        log.read(
                span.from(),
                span.to(),
                recorded -> {
                    stand.apply(recorded);
                    slowest.add(recorded);
                });
        return slowest.of(stand.orders(), stand.kitchen(), most);
    }

    /** Forgets what was drawn of a date: its log has fewer names than before. */
    public void forget(LocalDate date) {
        CompletableFuture<Boolean> done = new CompletableFuture<>();
        execute(
                done,
                () -> {
                    days.remove(date);
                    films.keySet().removeIf(wanted -> wanted.date().equals(date));
                    done.complete(true);
                });
    }

    @Override
    public void close() {
        worker.shutdownNow();
        try {
            if (!worker.awaitTermination(CLOSE_SECONDS_MAX, TimeUnit.SECONDS)) {
                throw new IllegalStateException("a past day is read without an end");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private <A> CompletableFuture<A> ask(Supplier<A> question) {
        CompletableFuture<A> answer = new CompletableFuture<>();
        execute(answer, () -> answer.complete(question.get()));
        return answer;
    }

    private void execute(CompletableFuture<?> answer, Runnable task) {
        try {
            worker.execute(
                    () -> {
                        try {
                            task.run();
                        } catch (RuntimeException fault) {
                            answer.completeExceptionally(fault);
                        }
                    });
        } catch (RejectedExecutionException full) {
            throw new DeskBusy("Too many look at past days.");
        }
    }

    /** Draws the rest of the day, and lets in between whoever waits. */
    private void draw(Filming film) {
        try {
            do {
                film.reel.advance(film.toSeq, TURN_EVENTS);
                film.answer();
            } while (!film.isDone() && !worker.isShutdown() && !isLeftTo(film));
            film.running = !film.isDone();
        } catch (RuntimeException fault) {
            film.fail(fault);
            films.values().remove(film);
        }
    }

    /** Whether others had to be let in, and the drawing goes on behind them. */
    private boolean isLeftTo(Filming film) {
        if (worker.getQueue().isEmpty()) {
            return false;
        }
        try {
            worker.execute(() -> draw(film));
            return true;
        } catch (RejectedExecutionException full) {
            return false;
        }
    }

    private Filming film(LocalDate date, String name, Replay.Span span) {
        Filming film =
                films.computeIfAbsent(
                        new Wanted(date, name),
                        w -> new Filming(new Reel(log, settings, span.from(), name)));
        film.toSeq = span.to();
        return film;
    }

    private PastDay read(LocalDate date, Replay.Span span) {
        Read known = days.get(date);
        if (known == null || known.toSeq() != span.to()) {
            Curve curve = new Curve(Replay.before(log, settings, span.from()));
            log.read(span.from(), span.to(), curve::apply);
            known = new Read(span.to(), curve.done(date));
            days.put(date, known);
        }
        return known.day();
    }

    private Over over(Replay.Span span) {
        Stand stand = Replay.before(log, settings, span.from());
        List<Recorded> hands = new ArrayList<>();
        log.read(
                span.from(),
                span.to(),
                recorded -> {
                    stand.apply(recorded);
                    if (recorded.event() instanceof StationEvent) {
                        hands.add(recorded);
                    }
                });
        return new Over(stand, hands);
    }
}
