package sopwell.web.live;

import sopwell.Limits;

/**
 * How often screens hear from the server, and how long they may be silent. Immutable.
 *
 * @param beatMillis between signs of life
 * @param pingMillis between questions whether the screen is there
 * @param pongMillisMax how long nothing may be heard from a screen
 */
public record Rhythm(long beatMillis, long pingMillis, long pongMillisMax) {
    /** The rhythm of a stand, from its limits. */
    public static Rhythm usual() {
        return new Rhythm(Limits.BEAT_MILLIS, Limits.PING_MILLIS, Limits.PONG_MILLIS_MAX);
    }
}
