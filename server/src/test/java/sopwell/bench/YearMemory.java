package sopwell.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import sopwell.crash.StandProcess;

/**
 * Opens all the main pages of a stand with a year behind it, takes orders for a minute, and says
 * how much memory the process holds after each. Not thread-safe.
 */
final class YearMemory {
    private static final int DAYS = 30;
    private static final int ORDERS = 150;
    private static final long ORDER_MILLIS = 400;
    private static final int MEBIBYTES_MAX = 256;
    private static final long SLOW_MILLIS = 1_000;

    private final HttpClient client = HttpClient.newHttpClient();
    private final StandProcess stand;

    YearMemory(StandProcess stand) {
        this.stand = stand;
    }

    /** Opens the first page. */
    void first() throws IOException, InterruptedException {
        get("/");
    }

    /** Walks through everything; the newest day is named. */
    void look(LocalDate newest) throws IOException, InterruptedException {
        resident("after the first page");
        for (String page : List.of("/counter", "/boards/line", "/pass")) {
            get(page);
        }
        resident("after the counter and two boards");
        for (int back = 0; back < DAYS; back++) {
            LocalDate day = newest.minusDays(back);
            for (String page : List.of("/mix/", "/waits/", "/till/", "/audit/")) {
                get(page + day);
            }
        }
        resident("after " + DAYS + " past days: mix, waits, money, who did what");
        String year = "?from=" + newest.minusYears(1).plusDays(1) + "&to=" + newest;
        get("/mix" + year);
        get("/waits" + year);
        resident("after a year's mix and waits");
        get("/prep");
        resident("after the prep plan");
        get("/playback/" + newest + "/boards/line?at=720");
        get("/what-if/" + newest);
        get("/metrics");
        resident("after a day played back, what if, and the figures");
        order();
        resident("after " + ORDERS + " orders, a board and the counter after each");
        get("/mix" + year);
        get("/waits" + year);
        get("/prep");
        resident("after the year and the plan once more");
    }

    private void order() throws IOException, InterruptedException {
        long next = System.nanoTime();
        for (int order = 0; order < ORDERS; order++) {
            HttpRequest asked =
                    HttpRequest.newBuilder(URI.create(stand.address() + "/api/orders"))
                            .header("Content-Type", "application/json")
                            .header("Idempotency-Key", "year-" + order)
                            .POST(
                                    HttpRequest.BodyPublishers.ofString(
                                            "{\"call\": \"2 beef dipped hot, fries\"}"))
                            .build();
            int status = client.send(asked, HttpResponse.BodyHandlers.discarding()).statusCode();
            if (status != 201) {
                throw new IllegalStateException("an order was answered " + status);
            }
            get("/boards/line");
            get("/counter");
            next += TimeUnit.MILLISECONDS.toNanos(ORDER_MILLIS);
            LockSupport.parkNanos(Math.max(0, next - System.nanoTime()));
        }
    }

    /** A day on which the stand was closed has no page. */
    private void get(String path) throws IOException, InterruptedException {
        long from = System.nanoTime();
        HttpResponse<String> got =
                client.send(
                        HttpRequest.newBuilder(URI.create(stand.address() + path)).build(),
                        HttpResponse.BodyHandlers.ofString());
        long millis = (System.nanoTime() - from) / 1_000_000;
        if (got.statusCode() != 200 && got.statusCode() != 404) {
            throw new IllegalStateException(path + ": " + got.statusCode());
        }
        if (millis > SLOW_MILLIS) {
            System.out.println("  " + path + ": " + millis + " ms");
        }
    }

    private void resident(String when) throws IOException {
        long now = mebibytes("status", "VmRSS:");
        System.out.printf(
                Locale.ROOT,
                "%s: resident %d MiB, its own share %d MiB, at most so far %d MiB, limit %d: %s%n",
                when,
                now,
                mebibytes("smaps_rollup", "Pss:"),
                mebibytes("status", "VmHWM:"),
                MEBIBYTES_MAX,
                now <= MEBIBYTES_MAX ? "met" : "NOT MET");
    }

    private long mebibytes(String file, String what) throws IOException {
        for (String line : Files.readAllLines(Path.of("/proc/" + stand.pid() + "/" + file))) {
            if (line.startsWith(what)) {
                return Long.parseLong(line.replaceAll("\\D", "")) / 1_024;
            }
        }
        throw new IllegalStateException("the system does not say how much memory is held");
    }
}
