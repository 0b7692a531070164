package sopwell;

import java.util.function.Consumer;
import sopwell.desk.Stand;

/** Notices when a business day is closed. The follower's thread tells it; anybody may ask. */
final class Closings implements Consumer<Stand> {
    private final Runnable closed;
    private volatile boolean open;

    /**
     * Watches from now on.
     *
     * @param open whether a day is open now
     */
    Closings(boolean open, Runnable closed) {
        this.open = open;
        this.closed = closed;
    }

    /** Whether a day is open. */
    boolean isDayOpen() {
        return open;
    }

    @Override
    public void accept(Stand stand) {
        boolean wasOpen = open;
        open = stand.orders().isDayOpen();
        if (wasOpen && !open) {
            closed.run();
        }
    }
}
