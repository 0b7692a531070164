package sopwell.journal;

import java.util.Locale;
import java.util.logging.Level;

/** How much a happening matters. Immutable. */
public enum Weight {
    /** Good to know. */
    INFO,
    /** Somebody should look. */
    WARNING,
    /** Something is broken. */
    ERROR;

    /** The word in lines. */
    String written() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As Java's loggers have it. */
    Level level() {
        return switch (this) {
            case INFO -> Level.INFO;
            case WARNING -> Level.WARNING;
            case ERROR -> Level.SEVERE;
        };
    }

    static Weight of(Level level) {
        if (level.intValue() >= Level.SEVERE.intValue()) {
            return ERROR;
        }
        return level.intValue() >= Level.WARNING.intValue() ? WARNING : INFO;
    }
}
