package sopwell.net;

/**
 * How well a link carries what it carries. Immutable.
 *
 * @param delayMillis how long everything takes, one way
 * @param jitterMillis how much longer it takes at most
 * @param bytesPerSecond how much passes, each way of each connection; 0 for as much as comes
 */
public record Weather(int delayMillis, int jitterMillis, int bytesPerSecond) {
    /** As good as none. */
    public static Weather fair() {
        return new Weather(0, 0, 0);
    }

    boolean isFair() {
        return delayMillis == 0 && jitterMillis == 0 && bytesPerSecond == 0;
    }
}
