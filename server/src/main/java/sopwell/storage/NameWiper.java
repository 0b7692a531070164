package sopwell.storage;

import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import sopwell.Check;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.log.Blanked;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.Recorded;

/**
 * What a log needs so that names can be taken out of it: chance beside each event that may name
 * somebody, and the rows that were prepared to lose theirs. Thread-safe.
 */
final class NameWiper {
    private static final int SALT_BYTES = 16;

    private final SecureRandom chance = new SecureRandom();
    private final AtomicReference<Wiping> prepared = new AtomicReference<>();

    /** Puts what is prepared, if it is anything, in place of what was. */
    Optional<Blanked> prepare(Wiping wiping) {
        if (wiping.isNothing()) {
            return Optional.empty();
        }
        prepared.set(wiping);
        return Optional.of(wiping.blanked());
    }

    /**
     * Chance of its own for a row that may name somebody, or, as a command's first, whose
     * fingerprint may; otherwise null. A row that keeps its chance must tell nothing of another's.
     */
    byte[] salt(Entry entry, int ordinal) {
        boolean may =
                ordinal == 0
                        ? entry.events().stream().anyMatch(NameWiper::mayName)
                        : mayName(entry.events().get(ordinal));
        if (!may) {
            return null;
        }
        byte[] salt = new byte[SALT_BYTES];
        chance.nextBytes(salt);
        return salt;
    }

    private static boolean mayName(Event event) {
        return NameFields.mayName(EventCodec.name(event));
    }

    /** By the places of those events that take names out, the rows that they take them out of. */
    Map<Long, List<LogRow>> wipes(List<Recorded> recorded) {
        Map<Long, List<LogRow>> wipes = new TreeMap<>();
        for (Recorded one : recorded) {
            if (one.event() instanceof NamesErased erased) {
                Wiping wiping = prepared.get();
                Check.that(
                        wiping != null && wiping.blanked().digest().equals(erased.digest()),
                        "names go out as it was prepared");
                wipes.put(one.seq(), wiping.wiped());
            }
        }
        return wipes;
    }
}
