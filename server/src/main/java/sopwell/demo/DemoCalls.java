package sopwell.demo;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What invented guests say, and what they are called; a call that stands twice is twice as likely.
 * Immutable.
 */
record DemoCalls(List<String> calls, List<String> names) {
    static DemoCalls read() {
        return new DemoCalls(lines("/demo/calls.txt"), lines("/demo/names.txt"));
    }

    String anyCall(SplittableRandom random) {
        return calls.get(random.nextInt(calls.size()));
    }

    String anyName(SplittableRandom random) {
        return names.get(random.nextInt(names.size()));
    }

    /** What stands in a file of the demo, a line each. */
    static List<String> lines(String resource) {
        try (InputStream in = DemoCalls.class.getResourceAsStream(resource);
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.isBlank()).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
