package sopwell.access;

/**
 * What a request shows to be known by, hashed at once. Immutable.
 *
 * @param session of its session's cookie, or empty
 * @param device of its device's cookie, or empty
 * @param bearer of its program's token, or empty
 */
public record Shown(String session, String device, String bearer) {
    /** Nothing. */
    public static final Shown NOTHING = new Shown("", "", "");

    /** Hashes what was shown; null or empty stands for nothing. */
    public static Shown of(String sessionToken, String deviceToken, String bearerToken) {
        return new Shown(hash(sessionToken), hash(deviceToken), hash(bearerToken));
    }

    private static String hash(String token) {
        return token == null || token.isEmpty() ? "" : Secrets.hash(token);
    }
}
