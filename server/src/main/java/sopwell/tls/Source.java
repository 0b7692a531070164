package sopwell.tls;

import java.time.Instant;
import javax.net.ssl.X509ExtendedKeyManager;

/** Where a stand's key and certificate come from. For one thread at a time. */
interface Source {
    /**
     * What to answer handshakes with from now on.
     *
     * @throws TlsFault when it can't be had
     */
    X509ExtendedKeyManager keys(Instant now);
}
