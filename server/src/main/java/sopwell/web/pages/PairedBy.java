package sopwell.web.pages;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.access.AccessLimits;
import sopwell.access.Secrets;
import sopwell.audit.Who;

/** Who offered the last pairing codes, for the log. Thread-safe. */
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

    /** Who offered a code, as it was typed. */
    synchronized Optional<Who> of(String typed) {
        return Optional.ofNullable(byCode.get(Secrets.read(typed)));
    }
}
