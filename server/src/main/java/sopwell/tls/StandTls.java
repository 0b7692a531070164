package sopwell.tls;

import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Logger;
import javax.net.ssl.KeyManager;
import javax.net.ssl.SSLContext;
import javax.net.ssl.X509ExtendedKeyManager;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * What a stand answers handshakes with. {@link #renew} belongs to one thread; all else is
 * thread-safe.
 */
public final class StandTls {
    /** Nothing older, and nothing without authenticated encryption. */
    public static final List<String> PROTOCOLS = List.of("TLSv1.3", "TLSv1.2");

    public static final List<String> SUITES =
            List.of(
                    "TLS_AES_128_GCM_SHA256",
                    "TLS_AES_256_GCM_SHA384",
                    "TLS_CHACHA20_POLY1305_SHA256",
                    "TLS_ECDHE_ECDSA_WITH_AES_128_GCM_SHA256",
                    "TLS_ECDHE_ECDSA_WITH_AES_256_GCM_SHA384",
                    "TLS_ECDHE_ECDSA_WITH_CHACHA20_POLY1305_SHA256",
                    "TLS_ECDHE_RSA_WITH_AES_128_GCM_SHA256",
                    "TLS_ECDHE_RSA_WITH_AES_256_GCM_SHA384",
                    "TLS_ECDHE_RSA_WITH_CHACHA20_POLY1305_SHA256");

    /** How often whoever runs the stand has it look whether something is due: every hour. */
    public static final long LOOK_SECONDS = 3_600;

    private static final Logger LOGGER = Logger.getLogger(StandTls.class.getName());

    private final Source source;
    private final LatestKeys keys;
    private final SSLContext context;
    private volatile Optional<Authority> authority;

    /**
     * The stand's own authority, as tablets are told of it.
     *
     * @param pem its certificate
     * @param fingerprint SHA-256 of it, two hexadecimal digits at a time
     * @param names what it vouches for
     * @param until when it ends
     */
    public record Authority(String pem, String fingerprint, List<String> names, Instant until) {
        public Authority {
            names = List.copyOf(names);
        }
    }

    private StandTls(Source source, Instant now) {
        this.source = source;
        X509ExtendedKeyManager first = source.keys(now);
        keys = new LatestKeys(first);
        authority = told(source);
        try {
            context = SSLContext.getInstance("TLS");
            context.init(new KeyManager[] {keys}, null, null);
        } catch (GeneralSecurityException fault) {
            throw new TlsFault("This Java can't speak TLS: " + fault, fault);
        }
    }

    /**
     * Must be called before any class of Java's TLS is loaded: a peer that asks for one handshake
     * after another on the same connection would have the stand do the work.
     */
    public static void refuseRenegotiation() {
        System.setProperty("jdk.tls.rejectClientInitiatedRenegotiation", "true");
    }

    /**
     * With the stand's own certificate, made now if there is none.
     *
     * @param called the names and addresses by which the stand is called
     * @throws TlsFault when it can't be made
     */
    public static StandTls own(Vault vault, String stand, Collection<String> called, Instant now) {
        return new StandTls(new OwnCertificate(vault, stand, called), now);
    }

    /**
     * With a key store that was given.
     *
     * @throws TlsFault when it can't be read
     */
    public static StandTls given(Path keyStore, Path passwordFile, Instant now) {
        return new StandTls(new GivenKeyStore(keyStore, passwordFile), now);
    }

    /** Makes, or reads, what is due; what can't be had is said, and the old one stays. */
    public void renew(Instant now) {
        try {
            keys.set(source.keys(now));
            authority = told(source);
        } catch (RuntimeException fault) {
            Told.of(Happening.CERTIFICATE_STAYS).fault(fault).to(LOGGER);
        }
    }

    public SSLContext context() {
        return context;
    }

    /** Nothing when a key store was given: whoever made that knows who vouches for it. */
    public Optional<Authority> authority() {
        return authority;
    }

    private static Optional<Authority> told(Source source) {
        if (!(source instanceof OwnCertificate own)) {
            return Optional.empty();
        }
        X509Certificate certificate = own.authority();
        return Optional.of(
                new Authority(
                        KeyedCertificate.pem(certificate),
                        fingerprint(certificate),
                        List.copyOf(own.names()),
                        certificate.getNotAfter().toInstant()));
    }

    private static String fingerprint(X509Certificate certificate) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
            return HexFormat.ofDelimiter(":").formatHex(hash).toUpperCase(Locale.ROOT);
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
