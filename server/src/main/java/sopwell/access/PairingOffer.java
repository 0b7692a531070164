package sopwell.access;

/**
 * A code that lets one device in.
 *
 * @param code eight signs, to be typed at the device
 * @param untilMs how long it is good
 */
public record PairingOffer(String code, long untilMs) {}
