package sopwell;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.LongAdder;
import java.util.logging.Logger;
import sopwell.access.Refused;
import sopwell.access.Witness;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * Counts what came of typed secrets, and tells of them by ids. A try that was not looked at is
 * counted alone: whoever is told to wait could fill a log otherwise. Thread-safe.
 */
final class SignIns implements Witness {
    private static final Logger LOGGER = Logger.getLogger(SignIns.class.getName());

    private final LongAdder done = new LongAdder();
    private final LongAdder failed = new LongAdder();
    private final LongAdder lockedOut = new LongAdder();

    @Override
    public void tried(Attempt attempt) {
        if (attempt.refused().isEmpty()) {
            done.increment();
            tell(Happening.SIGNED_IN, attempt);
            return;
        }
        failed.increment();
        if (attempt.wasLooked()) {
            boolean isLast = attempt.refused().get() == Refused.Why.LOCKED;
            if (isLast) {
                lockedOut.increment();
            }
            tell(isLast ? Happening.LOCKED_OUT : Happening.SIGN_IN_FAILED, attempt);
        }
    }

    private static void tell(Happening what, Attempt attempt) {
        Told.of(what)
                .with("secret", attempt.secret())
                .id("person", attempt.person())
                .id("device", attempt.device().isEmpty() ? "unpaired" : attempt.device())
                .to(LOGGER);
    }

    /** How many came to what. */
    Map<String, Long> counts() {
        return new TreeMap<>(Map.of("done", done.sum(), "failed", failed.sum()));
    }

    /** How often the last try there was went wrong. */
    long lockedOut() {
        return lockedOut.sum();
    }
}
