package sopwell.web.pages;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Condenses what was asked, so that a repeat under the same key can be told from another ask. */
final class Fingerprint {
    private static final int HEX_CHARS = 32;

    private final MessageDigest digest;

    Fingerprint() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** Adds one piece; a mark between pieces keeps "ab" + "c" and "a" + "bc" apart. */
    Fingerprint add(byte[] bytes) {
        digest.update(bytes);
        digest.update((byte) 0);
        return this;
    }

    /** The first 32 hexadecimal digits of the SHA-256. */
    String hex() {
        return HexFormat.of().formatHex(digest.digest()).substring(0, HEX_CHARS);
    }
}
