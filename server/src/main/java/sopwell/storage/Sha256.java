package sopwell.storage;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 (FIPS 180-4). Stateless. */
final class Sha256 {
    /** A hash, in bytes. */
    static final int BYTES = 32;

    private Sha256() {}

    static byte[] of(byte[] bytes) {
        return digest().digest(bytes);
    }

    /** A digest to be used again and again by one thread. */
    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }
}
