package sopwell.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** The forms of secrets. Stateless. */
public final class Secrets {
    /** Crockford's digits: none looks like another. */
    private static final String CROCKFORD = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int CODE_CHARS = 8;
    private static final Pattern PIN =
            Pattern.compile(
                    "[0-9]{"
                            + AccessLimits.PIN_DIGITS_MIN
                            + ","
                            + AccessLimits.PIN_DIGITS_MAX
                            + "}");

    private Secrets() {}

    /** How a token of chance is written. */
    static String token(byte[] chance) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(chance);
    }

    /** The SHA-256 of a token; it holds 256 bits of chance, so no slow hash is needed. */
    public static String hash(String token) {
        try {
            byte[] text = token.getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** What a page of a session sends back with a change; nobody can tell the session from it. */
    public static String csrf(String token) {
        return hash("csrf " + token);
    }

    /** A pairing code of eight signs, 40 bits. */
    static String code(byte[] chance) {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < CODE_CHARS; i++) {
            code.append(CROCKFORD.charAt(chance[i] & 31));
        }
        return code.toString();
    }

    /** A code as somebody typed it: small letters, spaces, and signs that look alike. */
    public static String read(String typed) {
        StringBuilder code = new StringBuilder();
        for (char c : typed.toUpperCase(java.util.Locale.ROOT).toCharArray()) {
            switch (c) {
                case ' ', '-' -> {}
                case 'O' -> code.append('0');
                case 'I', 'L' -> code.append('1');
                default -> code.append(c);
            }
        }
        return code.toString();
    }

    static boolean isPin(String pin) {
        return PIN.matcher(pin).matches();
    }

    static boolean isPassword(String password) {
        int chars = password.codePointCount(0, password.length());
        return chars >= AccessLimits.PASSWORD_CHARS_MIN && chars <= AccessLimits.PASSWORD_CHARS_MAX;
    }

    /** Whether two texts are the same, in a time that does not tell where they differ. */
    public static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
