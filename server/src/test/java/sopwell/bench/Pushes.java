package sopwell.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Sends at an even pace and waits until the last of those who look has seen it. Stateless. */
final class Pushes {
    /** So many orders stand on a board while new ones come. */
    private static final int ON_BOARD = 10;

    private static final int RAW_BYTES = 1_500;
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(10);

    private Pushes() {}

    /** Something that was sent, and when. */
    record Sent(long seq, long atNanos) {}

    /** Places orders, one thing each, and puts up the oldest so that the board keeps its length. */
    static List<Sent> orders(RawClient client, String call, int perSecond, int orders, String key)
            throws IOException, InterruptedException {
        List<Sent> sent = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        long halfPace = TimeUnit.SECONDS.toNanos(1) / perSecond / 2;
        long due = System.nanoTime();
        for (int i = 0; i < orders; i++) {
            due += halfPace;
            sleepUntil(due);
            long at = System.nanoTime();
            must(client.post("/api/orders", key + i, "{\"call\": \"" + call + "\"}"), client);
            String answer = client.body();
            sent.add(new Sent(Wire.number(answer, answer.indexOf("\"seq\":") + 6), at));
            int id = answer.indexOf("\"order\":\"") + 9;
            parts.add(answer.substring(id, answer.indexOf('"', id)) + ".1.drinks");
            due += halfPace;
            sleepUntil(due);
            if (parts.size() > ON_BOARD) {
                up(client, parts.remove(0));
            }
        }
        for (String part : parts) {
            up(client, part);
        }
        return sent;
    }

    private static void up(RawClient client, String part) throws IOException {
        must(client.post("/api/parts/" + part + "/up", "up-" + part, "{}"), client);
        String order = part.substring(0, part.indexOf('.'));
        must(client.post("/api/orders/" + order + "/handed", "by-" + part, "{}"), client);
    }

    private static void must(int status, RawClient client) {
        if (status < 200 || status > 299) {
            throw new IllegalStateException(status + " " + client.body());
        }
    }

    /** Sends frames that look like a board's through a connection that passes them on. */
    static List<Sent> raw(Onlooker sender, int perSecond, int frames, long firstSeq)
            throws IOException, InterruptedException {
        List<Sent> sent = new ArrayList<>();
        long pace = TimeUnit.SECONDS.toNanos(1) / perSecond;
        long due = System.nanoTime();
        for (int i = 0; i < frames; i++) {
            due += pace;
            sleepUntil(due);
            ByteBuffer frame = ByteBuffer.allocate(RAW_BYTES + 4);
            frame.put((byte) 0x81).put((byte) 126).putShort((short) RAW_BYTES);
            frame.put(("{\"seq\":" + (firstSeq + i) + "}").getBytes(StandardCharsets.ISO_8859_1));
            long at = System.nanoTime();
            sender.channel().write(frame.rewind());
            sent.add(new Sent(firstSeq + i, at));
        }
        return sent;
    }

    /** From sending to the last onlooker, for each that was sent; all must have seen it. */
    static List<Long> lastNanos(List<Sent> sent, List<Onlooker> onlookers)
            throws InterruptedException {
        List<Long> nanos = new ArrayList<>();
        long until = System.nanoTime() + PATIENCE_NANOS;
        for (Sent one : sent) {
            long last = 0;
            for (Onlooker onlooker : onlookers) {
                long saw = onlooker.sawAt(one.seq());
                while (saw == 0) {
                    if (System.nanoTime() > until || onlooker.isGone()) {
                        throw new IllegalStateException(
                                "a screen never saw "
                                        + one.seq()
                                        + (onlooker.isGone() ? "; it was cut off" : ""));
                    }
                    TimeUnit.MILLISECONDS.sleep(1);
                    saw = onlooker.sawAt(one.seq());
                }
                last = Math.max(last, saw);
            }
            nanos.add(last - one.atNanos());
        }
        return nanos;
    }

    private static void sleepUntil(long dueNanos) throws InterruptedException {
        TimeUnit.NANOSECONDS.sleep(Math.max(0, dueNanos - System.nanoTime()));
    }
}
