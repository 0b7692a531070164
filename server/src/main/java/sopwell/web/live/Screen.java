package sopwell.web.live;

import jakarta.websocket.CloseReason;
import java.util.function.Consumer;

/**
 * One connected screen and its one-slot outbox: a frame is under way, or none is. What comes while
 * one is under way is dropped and the screen is behind; when the frame is through, a screen that is
 * behind asks for the whole board. Thread-safe.
 */
final class Screen {
    private final Outlet outlet;
    private final String board;
    private final FrameWriter writer;
    private final Ear ear;
    private boolean greeted;
    private boolean sending;
    private boolean behind;
    private boolean wholeAsked;
    private volatile long heardAtNanos;

    /**
     * What hears of a screen.
     *
     * @param behindNow is called when the screen can be sent the whole board it needs
     */
    record Ear(Consumer<Screen> behindNow, FrameCounts counts) {}

    /** A screen that was sent nothing yet. */
    Screen(Outlet outlet, String board, FrameWriter writer, Ear ear, long nowNanos) {
        this.outlet = outlet;
        this.board = board;
        this.writer = writer;
        this.ear = ear;
        this.heardAtNanos = nowNanos;
    }

    Outlet outlet() {
        return outlet;
    }

    String board() {
        return board;
    }

    FrameWriter writer() {
        return writer;
    }

    /**
     * Sends what has changed. A busy screen has missed it, and a screen that has missed something
     * is sent no more changes before the whole board: so every change follows on what it has.
     */
    void sendChange(String text) {
        synchronized (this) {
            if (sending || behind) {
                behind = true;
                ear.counts().countMissed();
                return;
            }
            sending = true;
        }
        ear.counts().countSent();
        send(text);
    }

    /** Sends the whole board; a busy screen is behind, and asks when it is through. */
    void sendWhole(String text) {
        synchronized (this) {
            if (sending) {
                behind = true;
                ear.counts().countMissed();
                return;
            }
            sending = true;
            behind = false;
            greeted = true;
        }
        ear.counts().countSent();
        send(text);
    }

    /**
     * Whether the whole board must be drawn for this screen now. Not if that was asked for already;
     * a busy screen asks when it is through.
     */
    synchronized boolean wantsWhole() {
        behind = true;
        if (sending) {
            return false;
        }
        boolean first = !wholeAsked;
        wholeAsked = true;
        return first;
    }

    /** What was asked for is drawn now. */
    synchronized void wholeComes() {
        wholeAsked = false;
    }

    /** Sends a sign of life, unless the screen is busy, gone, or has no board yet. */
    void sendBeat(String text) {
        synchronized (this) {
            if (sending || !greeted) {
                return;
            }
            sending = true;
        }
        send(text);
    }

    /** Asks the other side whether it is there. */
    void ping() {
        outlet.ping();
    }

    void heard(long nowNanos) {
        heardAtNanos = nowNanos;
    }

    /** How long nothing was heard from the other side. */
    long silentNanos(long nowNanos) {
        return nowNanos - heardAtNanos;
    }

    void close(CloseReason.CloseCode code, String why) {
        outlet.close(code, why);
    }

    private void send(String text) {
        outlet.send(text, this::sent);
    }

    private void sent(boolean through) {
        if (!through) {
            ear.counts().countSlow();
            close(CloseReason.CloseCodes.TRY_AGAIN_LATER, "too slow");
            return;
        }
        boolean needsWhole;
        synchronized (this) {
            sending = false;
            needsWhole = behind;
        }
        if (needsWhole) {
            ear.behindNow().accept(this);
        }
    }
}
