package sopwell.tls;

import java.security.cert.X509Certificate;
import java.util.Set;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.NameConstraintValidatorException;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.asn1.x509.PKIXNameConstraintValidator;

/** Reads which names an authority may vouch for. Stateless. */
final class Constraints {
    private Constraints() {}

    /** Whether it may vouch for all of them. */
    static boolean allow(X509Certificate authority, CertificateNames names) {
        byte[] extension = authority.getExtensionValue(Extension.nameConstraints.getId());
        if (extension == null) {
            return false;
        }
        NameConstraints constraints =
                NameConstraints.getInstance(ASN1OctetString.getInstance(extension).getOctets());
        GeneralSubtree[] permitted = constraints.getPermittedSubtrees();
        PKIXNameConstraintValidator validator = new PKIXNameConstraintValidator();
        validator.intersectPermittedSubtree(permitted);
        return all(validator, GeneralName.dNSName, names.dns())
                && all(validator, GeneralName.iPAddress, names.addresses());
    }

    private static boolean all(PKIXNameConstraintValidator validator, int kind, Set<String> names) {
        try {
            for (String name : names) {
                validator.checkPermitted(new GeneralName(kind, name));
            }
            return true;
        } catch (NameConstraintValidatorException foreign) {
            return false;
        }
    }
}
