package sopwell.kitchen;

import java.time.LocalDate;

/**
 * How many edits of the newest business day came when work had begun already on what they altered.
 * Not thread-safe: its owner is one thread.
 */
public final class LateEdits {
    private LocalDate date;
    private int changes;
    private int changesAfterStart;
    private int voidsAfterStart;

    /** Edits of orders, answers to queries that changed a line among them. */
    public int changes() {
        return changes;
    }

    /** Edits that altered, or took off, something begun. */
    public int changesAfterStart() {
        return changesAfterStart;
    }

    /** Void orders of which something was begun. */
    public int voidsAfterStart() {
        return voidsAfterStart;
    }

    void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            changes = 0;
            changesAfterStart = 0;
            voidsAfterStart = 0;
        }
        date = opened;
    }

    void changed(boolean late) {
        changes++;
        changesAfterStart += late ? 1 : 0;
    }

    void voided(boolean late) {
        voidsAfterStart += late ? 1 : 0;
    }
}
