package sopwell.kitchen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What was made again on the newest business day, in the order in which it was said. Not
 * thread-safe: its owner is one thread.
 */
public final class Remakes {
    private final List<KitchenEvent.PartRemade> all = new ArrayList<>();
    private LocalDate date;

    /** Every remake but those of parts that went along with another. */
    public List<KitchenEvent.PartRemade> all() {
        return Collections.unmodifiableList(all);
    }

    void add(KitchenEvent.PartRemade remade) {
        if (!remade.along()) {
            all.add(remade);
        }
    }

    /** A day opens; another date starts with nothing made again. */
    void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            all.clear();
        }
        date = opened;
    }
}
