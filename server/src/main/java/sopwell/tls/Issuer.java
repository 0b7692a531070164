package sopwell.tls;

import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * Makes the stand's authority and the certificates that it signs, by RFC 5280. Keys and signatures
 * are Java's own; only the forms are the library's. Used rarely, so that its classes are not there
 * at a usual start. Stateless.
 */
final class Issuer {
    /** A clock a day or two behind must not lock anybody out. */
    private static final Duration BACKDATED = Duration.ofDays(2);

    private static final Duration AUTHORITY_LIFE = Duration.ofDays(3_650);

    /** With the backdating: tablets take no longer life than 398 days from an unknown authority. */
    private static final Duration LEAF_LIFE = Duration.ofDays(397).minus(BACKDATED);

    private static final int COMMON_NAME_CHARS_MAX = 64;
    private static final int SERIAL_BITS = 120;
    private static final String SIGNATURE = "SHA256withECDSA";

    private final SecureRandom random = new SecureRandom();

    /** An authority that can vouch for these names, and for these addresses' networks, alone. */
    KeyedCertificate authority(String stand, CertificateNames names, Instant now) {
        try {
            KeyPair keys = keys();
            X500Name own = named("Sopwell " + stand + " " + serial().toString(36).substring(0, 6));
            X509v3CertificateBuilder form =
                    form(own, own, keys.getPublic(), new Life(now, AUTHORITY_LIFE));
            form.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
            form.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign));
            form.addExtension(
                    Extension.subjectKeyIdentifier,
                    false,
                    new JcaX509ExtensionUtils().createSubjectKeyIdentifier(keys.getPublic()));
            form.addExtension(Extension.nameConstraints, true, constraints(names));
            return new KeyedCertificate(keys.getPrivate(), List.of(signed(form, keys)));
        } catch (GeneralSecurityException | IOException | OperatorCreationException fault) {
            throw new TlsFault("The stand's authority can't be made: " + fault, fault);
        }
    }

    /** A server's certificate, signed by the authority. */
    KeyedCertificate leaf(KeyedCertificate authority, CertificateNames names, Instant now) {
        try {
            KeyPair keys = keys();
            X509Certificate above = authority.certificate();
            X509v3CertificateBuilder form =
                    form(
                            X500Name.getInstance(above.getSubjectX500Principal().getEncoded()),
                            named(names.all().iterator().next()),
                            keys.getPublic(),
                            new Life(now, LEAF_LIFE));
            JcaX509ExtensionUtils extensions = new JcaX509ExtensionUtils();
            form.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            form.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
            form.addExtension(
                    Extension.extendedKeyUsage,
                    false,
                    new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            form.addExtension(
                    Extension.subjectKeyIdentifier,
                    false,
                    extensions.createSubjectKeyIdentifier(keys.getPublic()));
            form.addExtension(
                    Extension.authorityKeyIdentifier,
                    false,
                    extensions.createAuthorityKeyIdentifier(above.getPublicKey()));
            form.addExtension(Extension.subjectAlternativeName, false, alternatives(names));
            X509Certificate own = signed(form, new KeyPair(above.getPublicKey(), authority.key()));
            return new KeyedCertificate(keys.getPrivate(), List.of(own, above));
        } catch (GeneralSecurityException | IOException | OperatorCreationException fault) {
            throw new TlsFault("The stand's certificate can't be made: " + fault, fault);
        }
    }

    private record Life(Instant now, Duration ahead) {}

    private KeyPair keys() throws GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"), random);
        return generator.generateKeyPair();
    }

    private BigInteger serial() {
        return new BigInteger(SERIAL_BITS, random).setBit(SERIAL_BITS);
    }

    private X509v3CertificateBuilder form(X500Name by, X500Name of, PublicKey key, Life life) {
        return new JcaX509v3CertificateBuilder(
                by,
                serial(),
                Date.from(life.now().minus(BACKDATED)),
                Date.from(life.now().plus(life.ahead())),
                of,
                key);
    }

    private static X509Certificate signed(X509v3CertificateBuilder form, KeyPair by)
            throws OperatorCreationException, GeneralSecurityException {
        return new JcaX509CertificateConverter()
                .getCertificate(
                        form.build(new JcaContentSignerBuilder(SIGNATURE).build(by.getPrivate())));
    }

    private static X500Name named(String name) {
        String fits = name.substring(0, Math.min(name.length(), COMMON_NAME_CHARS_MAX));
        return new X500NameBuilder(BCStyle.INSTANCE).addRDN(BCStyle.CN, fits).build();
    }

    private static GeneralNames alternatives(CertificateNames names) {
        List<GeneralName> all = new ArrayList<>();
        names.dns().stream()
                .sorted()
                .forEach(name -> all.add(new GeneralName(GeneralName.dNSName, name)));
        names.addresses().stream()
                .sorted()
                .forEach(address -> all.add(new GeneralName(GeneralName.iPAddress, address)));
        return new GeneralNames(all.toArray(GeneralName[]::new));
    }

    /** A kind of name of which none is permitted would be free: both kinds are always there. */
    private static NameConstraints constraints(CertificateNames names) {
        List<GeneralSubtree> permitted = new ArrayList<>();
        names.dns().stream()
                .sorted()
                .map(name -> new GeneralName(GeneralName.dNSName, name))
                .forEach(name -> permitted.add(new GeneralSubtree(name)));
        for (String network : names.networks()) {
            byte[] bytes = java.util.HexFormat.of().parseHex(network);
            byte[] masked = java.util.Arrays.copyOf(bytes, bytes.length * 2);
            int kept = bytes.length == 4 ? 3 : 8;
            java.util.Arrays.fill(masked, bytes.length, bytes.length + kept, (byte) 0xff);
            permitted.add(
                    new GeneralSubtree(
                            new GeneralName(GeneralName.iPAddress, new DEROctetString(masked))));
        }
        return new NameConstraints(permitted.toArray(GeneralSubtree[]::new), null);
    }
}
