package sopwell.web.live;

import jakarta.websocket.CloseReason;
import jakarta.websocket.SendResult;
import jakarta.websocket.Session;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.function.Consumer;

/**
 * One connected screen and its one-slot outbox: a frame is under way, or none is. What comes while
 * one is under way is dropped and the screen is behind; when the frame is through, a screen that is
 * behind asks for the whole board. Thread-safe.
 */
final class Screen {
    private final Session session;
    private final String board;
    private final FrameWriter writer;
    private final Consumer<Screen> behindNow;
    private boolean sending;
    private boolean behind;
    private boolean wholeAsked;
    private volatile long heardAtNanos;

    /**
     * A screen that was sent nothing yet.
     *
     * @param behindNow is called when the screen can be sent the whole board it needs
     */
    Screen(
            Session session,
            String board,
            FrameWriter writer,
            Consumer<Screen> behindNow,
            long nowNanos) {
        this.session = session;
        this.board = board;
        this.writer = writer;
        this.behindNow = behindNow;
        this.heardAtNanos = nowNanos;
    }

    String board() {
        return board;
    }

    FrameWriter writer() {
        return writer;
    }

    /** Sends a text that later ones don't repeat; a busy screen is behind from now on. */
    void sendFrame(String text) {
        synchronized (this) {
            if (sending) {
                behind = true;
                return;
            }
            sending = true;
        }
        send(text);
    }

    /**
     * Whether the whole board must be drawn for this screen now. Not if that was asked for already;
     * a busy screen is behind, and asks when it is through.
     */
    synchronized boolean wantsWhole() {
        if (sending) {
            behind = true;
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

    /** Sends a sign of life, unless the screen is busy or gone. */
    void sendBeat(String text) {
        synchronized (this) {
            if (sending) {
                return;
            }
            sending = true;
        }
        send(text);
    }

    /** Asks the other side whether it is there. */
    void ping() {
        try {
            session.getAsyncRemote().sendPing(ByteBuffer.allocate(0));
        } catch (IOException | RuntimeException gone) {
            close(CloseReason.CloseCodes.GOING_AWAY, "no longer there");
        }
    }

    void heard(long nowNanos) {
        heardAtNanos = nowNanos;
    }

    /** How long nothing was heard from the other side. */
    long silentNanos(long nowNanos) {
        return nowNanos - heardAtNanos;
    }

    void close(CloseReason.CloseCode code, String why) {
        try {
            session.close(new CloseReason(code, why));
        } catch (IOException | RuntimeException gone) {
            // The other side left before we could say goodbye; there is nobody to tell.
            return;
        }
    }

    private void send(String text) {
        try {
            session.getAsyncRemote().sendText(text, this::sent);
        } catch (RuntimeException gone) {
            close(CloseReason.CloseCodes.GOING_AWAY, "no longer there");
        }
    }

    private void sent(SendResult result) {
        if (!result.isOK()) {
            close(CloseReason.CloseCodes.TRY_AGAIN_LATER, "too slow");
            return;
        }
        boolean needsWhole;
        synchronized (this) {
            sending = false;
            needsWhole = behind;
            behind = false;
        }
        if (needsWhole) {
            behindNow.accept(this);
        }
    }
}
