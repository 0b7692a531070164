package sopwell.access;

import java.util.Optional;

/** Is told of each try to get in. Implementations are thread-safe, quick, and never throw. */
@FunctionalInterface
public interface Witness {
    /** A secret was typed. */
    void tried(Attempt attempt);

    /** What was typed. */
    enum Secret {
        PIN,
        PASSWORD,
        /** The owner's password alone, which says who it is by itself. */
        OWNER,
        /** A code that lets in a device. */
        CODE
    }

    /**
     * A try, by ids alone.
     *
     * @param person who is meant; empty where the secret says so itself
     * @param device where it was typed; empty at one that is not paired
     * @param refused why not, or empty when it was right
     * @param wasLooked whether the secret was looked at; else it came too soon or too often
     */
    record Attempt(
            Secret secret,
            String person,
            String device,
            Optional<Refused.Why> refused,
            boolean wasLooked) {}
}
