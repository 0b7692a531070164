package sopwell.planted;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Puts in one bug after another and says which test found it: {@code PlantMain [names]}, in the
 * project's folder after {@code mvn package}. Each class of tests is run without any bug first,
 * since a test that is red anyway finds nothing.
 */
public final class PlantMain {
    private PlantMain() {}

    /** Ends with 1 when a bug was not found. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path project = Path.of("").toAbsolutePath();
        Set<String> asked = Set.of(args);
        List<Plant> plants =
                Plants.ALL.stream()
                        .filter(plant -> asked.isEmpty() || asked.contains(plant.name()))
                        .toList();
        Set<String> tests = new TreeSet<>();
        plants.forEach(plant -> tests.add(plant.test()));
        int survived = 0;
        for (String test : tests) {
            int end = run(project, null, test, "");
            if (end != RunTests.GREEN) {
                System.out.println(test + " is not green without a bug: it proves nothing");
                survived++;
            }
        }
        for (Plant plant : plants) {
            survived += run(project, plant, plant.test(), plant.name()) == RunTests.RED ? 0 : 1;
        }
        System.out.println(
                plants.size() + " bugs put in, " + survived + " not found or not to be judged");
        System.exit(survived == 0 ? 0 : 1);
    }

    private static int run(Path project, Plant plant, String test, String name)
            throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("sopwell-planted");
        try {
            PlantBed bed = new PlantBed(project, folder);
            if (plant != null) {
                bed.put(plant);
            }
            long from = System.nanoTime();
            Path said = folder.resolve("said.txt");
            int end = bed.run(test, said);
            long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - from);
            if (plant != null) {
                System.out.printf(
                        Locale.ROOT,
                        "%-24s %-9s %-44s %4d s  %s%n",
                        name,
                        end == RunTests.RED ? "found" : "SURVIVED",
                        test,
                        seconds,
                        firstFailure(said));
            }
            return end;
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** The name of the first test that was red. */
    private static String firstFailure(Path said) throws IOException {
        try (Stream<String> lines = Files.lines(said)) {
            return lines.filter(line -> line.contains("JUnit Jupiter:"))
                    .map(line -> line.substring(line.lastIndexOf(':') + 1).strip())
                    .findFirst()
                    .orElse("");
        }
    }
}
