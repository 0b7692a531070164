package sopwell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.time.Instant;
import java.util.jar.Manifest;

/**
 * When this Sopwell was made, as its jar says: no clock that is right says an earlier time.
 * Stateless.
 */
final class BuiltAt {
    private static final String ENTRY = "Sopwell-Built";

    private BuiltAt() {}

    /** In milliseconds since 1970-01-01 UTC; 0 where no jar says it. */
    static long millis() {
        String name = BuiltAt.class.getSimpleName() + ".class";
        String here = BuiltAt.class.getResource(name).toString();
        if (!here.startsWith("jar:")) {
            return 0;
        }
        String manifest = here.substring(0, here.indexOf('!')) + "!/META-INF/MANIFEST.MF";
        try (InputStream in = new URL(manifest).openStream()) {
            String built = new Manifest(in).getMainAttributes().getValue(ENTRY);
            return built == null ? 0 : Instant.parse(built).toEpochMilli();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
