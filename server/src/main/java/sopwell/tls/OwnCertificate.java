package sopwell.tls;

import java.security.GeneralSecurityException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Logger;
import javax.net.ssl.X509ExtendedKeyManager;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * The stand's own authority and certificate: made on first use, kept in the vault, and renewed when
 * they are due or when the stand is called by other names. Not thread-safe.
 *
 * <p>A new certificate needs nothing of the tablets. A new authority does, so there is one only
 * when the old one may not vouch for a name, or is about to end.
 */
final class OwnCertificate implements Source {
    static final String AUTHORITY = "tls-authority.pem";
    static final String LEAF = "tls-stand.pem";

    private static final Logger LOGGER = Logger.getLogger(OwnCertificate.class.getName());
    private static final Duration RENEWED_BEFORE_END = Duration.ofDays(60);
    private static final Duration AUTHORITY_LEFT_MIN = Duration.ofDays(460);

    private final Vault vault;
    private final String stand;
    private final CertificateNames names;
    private KeyedCertificate authority;

    OwnCertificate(Vault vault, String stand, Collection<String> called) {
        this.vault = vault;
        this.stand = stand;
        this.names = CertificateNames.of(called);
    }

    @Override
    public X509ExtendedKeyManager keys(Instant now) {
        Optional<KeyedCertificate> knownAuthority = kept(AUTHORITY);
        Optional<KeyedCertificate> leaf = kept(LEAF);
        if (knownAuthority.isPresent() && leaf.isPresent()) {
            authority = knownAuthority.get();
            if (serves(leaf.get(), now)) {
                return new FixedKeys(leaf.get());
            }
        }
        authority = knownAuthority.filter(a -> vouches(a, now)).orElseGet(() -> newAuthority(now));
        return new FixedKeys(newLeaf(now));
    }

    X509Certificate authority() {
        return authority.certificate();
    }

    Set<String> names() {
        return names.all();
    }

    private KeyedCertificate newAuthority(Instant now) {
        KeyedCertificate made = new Issuer().authority(stand, names, now);
        vault.write(AUTHORITY, made.pem());
        Told.of(Happening.AUTHORITY_MADE).to(LOGGER);
        return made;
    }

    private KeyedCertificate newLeaf(Instant now) {
        KeyedCertificate made = new Issuer().leaf(authority, names, now);
        vault.write(LEAF, made.pem());
        Told.of(Happening.CERTIFICATE_MADE)
                .own("until", made.certificate().getNotAfter().toInstant().toString())
                .to(LOGGER);
        return made;
    }

    /** What can't be read any more is made again, as on first use. */
    private Optional<KeyedCertificate> kept(String name) {
        return vault.read(name)
                .flatMap(
                        pem -> {
                            try {
                                return Optional.of(KeyedCertificate.read(pem));
                            } catch (GeneralSecurityException | IllegalArgumentException damaged) {
                                Told.of(Happening.CERTIFICATE_DAMAGED)
                                        .own("file", name)
                                        .fault(damaged)
                                        .to(LOGGER);
                                return Optional.empty();
                            }
                        });
    }

    /** A clock that was set back does not cost the authority, only the end does. */
    private boolean vouches(KeyedCertificate known, Instant now) {
        Instant end = known.certificate().getNotAfter().toInstant();
        return end.isAfter(now.plus(AUTHORITY_LEFT_MIN))
                && Constraints.allow(known.certificate(), names);
    }

    private boolean serves(KeyedCertificate leaf, Instant now) {
        return leaf.isGood(now, RENEWED_BEFORE_END)
                && leaf.chain().equals(List.of(leaf.certificate(), authority.certificate()))
                && alternatives(leaf.certificate()).equals(new TreeSet<>(names.all()));
    }

    static Set<String> alternatives(X509Certificate certificate) {
        Set<String> found = new TreeSet<>();
        try {
            for (List<?> name :
                    Optional.ofNullable(certificate.getSubjectAlternativeNames())
                            .orElse(List.of())) {
                String text = name.get(1).toString();
                boolean address = name.get(0).equals(7);
                found.add(address ? CertificateNames.address(text).getHostAddress() : text);
            }
        } catch (GeneralSecurityException unreadable) {
            return Set.of();
        }
        return found;
    }
}
