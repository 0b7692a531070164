package sopwell.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sopwell.crash.StandProcess;

/**
 * How long the server takes from its command to its first page, beside a Java program that does
 * nothing, and how much memory it holds after that: with the classes that a rehearsal kept ready,
 * as the README starts it, and without.
 */
public final class StartBench {
    private static final List<String> FLAGS =
            List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx256m");
    private static final int ROUNDS = 7;

    private StartBench() {}

    /** Prints what it measured. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("sopwell-start");
        Path archive = folder.resolve("sopwell.jsa");
        KeptClasses.rehearse(archive);
        List<String> ready = new ArrayList<>(FLAGS);
        ready.add(KeptClasses.FLAG + archive);
        List<Long> nothing = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            nothing.add(nothingMillis());
        }
        System.out.println("flags " + FLAGS);
        System.out.println("a Java program that does nothing: " + spread(nothing) + " ms");
        measure("after a rehearsal", folder, ready);
        measure("without one", folder, FLAGS);
    }

    private static void measure(String what, Path folder, List<String> flags)
            throws IOException, InterruptedException {
        List<Long> pages = new ArrayList<>();
        List<Long> kibibytes = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            long from = System.nanoTime();
            try (StandProcess stand =
                    StandProcess.start(
                            folder.resolve("stand"), flags, List.of("--start-with", "menu"))) {
                firstPage(stand.address());
                pages.add((System.nanoTime() - from) / 1_000_000);
                kibibytes.add(residentKibibytes(stand.pid()));
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s: start to first page %s ms, aim 1500; resident %d MiB at most, aim 200%n",
                what,
                spread(pages),
                kibibytes.stream().mapToLong(Long::longValue).max().orElseThrow() / 1024);
    }

    private static long nothingMillis() throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        long from = System.nanoTime();
        new ProcessBuilder(java, "-XX:+UseSerialGC", "-version")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        return (System.nanoTime() - from) / 1_000_000;
    }

    private static void firstPage(String address) throws IOException, InterruptedException {
        HttpResponse<String> page =
                HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(address + "/counter")).build(),
                                HttpResponse.BodyHandlers.ofString());
        if (page.statusCode() != 200 || !page.body().contains("</html>")) {
            throw new IllegalStateException("no page: " + page.statusCode());
        }
    }

    private static long residentKibibytes(long pid) throws IOException {
        for (String line : Files.readAllLines(Path.of("/proc/" + pid + "/status"))) {
            if (line.startsWith("VmRSS:")) {
                return Long.parseLong(line.replaceAll("\\D", ""));
            }
        }
        throw new IllegalStateException("the system does not say how much memory is held");
    }

    private static String spread(List<Long> values) {
        List<Long> sorted = values.stream().sorted().toList();
        long worst = sorted.get(sorted.size() - 1);
        return "median " + sorted.get(sorted.size() / 2) + ", worst " + worst;
    }
}
