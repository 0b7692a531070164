package sopwell.access;

/**
 * A person at a device, from signing in to signing out. Immutable.
 *
 * @param tokenHash the SHA-256 of what the browser shows
 * @param personId who signed in
 * @param deviceId where
 * @param signedInAtMs since when
 * @param seenAtMs when the last request came
 * @param passwordUntilMs how long the password counts as just typed; 0 after a PIN
 */
public record Session(
        String tokenHash,
        String personId,
        String deviceId,
        long signedInAtMs,
        long seenAtMs,
        long passwordUntilMs) {
    Session seen(long nowMs) {
        return new Session(tokenHash, personId, deviceId, signedInAtMs, nowMs, passwordUntilMs);
    }
}
