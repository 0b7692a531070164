package sopwell;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * Does one long task again and again beside the stand, on a thread of its own. The task rests
 * between its pieces, and ends at a rest when this is closed. Thread-safe.
 */
final class SpareTime implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(SpareTime.class.getName());

    private final String name;
    private final ScheduledExecutorService worker;
    private final CountDownLatch closing = new CountDownLatch(1);
    private final Future<?> turns;

    /** What is done; must not throw anything else. */
    @FunctionalInterface
    interface Task {
        void run(SpareTime here) throws InterruptedException;
    }

    /** Begins after some seconds, and again so many seconds after each end. */
    SpareTime(String name, Task task, long firstSeconds, long restSeconds) {
        this.name = name;
        this.worker = Executors.newSingleThreadScheduledExecutor(work -> new Thread(work, name));
        this.turns =
                worker.scheduleWithFixedDelay(
                        () -> turn(task), firstSeconds, restSeconds, TimeUnit.SECONDS);
    }

    /** Rests; false when the task is to end instead. */
    boolean rests(long millis) throws InterruptedException {
        return !closing.await(millis, TimeUnit.MILLISECONDS);
    }

    /** Waits for the piece that is under way. */
    @Override
    public void close() {
        closing.countDown();
        turns.cancel(false);
        worker.shutdown();
        try {
            if (!worker.awaitTermination(Limits.SPARE_CLOSE_SECONDS_MAX, TimeUnit.SECONDS)) {
                Told.of(Happening.UNFINISHED).id("part", name).to(LOGGER);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void turn(Task task) {
        try {
            task.run(this);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
