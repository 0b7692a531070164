package sopwell.access;

import java.util.Locale;
import java.util.Optional;

/** What a paired device is for, which says what it may do while nobody is signed in. Immutable. */
public enum Use {
    /** A screen at a station or the pass. */
    LINE,
    /** A till or tablet at the counter. */
    COUNTER,
    /** A screen that guests look at. */
    GUESTS,
    /** A machine in the back. */
    OFFICE;

    /** The fixed name, as it is kept. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The use of a fixed name. */
    public static Optional<Use> of(String code) {
        return Codes.find(values(), code);
    }
}
