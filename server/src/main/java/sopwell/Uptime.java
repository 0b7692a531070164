package sopwell;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.LongSupplier;

/**
 * For how long the box is up, in milliseconds, also while it slept: Linux says so in a file. Where
 * there is none it is Java's own clock, which sleeps with the box. Thread-safe.
 */
final class Uptime implements LongSupplier {
    private final Path file;
    private final LongSupplier nanos;

    Uptime(Path file, LongSupplier nanos) {
        this.file = file;
        this.nanos = nanos;
    }

    /** As this box says it. */
    static Uptime ofBox(LongSupplier nanos) {
        return new Uptime(Path.of("/proc/uptime"), nanos);
    }

    @Override
    public long getAsLong() {
        try {
            String text = Files.readString(file, StandardCharsets.US_ASCII);
            return new BigDecimal(text.split(" ", -1)[0]).movePointRight(3).longValue();
        } catch (IOException | NumberFormatException none) {
            return Duration.ofNanos(nanos.getAsLong()).toMillis();
        }
    }
}
