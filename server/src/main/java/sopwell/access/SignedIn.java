package sopwell.access;

/**
 * Somebody was let in. Local to its request: it holds what the browser is to keep.
 *
 * @param actor who it is from now on
 * @param sessionToken for the session's cookie
 * @param deviceToken for the device's cookie, or empty when the device has one already
 */
public record SignedIn(Actor actor, String sessionToken, String deviceToken) {}
