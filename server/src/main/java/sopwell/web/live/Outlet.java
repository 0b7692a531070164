package sopwell.web.live;

import jakarta.websocket.CloseReason;

/** The way to one screen. Implementations are thread-safe and never wait for the other side. */
interface Outlet {
    /** Names this way among all. */
    String id();

    boolean isOpen();

    /**
     * Sends a text; one at a time.
     *
     * @param done is told, from any thread, whether it left; not told when the way was gone before
     */
    void send(String text, Done done);

    /** Asks the other side whether it is there. */
    void ping();

    /** Whether who is at the other side may still look. */
    default boolean mayStay() {
        return true;
    }

    /** Ends it, if it has not ended by itself. */
    void close(CloseReason.CloseCode code, String why);

    /** What became of a text. */
    @FunctionalInterface
    interface Done {
        void left(boolean through);
    }
}
