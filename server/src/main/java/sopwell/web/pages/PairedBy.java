package sopwell.web.pages;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.access.AccessLimits;
import sopwell.access.Secrets;
import sopwell.audit.Who;

/** Who offered the pairing codes that may still be good, for the log. Thread-safe. */
final class PairedBy {
    private final Map<String, Who> byCode =
            new LinkedHashMap<>() {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Who> eldest) {
                    return size() > AccessLimits.PAIRINGS_MAX;
                }
            };

    synchronized void offered(String code, Who who) {
        byCode.put(code, who);
    }

    /** Who offered a code that was just taken, as it was typed. */
    synchronized Optional<Who> taken(String typed) {
        return Optional.ofNullable(byCode.remove(Secrets.read(typed)));
    }
}
