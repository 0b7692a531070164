package sopwell.access;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The pairing codes that are good just now; a restart ends them. Thread-safe. */
final class Pairings {
    private final Map<String, Offer> offers = new HashMap<>();
    private final Map<String, Integer> wrongByAddress = new HashMap<>();
    private int wrong;

    /** What a code lets in. */
    record Offer(String name, Use use, long untilMs) {}

    /** Makes a code good, unless too many are. */
    synchronized boolean offer(String code, Offer offer, long nowMs) {
        prune(nowMs);
        if (offers.size() >= AccessLimits.PAIRINGS_MAX) {
            return false;
        }
        offers.put(code, offer);
        return true;
    }

    /** Takes a code's offer, which nobody gets a second time; or says why not. */
    synchronized Outcome<Offer> take(String code, String address, long nowMs) {
        prune(nowMs);
        if (offers.isEmpty()) {
            return Outcome.not(Refused.Why.CODE_WRONG);
        }
        int before = wrongByAddress.getOrDefault(address, 0);
        if (before >= AccessLimits.PAIRING_TRIES_MAX) {
            return Outcome.not(Refused.Why.CODE_TRIES, AccessLimits.PAIRING_MILLIS_MAX / 1_000);
        }
        Optional<Offer> found = Optional.ofNullable(offers.remove(code));
        if (found.isPresent()) {
            return Outcome.done(found.get());
        }
        wrongByAddress.put(address, before + 1);
        wrong++;
        if (wrong >= AccessLimits.PAIRING_ALL_TRIES_MAX) {
            offers.clear();
        }
        return Outcome.not(Refused.Why.CODE_WRONG);
    }

    /** Forgets what is no longer good; who typed wrongly, once no code is left to be guessed. */
    private void prune(long nowMs) {
        offers.values().removeIf(offer -> nowMs >= offer.untilMs());
        if (offers.isEmpty()) {
            wrongByAddress.clear();
            wrong = 0;
        }
    }
}
