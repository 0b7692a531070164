package sopwell.tls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The forms are RFC 5280's; Java's own path validation judges them. */
class OwnCertificateTest {
    private static final Instant NOW = Instant.parse("2026-11-28T12:00:00Z");
    private static final Set<String> NAMES =
            Set.of("localhost", "stand.local", "127.0.0.1", "[::1]", "192.168.7.20");

    private final MemoryVault vault = new MemoryVault();

    private X509Certificate shown(Set<String> names, Instant now) {
        return new OwnCertificate(vault, "Corner", names).keys(now).getCertificateChain("stand")[0];
    }

    private X509Certificate authority() throws GeneralSecurityException {
        return KeyedCertificate.read(vault.read(OwnCertificate.AUTHORITY).orElseThrow())
                .certificate();
    }

    @Test
    void isMadeOnFirstUseForEveryNameAndAddressAndThenKept() throws Exception {
        X509Certificate leaf = shown(NAMES, NOW);
        assertEquals(
                Set.of("localhost", "stand.local", "127.0.0.1", "0:0:0:0:0:0:0:1", "192.168.7.20"),
                OwnCertificate.alternatives(leaf));
        validate(leaf, authority(), NOW);
        assertEquals(leaf, shown(NAMES, NOW.plus(Duration.ofDays(300))), "kept, not made again");
    }

    @Test
    void lastsAtMost397DaysAndWasGoodTwoDaysAgo() {
        X509Certificate leaf = shown(NAMES, NOW);
        Instant from = leaf.getNotBefore().toInstant();
        assertEquals(NOW.minus(Duration.ofDays(2)), from);
        assertEquals(Duration.ofDays(397), Duration.between(from, leaf.getNotAfter().toInstant()));
    }

    @Test
    void isRenewedBeforeItEndsUnderTheSameAuthority() throws Exception {
        X509Certificate first = shown(NAMES, NOW);
        X509Certificate authority = authority();
        Instant later = NOW.plus(Duration.ofDays(340));
        X509Certificate second = shown(NAMES, later);
        assertNotEquals(first, second);
        assertEquals(authority, authority());
        validate(second, authority, later);
        Instant muchLater = NOW.plus(Duration.ofDays(2_000));
        validate(shown(NAMES, muchLater), authority, muchLater);
        assertEquals(authority, authority(), "after five years tablets still trust it");
    }

    @Test
    void aClockThatWasSetBackCostsTheCertificateButNotTheAuthority() throws Exception {
        shown(NAMES, NOW);
        X509Certificate authority = authority();
        Instant before = NOW.minus(Duration.ofDays(30));
        X509Certificate leaf = shown(NAMES, before);
        assertFalse(leaf.getNotBefore().toInstant().isAfter(before));
        assertEquals(authority, authority());
    }

    @Test
    void anotherAddressOfTheNetworkKeepsTheAuthorityAnotherNetworkOrNameDoesNot() throws Exception {
        shown(NAMES, NOW);
        X509Certificate authority = authority();
        X509Certificate moved = shown(Set.of("stand.local", "192.168.7.99"), NOW);
        assertEquals(Set.of("stand.local", "192.168.7.99"), OwnCertificate.alternatives(moved));
        assertEquals(authority, authority());
        shown(Set.of("stand.local", "192.168.8.20"), NOW);
        X509Certificate elsewhere = authority();
        assertNotEquals(authority, elsewhere);
        shown(Set.of("kitchen.local", "192.168.8.20"), NOW);
        assertNotEquals(elsewhere, authority());
    }

    @Test
    void theAuthorityCanVouchForNobodyElse() throws Exception {
        shown(NAMES, NOW);
        KeyedCertificate authority =
                KeyedCertificate.read(vault.read(OwnCertificate.AUTHORITY).orElseThrow());
        for (String foreign : List.of("bank.example", "10.0.0.1", "[2001:db8::1]")) {
            CertificateNames names = CertificateNames.of(Set.of(foreign));
            X509Certificate leaf = new Issuer().leaf(authority, names, NOW).certificate();
            assertThrows(
                    CertPathValidatorException.class,
                    () -> validate(leaf, authority.certificate(), NOW),
                    foreign);
        }
    }

    @Test
    void aDamagedFileIsMadeAgain() throws Exception {
        X509Certificate first = shown(NAMES, NOW);
        X509Certificate authority = authority();
        vault.write(OwnCertificate.LEAF, "half of".getBytes(StandardCharsets.UTF_8));
        assertNotEquals(first, shown(NAMES, NOW));
        assertEquals(authority, authority());
        vault.write(OwnCertificate.AUTHORITY, new byte[0]);
        X509Certificate anew = shown(NAMES, NOW);
        assertNotEquals(authority, authority());
        validate(anew, authority(), NOW);
        assertTrue(authority().getBasicConstraints() == 0, "it may sign servers, no authorities");
    }

    /** The authority stands in the path too, so that its own constraints are judged. */
    private static void validate(X509Certificate leaf, X509Certificate authority, Instant now)
            throws GeneralSecurityException {
        TrustAnchor anchor =
                new TrustAnchor(
                        authority.getSubjectX500Principal(), authority.getPublicKey(), null);
        PKIXParameters parameters = new PKIXParameters(Set.of(anchor));
        parameters.setRevocationEnabled(false);
        parameters.setDate(Date.from(now));
        CertificateFactory factory = CertificateFactory.getInstance("X.509");
        CertPathValidator.getInstance("PKIX")
                .validate(factory.generateCertPath(List.of(leaf, authority)), parameters);
    }
}
