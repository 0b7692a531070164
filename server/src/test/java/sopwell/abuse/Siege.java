package sopwell.abuse;

import java.io.IOException;
import java.net.Socket;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/** Connections that do harm by being there, while a counter goes on taking orders. */
final class Siege {
    private static final long SILENT_MILLIS_MAX = 16_000;
    private static final long DRIP_MILLIS_MAX = 6_000;
    private static final int ADDRESSES = 16;

    private final Target target;
    private int orders;

    Siege(Target target) {
        this.target = target;
    }

    /** How a hostile connection begins, and what it says again and again. */
    enum Manner {
        SILENT("", ""),
        HEAD("GET /healthz HTTP/1.1\r\nHost: x\r\n", "X"),
        BODY("POST /api/orders HTTP/1.1\r\nHost: HOST\r\n" + Sent.HEADERS, "{");

        private final String begin;
        private final String drip;

        /** An enum's constants may not use its own fields. */
        private static final class Sent {
            private static final String HEADERS =
                    String.join(
                            "\r\n",
                            "Idempotency-Key: drip",
                            "Content-Type: application/json",
                            "Content-Length: 1000",
                            "",
                            "");
        }

        Manner(String begin, String drip) {
            this.begin = begin;
            this.drip = drip;
        }
    }

    /**
     * What a siege did.
     *
     * @param p99Millis of the counter's orders meanwhile
     * @param failed orders that were not taken
     */
    record Outcome(
            int opened, long slowestClosedMillis, int leftOpen, double p99Millis, int failed) {
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d connections, last closed after %d ms, %d left open; orders p99 %.1f ms, %d"
                            + " not taken",
                    opened,
                    slowestClosedMillis,
                    leftOpen,
                    p99Millis,
                    failed);
        }
    }

    /** When the last of them must be closed. */
    static long closedMillisMax(Manner manner) {
        return manner == Manner.SILENT ? SILENT_MILLIS_MAX : DRIP_MILLIS_MAX;
    }

    /** Opens so many, drips into them, and posts orders until they are closed or time is up. */
    Outcome run(Manner manner, int connections) throws IOException, InterruptedException {
        List<Socket> open = new ArrayList<>();
        Map<Socket, Long> since = new HashMap<>();
        for (int i = 0; i < connections; i++) {
            Socket socket = target.connect(1 + i % ADDRESSES);
            since.put(socket, System.nanoTime());
            Target.send(socket, manner.begin.replace("HOST", target.name()));
            open.add(socket);
        }
        AtomicBoolean over = new AtomicBoolean();
        List<Long> nanos = new ArrayList<>();
        AtomicInteger failed = new AtomicInteger();
        Thread counter = new Thread(() -> orders(over, nanos, failed), "counter");
        counter.start();
        long slowest = 0;
        long until =
                System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(closedMillisMax(manner) + 2_000);
        int opened = open.size();
        while (!open.isEmpty() && System.nanoTime() < until) {
            for (Socket socket : List.copyOf(open)) {
                if (isGone(socket, manner.drip)) {
                    open.remove(socket);
                    slowest = Math.max(slowest, System.nanoTime() - since.get(socket));
                }
            }
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(200));
        }
        over.set(true);
        counter.join();
        int left = open.size();
        for (Socket socket : open) {
            socket.close();
        }
        return new Outcome(
                opened, TimeUnit.NANOSECONDS.toMillis(slowest), left, p99(nanos), failed.get());
    }

    private void orders(AtomicBoolean over, List<Long> nanos, AtomicInteger failed) {
        while (!over.get()) {
            long from = System.nanoTime();
            if (!order()) {
                failed.incrementAndGet();
            }
            nanos.add(System.nanoTime() - from);
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(40));
        }
    }

    private boolean order() {
        try {
            String key = "siege-" + System.nanoTime() + "-" + orders++;
            return Target.status(target.exchange(target.order(key, false))) == 201;
        } catch (IOException refused) {
            return false;
        }
    }

    private static boolean isGone(Socket socket, String drip) {
        try {
            socket.setSoTimeout(1);
            if (!drip.isEmpty()) {
                Target.send(socket, drip);
            }
            if (socket.getInputStream().read() >= 0) {
                return false;
            }
        } catch (java.net.SocketTimeoutException quiet) {
            return false;
        } catch (IOException reset) {
            close(socket);
            return true;
        }
        close(socket);
        return true;
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException gone) {
            throw new java.io.UncheckedIOException(gone);
        }
    }

    static double p99(List<Long> nanos) {
        long[] sorted = nanos.stream().mapToLong(Long::longValue).toArray();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 0 : sorted[(sorted.length - 1) * 99 / 100] / 1e6;
    }
}
