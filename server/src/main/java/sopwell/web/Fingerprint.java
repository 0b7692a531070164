package sopwell.web;

import io.undertow.server.HttpServerExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Condenses what was asked, so that a repeat under the same key can be told from another ask. Not
 * thread-safe.
 */
public final class Fingerprint {
    private static final int HEX_CHARS = 32;

    private final MessageDigest digest;

    /** Nothing was added yet. */
    public Fingerprint() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** Adds one piece; a mark between pieces keeps "ab" + "c" and "a" + "bc" apart. */
    public Fingerprint add(byte[] bytes) {
        digest.update(bytes);
        digest.update((byte) 0);
        return this;
    }

    /** The first 32 hexadecimal digits of the SHA-256. */
    public String hex() {
        return HexFormat.of().formatHex(digest.digest()).substring(0, HEX_CHARS);
    }

    /** What a request asks: its method, its path and its body. */
    public static String of(HttpServerExchange exchange, byte[] body) {
        return new Fingerprint()
                .add(exchange.getRequestMethod().toString().getBytes(StandardCharsets.UTF_8))
                .add(exchange.getRequestPath().getBytes(StandardCharsets.UTF_8))
                .add(body)
                .hex();
    }
}
