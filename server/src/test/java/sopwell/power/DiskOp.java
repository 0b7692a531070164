package sopwell.power;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One change of the disk as the recorder wrote it down. Never changed after it is made.
 *
 * @param kind C created, W written, S file synced, D folder synced, T cut, U removed, R renamed, F
 *     failed because it was to fail
 * @param name the file's name in its folder
 * @param offset where it was written, or to how many bytes it was cut
 * @param data what was written, or the new name
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record DiskOp(char kind, String name, int offset, byte[] data) {
    private static final int HEAD_BYTES = 17;

    /** Whether a power cut just after it can leave another disk than one just before it. */
    boolean isBoundary() {
        return !name.equals("acks");
    }

    /** All that a recorder wrote, in order. */
    static List<DiskOp> read(Path record) throws IOException {
        ByteBuffer bytes =
                ByteBuffer.wrap(Files.readAllBytes(record)).order(ByteOrder.nativeOrder());
        List<DiskOp> ops = new ArrayList<>();
        while (bytes.remaining() >= HEAD_BYTES) {
            char kind = (char) bytes.get();
            int nameBytes = bytes.getInt();
            int offset = Math.toIntExact(bytes.getLong());
            int length = bytes.getInt();
            byte[] name = new byte[nameBytes];
            bytes.get(name);
            byte[] data = new byte[length];
            bytes.get(data);
            ops.add(new DiskOp(kind, new String(name, StandardCharsets.UTF_8), offset, data));
        }
        if (bytes.hasRemaining()) {
            throw new IOException(record + " ends within an operation");
        }
        return ops;
    }
}
