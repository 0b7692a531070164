package sopwell.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A queue and the one thread that takes from it whatever has gathered. Thread-safe.
 *
 * @param <T> what is queued
 */
final class Gathering<T> implements AutoCloseable {
    private static final long WAIT_MILLIS = 50;
    private static final long CLOSE_SECONDS_MAX = 10;

    private final BlockingQueue<T> queue;
    private final int atOnceMax;
    private final Consumer<List<T>> take;
    private final Thread thread;
    private volatile boolean closing;

    /**
     * Starts to take.
     *
     * @param atOnceMax the most that is taken at once
     * @param take is called on the thread, with at least one; must not throw
     */
    Gathering(String name, BlockingQueue<T> queue, int atOnceMax, Consumer<List<T>> take) {
        this.queue = queue;
        this.atOnceMax = atOnceMax;
        this.take = take;
        this.thread = new Thread(this::run, name);
        thread.start();
    }

    /** Queues one, unless the queue is full or closed. */
    boolean offer(T one) {
        return !closing && queue.offer(one);
    }

    /** How many are queued. */
    int waiting() {
        return queue.size();
    }

    /** Takes what is queued still, then stops. */
    @Override
    public void close() {
        closing = true;
        try {
            thread.join(TimeUnit.SECONDS.toMillis(CLOSE_SECONDS_MAX));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        List<T> taken = new ArrayList<>();
        while (!closing || !queue.isEmpty()) {
            try {
                T first = queue.poll(WAIT_MILLIS, TimeUnit.MILLISECONDS);
                if (first == null) {
                    continue;
                }
                taken.add(first);
                queue.drainTo(taken, atOnceMax - 1);
                take.accept(taken);
                taken.clear();
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }
}
