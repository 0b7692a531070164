package sopwell.bench;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Reads a server's WebSocket frames from whatever pieces arrive and keeps only the beginning of
 * each text: the thinnest reader there can be, since it shares the server's cores. One thread.
 */
final class Wire {
    private static final int TEXT = 1;
    private static final int CLOSE = 8;
    private static final int PING = 9;
    private static final int SHORT_LENGTH = 126;
    private static final int LONG_LENGTH = 127;

    private final byte[] beginning = new byte[320];
    private int kept;
    private int headBytes;
    private int first;
    private int lengthBytes;
    private long left;
    private boolean inPayload;

    /** What is told of what comes. */
    interface Ears {
        /** A text is whole. */
        void text(long seq);

        /** The other side asks whether somebody is there. */
        void ping();

        /** The other side says goodbye. */
        void goodbye();
    }

    /** Takes in a piece. */
    void take(ByteBuffer piece, Ears ears) {
        while (piece.hasRemaining()) {
            if (inPayload) {
                payload(piece);
            } else {
                head(piece.get() & 0xff);
            }
            if (inPayload && left == 0) {
                end(ears);
            }
        }
    }

    private void head(int one) {
        if (headBytes == 0) {
            first = one;
            kept = 0;
        } else if (headBytes == 1) {
            lengthBytes = one == SHORT_LENGTH ? 2 : one == LONG_LENGTH ? 8 : 0;
            left = lengthBytes == 0 ? one : 0;
        } else {
            left = left << 8 | one;
        }
        headBytes++;
        inPayload = headBytes >= 2 && headBytes == 2 + lengthBytes;
    }

    private void payload(ByteBuffer piece) {
        int here = (int) Math.min(left, piece.remaining());
        int keep = Math.min(here, beginning.length - kept);
        piece.get(beginning, kept, keep);
        piece.position(piece.position() + here - keep);
        kept += keep;
        left -= here;
    }

    private void end(Ears ears) {
        inPayload = false;
        headBytes = 0;
        switch (first & 0x0f) {
            case TEXT -> ears.text(seq());
            case PING -> ears.ping();
            case CLOSE -> ears.goodbye();
            default -> throw new IllegalStateException("a frame of kind " + (first & 0x0f));
        }
    }

    /** The board's place in a frame of HTML or JSON; 0 in a sign of life. */
    private long seq() {
        String text = new String(beginning, 0, kept, StandardCharsets.ISO_8859_1);
        int at = text.indexOf("seq\":");
        if (at < 0) {
            at = text.indexOf("seq=\"");
        }
        return at < 0 ? 0 : number(text, at + 5);
    }

    /** The whole number that stands there. */
    static long number(String text, int from) {
        int end = from;
        while (end < text.length() && Character.isDigit(text.charAt(end))) {
            end++;
        }
        return Long.parseLong(text.substring(from, end));
    }
}
