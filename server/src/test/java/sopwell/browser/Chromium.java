package sopwell.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Where Chromium and its driver are.
 *
 * @param program the browser
 * @param driver the program that drives it
 */
record Chromium(Path program, Path driver) {
    /** What a developer without Chromium reads. */
    static final String MISSING =
            "skipped: no Chromium found; install it with: apt-get install chromium chromium-driver";

    private static final AtomicBoolean SAID = new AtomicBoolean();

    /** The browser of this machine; without one the test that asks is skipped, or fails. */
    static Chromium require() {
        Map<String, String> environment = System.getenv();
        Optional<Chromium> found = find(environment);
        if (found.isEmpty()) {
            if (mustBeThere(environment)) {
                Assertions.fail("SOPWELL_REQUIRE_BROWSER is 1, and there is no Chromium here");
            }
            if (SAID.compareAndSet(false, true)) {
                System.out.println(MISSING);
            }
            Assumptions.abort(MISSING);
        }
        return found.orElseThrow();
    }

    static boolean mustBeThere(Map<String, String> environment) {
        return "1".equals(environment.get("SOPWELL_REQUIRE_BROWSER"));
    }

    static Optional<Chromium> find(Map<String, String> environment) {
        String path = environment.getOrDefault("PATH", "");
        Optional<Path> program =
                at(environment.get("SOPWELL_CHROMIUM"), path, "chromium", "chromium-browser");
        Optional<Path> driver = at(environment.get("SOPWELL_CHROMEDRIVER"), path, "chromedriver");
        return program.flatMap(p -> driver.map(d -> new Chromium(p, d)));
    }

    /** The named file when one is named, else the first of the names on the path. */
    private static Optional<Path> at(String named, String path, String... names) {
        if (named != null && !named.isBlank()) {
            return Optional.of(Path.of(named)).filter(Files::isExecutable);
        }
        List<String> folders = List.of(path.split(File.pathSeparator));
        return Stream.of(names)
                .flatMap(name -> folders.stream().map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
