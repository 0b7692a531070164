package sopwell.access;

/**
 * A device was let in. Local to its request: it holds what the browser is to keep.
 *
 * @param token for the device's cookie
 */
public record Paired(Device device, String token) {}
