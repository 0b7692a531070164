package sopwell.crash;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The demo's stand in a folder, with more numbers than a run has orders. Stateless. */
final class DemoFolder {
    private static final String NUMBERS = "\"orderNumberMax\": 999,";

    private DemoFolder() {}

    /** Each order then has a number that no other had before it. */
    static void make(Path data) throws IOException {
        Files.createDirectories(data);
        for (String name : List.of("stand.json", "menu.json", "recipes.json")) {
            String text;
            try (InputStream in = DemoFolder.class.getResourceAsStream("/demo/" + name)) {
                text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            }
            String fitted = text.replace(NUMBERS, NUMBERS.replace("999", "9999999"));
            Files.writeString(data.resolve(name), fitted);
        }
    }
}
