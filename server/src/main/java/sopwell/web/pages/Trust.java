package sopwell.web.pages;

import java.time.Instant;
import java.util.List;

/**
 * The stand's own authority, which a tablet trusts once. Immutable.
 *
 * @param pem its certificate
 * @param fingerprint SHA-256 of it, two hexadecimal digits at a time
 * @param names what it vouches for
 * @param until when it ends
 */
public record Trust(String pem, String fingerprint, List<String> names, Instant until) {
    public Trust {
        names = List.copyOf(names);
    }
}
