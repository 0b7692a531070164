package sopwell.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.util.Arrays;

/**
 * One screen of a crowd: answers pings and notes when each frame came. The crowd's thread reads;
 * what was noted may be asked for from any.
 */
final class Onlooker implements Wire.Ears {
    private static final byte[] PONG = {(byte) 0x8a, (byte) 0x80, 0, 0, 0, 0};
    private static final byte[] WHOLE = {
        (byte) 0x81, (byte) 0x85, 0, 0, 0, 0, 'w', 'h', 'o', 'l', 'e'
    };

    private final SocketChannel channel;
    private final Wire wire = new Wire();
    private long[] seqs = new long[16];
    private long[] nanos = new long[16];
    private int frames;
    private int beats;
    private boolean gone;

    Onlooker(SocketChannel channel) {
        this.channel = channel;
    }

    SocketChannel channel() {
        return channel;
    }

    /** Takes in what came; answers whether the other side is there still. */
    boolean take(ByteBuffer piece) {
        wire.take(piece, this);
        return !isGone();
    }

    /** Asks for the whole board, whether it is read or not. */
    void askWhole() throws IOException {
        channel.write(ByteBuffer.wrap(WHOLE));
    }

    @Override
    public synchronized void text(long seq) {
        if (seq == 0) {
            beats++;
            return;
        }
        if (frames == seqs.length) {
            seqs = Arrays.copyOf(seqs, frames * 2);
            nanos = Arrays.copyOf(nanos, frames * 2);
        }
        seqs[frames] = seq;
        nanos[frames] = System.nanoTime();
        frames++;
    }

    @Override
    public void ping() {
        try {
            channel.write(ByteBuffer.wrap(PONG));
        } catch (IOException left) {
            goodbye();
        }
    }

    @Override
    public synchronized void goodbye() {
        gone = true;
    }

    synchronized boolean isGone() {
        return gone;
    }

    synchronized int frames() {
        return frames;
    }

    synchronized int beats() {
        return beats;
    }

    /** When a place of the log was first in sight; 0 when it never was. */
    synchronized long sawAt(long seq) {
        int from = 0;
        int to = frames;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (seqs[middle] < seq) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from == frames ? 0 : nanos[from];
    }
}
