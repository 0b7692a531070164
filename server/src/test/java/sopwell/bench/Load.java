package sopwell.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/** Posts as fast as the answers come, on many connections. Stateless. */
final class Load {
    private Load() {}

    /** One post by its number. */
    interface Post {
        int send(RawClient client, long number) throws IOException;
    }

    /**
     * Runs for a while and counts answers in the second part of it.
     *
     * @return answers per second
     * @throws IllegalStateException when any answer is not a success
     */
    static double perSecond(int port, int connections, int warmMillis, int millis, Post post)
            throws InterruptedException {
        AtomicLong number = new AtomicLong();
        AtomicLong counted = new AtomicLong();
        AtomicLong wrong = new AtomicLong();
        long begin = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(warmMillis);
        long end = begin + TimeUnit.MILLISECONDS.toNanos(millis);
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < connections; i++) {
            Thread thread =
                    new Thread(
                            () -> {
                                try (RawClient client = new RawClient(port)) {
                                    long now = System.nanoTime();
                                    while (now < end) {
                                        int status = post.send(client, number.incrementAndGet());
                                        now = System.nanoTime();
                                        if (status < 200 || status > 299) {
                                            wrong.incrementAndGet();
                                        } else if (now >= begin && now < end) {
                                            counted.incrementAndGet();
                                        }
                                    }
                                } catch (IOException gone) {
                                    wrong.incrementAndGet();
                                }
                            });
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        if (wrong.get() > 0) {
            throw new IllegalStateException(wrong + " requests did not succeed");
        }
        return counted.get() * 1000.0 / millis;
    }
}
