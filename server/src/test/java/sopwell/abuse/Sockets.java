package sopwell.abuse;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.net.Socket;
import java.util.concurrent.TimeUnit;

/** What a screen's socket may be sent, and what becomes of one that is sent more. */
final class Sockets {
    private static final int TEXT = 1;
    private static final int CLOSE = 8;
    private static final int PING = 9;
    private static final int PONG = 10;
    private static final int FINAL = 0x80;

    private final Target target;

    Sockets(Target target) {
        this.target = target;
    }

    /** The code that a text of so many bytes is closed with, sent in so many frames. */
    int closeCode(int bytes, int frames) throws IOException {
        try (Socket socket = open(3)) {
            int each = bytes / frames;
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            for (int i = 0; i < frames; i++) {
                boolean last = i == frames - 1;
                int length = last ? bytes - each * (frames - 1) : each;
                frame(all, (last ? FINAL : 0) | (i == 0 ? TEXT : 0), length);
            }
            socket.getOutputStream().write(all.toByteArray());
            return readToClose(new DataInputStream(socket.getInputStream()));
        }
    }

    /** How many of so many pings are answered in so long. */
    int pongs(int pings, long millis) throws IOException {
        try (Socket socket = open(4)) {
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            for (int i = 0; i < pings; i++) {
                frame(all, FINAL | PING, 0);
            }
            socket.getOutputStream().write(all.toByteArray());
            DataInputStream in = new DataInputStream(socket.getInputStream());
            long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
            int pongs = 0;
            while (System.nanoTime() < until) {
                if (read(in)[0] == PONG) {
                    pongs++;
                }
            }
            return pongs;
        }
    }

    private Socket open(int from) throws IOException {
        Socket socket = target.connect(from);
        Target.send(
                socket,
                "GET /ws/boards/pass HTTP/1.1\r\nHost: "
                        + target.name()
                        + "\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n"
                        + "Sec-WebSocket-Version: 13\r\n"
                        + "Sec-WebSocket-Key: c29wd2VsbC10ZXN0LWtleQ==\r\n"
                        + "Sec-WebSocket-Protocol: sopwell.json.v1\r\n\r\n");
        StringBuilder head = new StringBuilder();
        while (head.indexOf("\r\n\r\n") < 0) {
            int next = socket.getInputStream().read();
            if (next < 0) {
                throw new IOException("no socket: " + head);
            }
            head.append((char) next);
        }
        if (Target.status(head.toString()) != 101) {
            throw new IOException("no socket: " + head);
        }
        return socket;
    }

    private static int readToClose(DataInputStream in) throws IOException {
        int[] frame = read(in);
        while (frame[0] != CLOSE) {
            frame = read(in);
        }
        return frame[1];
    }

    /** A frame's kind, and of a close its code. */
    private static int[] read(DataInputStream in) throws IOException {
        int kind = in.readUnsignedByte() & 0x0f;
        int length = in.readUnsignedByte();
        if (length == 126) {
            length = in.readUnsignedShort();
        } else if (length == 127) {
            length = (int) in.readLong();
        }
        int code = kind == CLOSE && length >= 2 ? in.readUnsignedShort() : 0;
        in.skipNBytes(code == 0 ? length : length - 2);
        return new int[] {kind, code};
    }

    /** A mask of zeros leaves the text as it is. */
    private static void frame(ByteArrayOutputStream to, int head, int length) {
        to.write(head);
        if (length < 126) {
            to.write(0x80 | length);
        } else {
            to.write(0x80 | 126);
            to.write(length >> 8);
            to.write(length);
        }
        to.writeBytes(new byte[4]);
        to.writeBytes("x".repeat(length).getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }
}
