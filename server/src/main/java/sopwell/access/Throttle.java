package sopwell.access;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Counts tries before they are looked at, and keeps the counts. Thread-safe.
 *
 * <p>A place is a person at a device, or the owner's password at devices that are not paired.
 */
final class Throttle {
    /** What the name of a place ends with at which a person's PIN is tried. */
    static final String PIN = "/pin";

    /** The same for a person's password. */
    static final String PASSWORD = "/password";

    private final Kept kept;

    Throttle(Kept kept) {
        this.kept = kept;
    }

    /** Takes one try, unless there is none to be had now. */
    Optional<Refused> take(String place, long nowMs) {
        synchronized (kept) {
            Tries before = at(place);
            if (before.isLocked()) {
                return Optional.of(Refused.of(Refused.Why.LOCKED));
            }
            if (before.isFromLater(nowMs)) {
                before = before.from(nowMs);
                put(place, before);
            }
            if (before.waitSeconds(nowMs) > 0) {
                return Optional.of(Refused.of(Refused.Why.WAIT, before.waitSeconds(nowMs)));
            }
            put(place, before.oneMore(nowMs));
            return Optional.empty();
        }
    }

    /** What a wrong try is told: how many are left, or what comes instead. */
    Refused wrong(String place, long nowMs) {
        Tries now = at(place);
        if (now.isLocked()) {
            return Refused.of(Refused.Why.LOCKED);
        }
        return now.left() > 0
                ? Refused.of(Refused.Why.WRONG_SECRET, now.left())
                : Refused.of(Refused.Why.WAIT, now.waitSeconds(nowMs));
    }

    /** The tries at a place so far. */
    private Tries at(String place) {
        return kept.state().tries().getOrDefault(place, Tries.NONE);
    }

    /** Forgets all tries at some places. */
    void forget(Predicate<String> places) {
        kept.change(
                state -> {
                    Map<String, Tries> tries = new HashMap<>(state.tries());
                    tries.keySet().removeIf(places);
                    return state.withTries(tries);
                });
    }

    private void put(String place, Tries next) {
        kept.change(
                state -> {
                    Map<String, Tries> tries = new HashMap<>(state.tries());
                    tries.put(place, next);
                    if (tries.size() > AccessLimits.TRIES_PLACES_MAX) {
                        tries.entrySet().stream()
                                .filter(entry -> !entry.getKey().equals(place))
                                .min(Comparator.comparingInt(e -> e.getValue().count()))
                                .ifPresent(fewest -> tries.remove(fewest.getKey()));
                    }
                    return state.withTries(tries);
                });
    }
}
