package sopwell.access;

import java.util.Locale;
import java.util.Optional;

/** What somebody is at the stand. Each may what the one before may, and more. Immutable. */
public enum Role {
    /** Watches over the stand's figures, as a program does. */
    WATCH,
    /** Works at a station. */
    LINE,
    /** Takes orders and money. */
    COUNTER,
    /** Leads a shift. */
    LEAD,
    /** Owns the stand. */
    OWNER;

    /** The fixed name, as it is kept. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The role of a fixed name. */
    public static Optional<Role> of(String code) {
        return Codes.find(values(), code);
    }

    /** Whether this role proves itself with a password, not with a PIN alone. */
    public boolean hasPassword() {
        return this == LEAD || this == OWNER;
    }
}
