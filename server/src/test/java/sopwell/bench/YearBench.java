package sopwell.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
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
import java.util.stream.Stream;
import sopwell.crash.StandProcess;
import sopwell.history.HistoryMain;

/**
 * A year of a busy stand under the flags that the guide's service has: how long the jar takes to
 * listen and to its first page, and how much memory it holds after the main pages and a minute of
 * orders, beside their limits. The first argument is the folder, made when it is not there and up
 * to yesterday; the second how many starts, the third how many walks through the pages. The folder
 * stays as it is: orders are taken by a copy of it.
 */
public final class YearBench {
    private static final int ORDERS = 150_000;
    private static final int START_MILLIS_MAX = 2_000;
    private static final Pattern SERVICE =
            Pattern.compile("(?m)^ExecStart=/usr/bin/java (.*) -jar ");

    private final Path folder;
    private final Path copy;
    private final LocalDate newest;

    private YearBench(Path folder, Path copy, LocalDate newest) {
        this.folder = folder;
        this.copy = copy;
        this.newest = newest;
    }

    /** Prints what it measured. */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int starts = args.length > 1 ? Integer.parseInt(args[1]) : 5;
        int walks = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        LocalDate yesterday =
                LocalDate.now(Clock.system(ZoneId.of("America/Chicago"))).minusDays(1);
        if (!Files.exists(folder.resolve("log.sqlite"))) {
            HistoryMain.make(folder, ORDERS, 1, yesterday, HistoryMain.SEED);
        }
        Path temporary = Files.createTempDirectory("sopwell-year");
        Path archive = temporary.resolve("sopwell.jsa");
        YearBench bench = new YearBench(folder, temporary.resolve("copy"), yesterday);
        try {
            KeptClasses.rehearse(archive);
            List<String> service = service(archive);
            List<String> without =
                    service.stream().filter(flag -> !flag.startsWith(KeptClasses.FLAG)).toList();
            bench.start("the guide's service", service, starts);
            bench.start("the same without kept classes", without, starts);
            bench.start("java -jar alone", List.of(), starts);
            for (int walk = 0; walk < walks; walk++) {
                bench.walk(service);
            }
        } finally {
            delete(temporary);
        }
    }

    /** The service's flags, with an archive of the bench's own. */
    private static List<String> service(Path archive) throws IOException {
        Matcher service = SERVICE.matcher(Files.readString(Path.of("docs/operating.md")));
        if (!service.find() || !service.group(1).contains(KeptClasses.FLAG)) {
            throw new IllegalStateException("the guide's service keeps no classes");
        }
        String own = KeptClasses.FLAG + archive;
        return Stream.of(service.group(1).split(" "))
                .map(flag -> flag.startsWith(KeptClasses.FLAG) ? own : flag)
                .toList();
    }

    private void start(String how, List<String> flags, int starts)
            throws IOException, InterruptedException {
        List<Long> listening = new ArrayList<>();
        List<Long> pages = new ArrayList<>();
        for (int start = 0; start < starts; start++) {
            long from = System.nanoTime();
            try (StandProcess stand = StandProcess.start(folder, flags, List.of())) {
                new YearMemory(stand).first();
                pages.add((System.nanoTime() - from) / 1_000_000);
                listening.add(stand.readyMillis());
                stand.stop();
            }
        }
        System.out.println(how + ", flags " + flags + ", load average " + load());
        say("start to listening", listening);
        say("start to the first page", pages);
    }

    private void walk(List<String> flags) throws IOException, InterruptedException {
        delete(copy);
        Files.createDirectory(copy);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        System.out.println("a walk through the pages, load average " + load());
        try (StandProcess stand = StandProcess.start(copy, flags, List.of())) {
            YearMemory memory = new YearMemory(stand);
            memory.first();
            memory.look(newest);
            stand.stop();
        }
    }

    private static void say(String what, List<Long> millis) {
        List<Long> sorted = millis.stream().sorted().toList();
        long median = sorted.get(sorted.size() / 2);
        System.out.printf(
                Locale.ROOT,
                "  %s: median %d ms, worst %d ms of %d, limit %d ms: %s%n",
                what,
                median,
                sorted.get(sorted.size() - 1),
                sorted.size(),
                START_MILLIS_MAX,
                median <= START_MILLIS_MAX ? "met" : "NOT MET");
    }

    private static String load() {
        return String.format(
                Locale.ROOT,
                "%.1f",
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static void delete(Path top) throws IOException {
        if (!Files.exists(top)) {
            return;
        }
        try (Stream<Path> all = Files.walk(top)) {
            for (Path path : all.sorted((one, other) -> other.compareTo(one)).toList()) {
                Files.delete(path);
            }
        }
    }
}
