package sopwell.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.orders.StandSettings;

/**
 * Follows the durable events on a thread of its own and answers questions about the stand as they
 * leave it. Everything that is shown comes from here, so showing never holds up the desk.
 *
 * <p>Thread-safe. A question asked after a command was answered sees that command's events.
 */
public final class Follower implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(Follower.class.getName());

    private final Following following;
    private final Gathering<Runnable> tasks;
    private final List<Consumer<Stand>> watchers = new ArrayList<>();
    private boolean changed;
    private volatile Menu menu;

    /** A follower that knows the newest day when it returns. */
    public Follower(EventLog log, StandSettings settings) {
        following = new Following(log, settings);
        noteChange();
        tasks =
                new Gathering<>(
                        "follower", new LinkedBlockingQueue<>(), Integer.MAX_VALUE, this::run);
    }

    /**
     * Takes in durable events; called by the desk, in order. No events means that the desk read the
     * log again: there may be more in it than was ever handed on.
     */
    public void follow(List<Recorded> events) {
        add(() -> take(events));
    }

    /**
     * Asks about the stand. The question runs on the follower's thread and must be short; the stand
     * must not be kept.
     */
    public <T> CompletableFuture<T> ask(Function<Stand, T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Runnable task =
                () -> {
                    try {
                        answer.complete(question.apply(following.stand()));
                    } catch (RuntimeException fault) {
                        answer.completeExceptionally(fault);
                    }
                };
        if (!tasks.offer(task)) {
            answer.completeExceptionally(new DeskBusy("The stand is closing."));
        }
        return answer;
    }

    /** Has something done with the stand on the follower's thread; the same rules as for asking. */
    public void tell(Consumer<Stand> task) {
        add(() -> guarded(() -> task.accept(following.stand())));
    }

    /** Calls a watcher on the follower's thread whenever the stand has changed. */
    public void watch(Consumer<Stand> watcher) {
        add(() -> watchers.add(watcher));
    }

    /** The menu in force, which may be newer than what a screen shows; null before the first. */
    public Menu menu() {
        return menu;
    }

    @Override
    public void close() {
        tasks.close();
    }

    /** What comes after the closing has nobody left to be shown to. */
    private void add(Runnable task) {
        if (!tasks.offer(task)) {
            LOGGER.fine("closed; nothing more is shown");
        }
    }

    private void run(List<Runnable> gathered) {
        gathered.forEach(Follower::guarded);
        if (changed) {
            changed = false;
            watchers.forEach(watcher -> guarded(() -> watcher.accept(following.stand())));
        }
    }

    private void take(List<Recorded> events) {
        try {
            following.take(events);
        } catch (RuntimeException bug) {
            Told.of(Happening.SHOWN_BROKE).fault(bug).to(LOGGER);
            following.rebuild();
        }
        noteChange();
    }

    private void noteChange() {
        Stand stand = following.stand();
        menu = stand.hasMenu() ? stand.menu() : null;
        changed = true;
    }

    /** A screen's fault must not end the thread that serves all the others. */
    private static void guarded(Runnable task) {
        try {
            task.run();
        } catch (RuntimeException fault) {
            Told.of(Happening.SHOWN_BROKE).fault(fault).to(LOGGER);
        }
    }
}
