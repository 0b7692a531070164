package sopwell.power;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * A disk that takes recorded operations one after another and can say at any time what a power cut
 * would leave: what was synced is there; of what was not, all, nothing, or some 512-byte sectors,
 * one in twenty of them with anything in it. Names follow the same rule: a file that was made,
 * renamed or removed is so for certain when its folder was synced. Belongs to one thread.
 */
final class Disk {
    private static final int SECTOR_BYTES = 512;

    /** One of so many sectors that were on their way holds neither the old nor the new. */
    private static final int GARBAGE_ONE_IN = 20;

    /** What becomes of what was not synced. */
    enum Mode {
        DROP,
        KEEP,
        TORN
    }

    /** What a file holds; it has names, or had. */
    private static final class Content {
        private byte[] synced = new byte[0];
        private final List<DiskOp> unsynced = new ArrayList<>();
    }

    private final Map<String, Content> names = new LinkedHashMap<>();
    private final Map<String, Content> syncedNames = new LinkedHashMap<>();
    private final List<DiskOp> unsyncedNames = new ArrayList<>();
    private final Map<DiskOp, Content> created = new LinkedHashMap<>();
    private final StringBuilder acks = new StringBuilder();

    /** The next thing that happens to it. */
    void take(DiskOp op) {
        if (op.name().equals("acks")) {
            acks.append(new String(op.data(), java.nio.charset.StandardCharsets.US_ASCII));
            return;
        }
        switch (op.kind()) {
            case 'W', 'T' -> of(op).unsynced.add(op);
            case 'S' -> {
                Content content = of(op);
                content.unsynced.forEach(write -> content.synced = with(content.synced, write));
                content.unsynced.clear();
            }
            case 'D' -> {
                syncedNames.clear();
                syncedNames.putAll(names);
                unsyncedNames.clear();
                created.clear();
            }
            case 'C' -> {
                created.put(op, new Content());
                unsyncedNames.add(op);
                rename(names, op);
            }
            case 'U', 'R' -> {
                unsyncedNames.add(op);
                rename(names, op);
            }
            default -> throw new IllegalStateException("no operation: " + op.kind());
        }
    }

    /** What was acknowledged so far, one line each. */
    List<String> acks() {
        return acks.toString().lines().toList();
    }

    /** Writes into an empty folder what a power cut would leave now. */
    void write(Path folder, Mode mode, long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        Map<String, Content> left = new LinkedHashMap<>(syncedNames);
        int kept =
                switch (mode) {
                    case DROP -> 0;
                    case KEEP -> unsyncedNames.size();
                    case TORN -> random.nextInt(unsyncedNames.size() + 1);
                };
        unsyncedNames.subList(0, kept).forEach(op -> rename(left, op));
        for (Map.Entry<String, Content> file : left.entrySet()) {
            // SQLite makes this one anew after every crash.
            if (!file.getKey().endsWith("-shm")) {
                Files.write(folder.resolve(file.getKey()), left(file.getValue(), mode, random));
            }
        }
    }

    private void rename(Map<String, Content> in, DiskOp op) {
        switch (op.kind()) {
            case 'C' -> in.put(op.name(), created.get(op));
            case 'U' -> in.remove(op.name());
            default -> {
                Content moved = in.remove(op.name());
                if (moved != null) {
                    in.put(new String(op.data(), java.nio.charset.StandardCharsets.UTF_8), moved);
                }
            }
        }
    }

    private Content of(DiskOp op) {
        return names.computeIfAbsent(
                op.name(),
                name -> {
                    throw new IllegalStateException(name + " was written before it was made");
                });
    }

    private static byte[] left(Content content, Mode mode, SplittableRandom random) {
        byte[] bytes = content.synced;
        if (mode != Mode.DROP) {
            for (DiskOp op : content.unsynced) {
                bytes = mode == Mode.KEEP ? with(bytes, op) : torn(bytes, op, random);
            }
        }
        return bytes;
    }

    private static byte[] with(byte[] bytes, DiskOp op) {
        if (op.kind() == 'T') {
            return Arrays.copyOf(bytes, op.offset());
        }
        int end = op.offset() + op.data().length;
        byte[] grown = end > bytes.length ? Arrays.copyOf(bytes, end) : bytes.clone();
        System.arraycopy(op.data(), 0, grown, op.offset(), op.data().length);
        return grown;
    }

    /** Some sectors of it, or for a cut: perhaps. */
    private static byte[] torn(byte[] bytes, DiskOp op, SplittableRandom random) {
        if (op.kind() == 'T') {
            return random.nextBoolean() ? Arrays.copyOf(bytes, op.offset()) : bytes;
        }
        byte[] grown = bytes.clone();
        int end = op.offset() + op.data().length;
        for (int at = op.offset(); at < end; ) {
            int next = Math.min(end, (at / SECTOR_BYTES + 1) * SECTOR_BYTES);
            if (random.nextBoolean()) {
                grown = next > grown.length ? Arrays.copyOf(grown, next) : grown;
                if (random.nextInt(GARBAGE_ONE_IN) == 0) {
                    byte[] garbage = new byte[next - at];
                    random.nextBytes(garbage);
                    System.arraycopy(garbage, 0, grown, at, garbage.length);
                } else {
                    System.arraycopy(op.data(), at - op.offset(), grown, at, next - at);
                }
            }
            at = next;
        }
        return grown;
    }
}
