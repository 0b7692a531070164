package sopwell.abuse;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Many more orders at once than a desk can take: some are taken in time, the rest told to wait. */
final class Overload {
    private static final int ADDRESSES = 32;

    private final Target target;
    private final List<Long> admitted = Collections.synchronizedList(new ArrayList<>());
    private final AtomicInteger busy = new AtomicInteger();
    private final AtomicInteger withoutRetryAfter = new AtomicInteger();
    private final AtomicInteger broken = new AtomicInteger();

    Overload(Target target) {
        this.target = target;
    }

    /**
     * What came of it.
     *
     * @param admitted answered by the desk
     * @param busy told to come again
     * @param wrong neither, or told to come again without saying when
     */
    record Outcome(int admitted, double p99Millis, int busy, int wrong) {
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d admitted, p99 %.0f ms; %d told to come again; %d answered otherwise",
                    admitted,
                    p99Millis,
                    busy,
                    wrong);
        }
    }

    /**
     * Posts from so many connections for so long, each as fast as it is answered, or as it is told
     * to.
     */
    Outcome run(int connections, long millis) throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < connections; i++) {
            int number = i;
            Thread thread = new Thread(null, () -> post(number, until), "flood", 131_072);
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        return new Outcome(
                admitted.size(),
                Siege.p99(admitted),
                busy.get(),
                withoutRetryAfter.get() + broken.get());
    }

    private void post(int number, long until) {
        try (Socket socket = target.connect(1 + number % ADDRESSES)) {
            InputStream in = socket.getInputStream();
            for (int i = 0; System.nanoTime() < until; i++) {
                long from = System.nanoTime();
                Target.send(socket, target.order("flood-" + from + "-" + number + "-" + i, true));
                if (count(answer(in), System.nanoTime() - from)) {
                    TimeUnit.SECONDS.sleep(1);
                }
            }
        } catch (IOException gone) {
            broken.incrementAndGet();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether to come again in a second, as the answer said. */
    private boolean count(String head, long nanos) {
        int status = Target.status(head);
        if (status == 503) {
            busy.incrementAndGet();
            if (!head.contains("\r\nRetry-After: ")) {
                withoutRetryAfter.incrementAndGet();
            }
        } else if (status == 201 || status == 409) {
            admitted.add(nanos);
        } else {
            broken.incrementAndGet();
        }
        return status == 503;
    }

    /** The head of an answer, with its body read over. */
    private static String answer(InputStream in) throws IOException {
        StringBuilder head = new StringBuilder();
        while (head.length() < 4 || head.indexOf("\r\n\r\n", head.length() - 4) < 0) {
            int next = in.read();
            if (next < 0) {
                throw new IOException("closed after: " + head);
            }
            head.append((char) next);
        }
        int at = head.indexOf("Content-Length: ") + "Content-Length: ".length();
        in.skipNBytes(Long.parseLong(head.substring(at, head.indexOf("\r", at))));
        return head.toString();
    }
}
