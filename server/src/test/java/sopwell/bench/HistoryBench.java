package sopwell.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sopwell.crash.StandProcess;
import sopwell.history.HistoryMain;
import sopwell.mix.Percentile;

/**
 * What years of history cost: pages over HTTP, the start, and the disk, each beside its limit. The
 * first argument is the folder, which is made when it is not there; the second how many orders are
 * made then, the third over how many years.
 */
public final class HistoryBench {
    private static final List<String> FLAGS =
            List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx256m");
    private static final int WARM = 40;
    private static final int MEASURED = 60;
    private static final int STARTS = 7;

    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;

    private HistoryBench(String address) {
        this.address = address;
    }

    /** Prints what it measured. */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int orders = args.length > 1 ? Integer.parseInt(args[1]) : HistoryMain.ORDERS;
        int years = args.length > 2 ? Integer.parseInt(args[2]) : HistoryMain.YEARS;
        if (!Files.exists(folder.resolve("log.sqlite"))) {
            HistoryMain.make(folder, orders, years, HistoryMain.LAST, HistoryMain.SEED);
        }
        System.out.println("flags " + FLAGS + "; p95 of " + MEASURED + ", after " + WARM);
        LocalDate last = lastDay(folder);
        try (StandProcess stand = StandProcess.start(folder, FLAGS, List.of())) {
            new HistoryBench(stand.address()).pages(last, years);
        }
        starts(folder, Files.createTempDirectory("sopwell-one-day"), last);
        disk(folder);
    }

    private void pages(LocalDate last, int years) throws IOException, InterruptedException {
        List<LocalDate> days = new ArrayList<>();
        for (LocalDate day = last.minusDays(1); days.size() < WARM + MEASURED; ) {
            if (day.getDayOfWeek() != DayOfWeek.MONDAY && isThere("/mix/" + day)) {
                days.add(day);
            }
            day = day.minusDays(3);
        }
        List<String> eachDay = days.stream().map(day -> "/mix/" + day).toList();
        List<String> oneDay = List.of("/mix/" + days.get(0));
        List<String> year = List.of("/mix?from=" + last.minusYears(1).plusDays(1) + "&to=" + last);
        List<String> all =
                List.of("/mix?from=" + last.minusYears(years).plusDays(1) + "&to=" + last);
        measure("the least that the server answers (/healthz)", List.of("/healthz"), 0);
        measure("a past day's page, again", oneDay, 20);
        measure("a past day's page, each day for the first time in a while", eachDay, 20);
        measure("a year's mix", year, 150);
        measure(years + " years' Saturdays", List.of(all.get(0) + "&weekday=6"), 300);
        measure("all days of " + years + " years", all, 0);
    }

    private boolean isThere(String path) throws IOException, InterruptedException {
        return get(path).statusCode() == 200;
    }

    private void measure(String what, List<String> paths, int limitMillis)
            throws IOException, InterruptedException {
        double[] millis = new double[MEASURED];
        long bytes = 0;
        for (int round = 0; round < WARM + MEASURED; round++) {
            String path = paths.get(round % paths.size());
            long from = System.nanoTime();
            HttpResponse<String> answer = get(path);
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(path + ": " + answer.statusCode());
            }
            if (round >= WARM) {
                millis[round - WARM] = (System.nanoTime() - from) / 1e6;
                bytes = answer.body().length();
            }
        }
        Arrays.sort(millis);
        double ninetyFifth = Percentile.of(millis, 0.95);
        System.out.printf(
                Locale.ROOT,
                "%s: p50 %.1f ms, p95 %.1f ms, %d kB%s%n",
                what,
                Percentile.of(millis, 0.5),
                ninetyFifth,
                bytes / 1_000,
                limitMillis == 0 ? "" : limit(limitMillis + " ms", ninetyFifth <= limitMillis));
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(address + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** In turns, so that whatever else the machine does falls on both. */
    private static void starts(Path folder, Path one, LocalDate last)
            throws IOException, InterruptedException {
        HistoryMain.makeDay(one, last, HistoryMain.SEED);
        List<Long> many = new ArrayList<>();
        List<Long> few = new ArrayList<>();
        for (int round = 0; round < STARTS; round++) {
            many.add(start(folder));
            few.add(start(one));
        }
        double ratio = median(many) / (double) median(few);
        System.out.printf(
                Locale.ROOT,
                "start: median %d ms, with one day alone %d ms, ratio %.2f%s%n",
                median(many),
                median(few),
                ratio,
                limit("1.30", ratio <= 1.3));
    }

    private static long start(Path folder) throws IOException, InterruptedException {
        try (StandProcess stand = StandProcess.start(folder, FLAGS, List.of())) {
            long millis = stand.readyMillis();
            stand.stop();
            return millis;
        }
    }

    private static void disk(Path folder) throws IOException, SQLException {
        long bytes;
        try (Stream<Path> files = Files.list(folder)) {
            bytes = files.mapToLong(file -> file.toFile().length()).sum();
        }
        long orders = number(folder, "SELECT count(*) FROM events WHERE kind = 'order-placed'");
        double kibibytes = bytes / 1024.0 / orders;
        System.out.printf(
                Locale.ROOT,
                "disk: %,d orders, %.2f KiB each, of that %.2f in tallies%s%n",
                orders,
                kibibytes,
                folder.resolve("tallies.sqlite").toFile().length() / 1024.0 / orders,
                limit("3 KiB", kibibytes <= 3));
    }

    private static LocalDate lastDay(Path folder) throws SQLException {
        long atMs = number(folder, "SELECT max(at_ms) FROM events");
        return Instant.ofEpochMilli(atMs).atZone(ZoneId.of("America/Chicago")).toLocalDate();
    }

    private static long number(Path folder, String sql) throws SQLException {
        try (Connection connection =
                        DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("log.sqlite"));
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(sql)) {
            return result.getLong(1);
        }
    }

    private static String limit(String limit, boolean met) {
        return ", limit " + limit + ": " + (met ? "met" : "NOT MET");
    }

    private static long median(List<Long> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
