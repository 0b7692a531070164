package sopwell.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.crash.StandProcess;
import sopwell.history.HistoryMain;

/**
 * A year of a busy stand under the flags that the guide's service has: how long the jar takes to
 * listen and to its first page, and how much memory it holds then and after the pages that look
 * back. The first argument is the folder, made when it is not there and up to yesterday; the second
 * how many starts. What {@code MALLOC_ARENA_MAX} and the like say is handed on.
 */
public final class YearBench {
    private static final int ORDERS = 150_000;
    private static final int DAYS = 30;
    private static final int START_MILLIS_MAX = 2_000;
    private static final int RESIDENT_MEBIBYTES_MAX = 256;
    private static final Pattern SERVICE =
            Pattern.compile("(?m)^ExecStart=/usr/bin/java (.*) -jar ");

    private final HttpClient client = HttpClient.newHttpClient();
    private final StandProcess stand;

    private YearBench(StandProcess stand) {
        this.stand = stand;
    }

    /** Prints what it measured. */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int starts = args.length > 1 ? Integer.parseInt(args[1]) : 5;
        LocalDate yesterday =
                LocalDate.now(Clock.system(ZoneId.of("America/Chicago"))).minusDays(1);
        if (!Files.exists(folder.resolve("log.sqlite"))) {
            HistoryMain.make(folder, ORDERS, 1, yesterday, HistoryMain.SEED);
        }
        List<String> flags = flags();
        System.out.println("flags " + flags);
        List<Long> listening = new ArrayList<>();
        List<Long> pages = new ArrayList<>();
        for (int start = 1; start <= starts; start++) {
            long from = System.nanoTime();
            try (StandProcess stand = StandProcess.start(folder, flags, List.of())) {
                YearBench bench = new YearBench(stand);
                bench.get("/");
                pages.add((System.nanoTime() - from) / 1_000_000);
                listening.add(stand.readyMillis());
                if (start == starts) {
                    bench.look(yesterday);
                }
                stand.stop();
            }
        }
        start("start to listening", listening);
        start("start to the first page", pages);
    }

    private static List<String> flags() throws IOException {
        Matcher service = SERVICE.matcher(Files.readString(Path.of("docs/operating.md")));
        if (!service.find()) {
            throw new IllegalStateException("the guide has no service");
        }
        return List.of(service.group(1).split(" "));
    }

    private void look(LocalDate yesterday) throws IOException, InterruptedException {
        resident("after the first page");
        get("/counter");
        get("/boards/line");
        get("/pass");
        resident("after the counter and two boards");
        for (int back = 0; back < DAYS; back++) {
            LocalDate day = yesterday.minusDays(back);
            for (String page : List.of("/mix/", "/waits/", "/till/", "/audit/")) {
                get(page + day);
            }
        }
        resident("after " + DAYS + " past days: mix, waits, money, who did what");
        String year = "?from=" + yesterday.minusYears(1).plusDays(1) + "&to=" + yesterday;
        get("/mix" + year);
        get("/waits" + year);
        resident("after a year's mix and waits");
        get("/prep");
        resident("after the prep plan");
        get("/playback/" + yesterday + "/boards/line?at=720");
        get("/what-if/" + yesterday);
        resident("after a day played back, and what if");
        get("/metrics");
        resident("after the figures");
    }

    private int get(String path) throws IOException, InterruptedException {
        long from = System.nanoTime();
        HttpResponse<String> got =
                client.send(
                        HttpRequest.newBuilder(URI.create(stand.address() + path)).build(),
                        HttpResponse.BodyHandlers.ofString());
        long millis = (System.nanoTime() - from) / 1_000_000;
        if (got.statusCode() >= 500) {
            throw new IllegalStateException(path + ": " + got.statusCode());
        }
        if (got.statusCode() != 200 || millis > 1_000) {
            System.out.println("  " + path + ": " + got.statusCode() + ", " + millis + " ms");
        }
        return got.statusCode();
    }

    private void resident(String when) throws IOException {
        long now = mebibytes("VmRSS:");
        System.out.printf(
                Locale.ROOT,
                "resident %s: %d MiB, at most so far %d, limit %d: %s%n",
                when,
                now,
                mebibytes("VmHWM:"),
                RESIDENT_MEBIBYTES_MAX,
                now <= RESIDENT_MEBIBYTES_MAX ? "met" : "NOT MET");
    }

    private long mebibytes(String what) throws IOException {
        for (String line : Files.readAllLines(Path.of("/proc/" + stand.pid() + "/status"))) {
            if (line.startsWith(what)) {
                return Long.parseLong(line.replaceAll("\\D", "")) / 1_024;
            }
        }
        throw new IllegalStateException("the system does not say how much memory is held");
    }

    private static void start(String what, List<Long> millis) {
        List<Long> sorted = millis.stream().sorted().toList();
        long median = sorted.get(sorted.size() / 2);
        System.out.printf(
                Locale.ROOT,
                "%s: median %d ms, worst %d ms, limit %d ms: %s%n",
                what,
                median,
                sorted.get(sorted.size() - 1),
                START_MILLIS_MAX,
                median <= START_MILLIS_MAX ? "met" : "NOT MET");
    }
}
