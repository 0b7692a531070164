package sopwell.storage;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.function.LongFunction;
import sopwell.log.Blanked;
import sopwell.log.Blanking;

/**
 * Events as they are once names were taken out of them, ready to be written. The first event of a
 * changed command is among them when it has the command's fingerprint: names could be guessed from
 * it. Not thread-safe: for the thread that prepares, until it is handed on.
 */
final class Wiping {
    private final Blanking asked;
    private final LogRow.Chain chain;
    private final LongFunction<LogRow> rows;
    private final TreeMap<Long, LogRow> wiped = new TreeMap<>();
    private int names;

    /**
     * Nothing was looked at yet.
     *
     * @param rows finds the row at a place
     */
    Wiping(Blanking asked, String stand, LongFunction<LogRow> rows) {
        this.asked = asked;
        this.chain = new LogRow.Chain(stand);
        this.rows = rows;
    }

    /** Looks at a row, which must be what was written. */
    void look(LogRow row) {
        EventName name = EventName.read(row.kind()).orElseThrow();
        NameFields.Renamed renamed =
                NameFields.rename(name, row.body(), asked.order(), asked.names());
        if (renamed.texts() == 0) {
            return;
        }
        names += renamed.texts();
        // What is written must be readable, whatever was asked for.
        EventCodec.decode(row.seq(), row.kind(), row.version(), renamed.body());
        wiped.put(row.seq(), row.blanked(chain, renamed.body()));
        long first = row.seq() - row.ordinal();
        if (!wiped.containsKey(first)) {
            LogRow command = rows.apply(first);
            if (!command.fingerprint().isEmpty()) {
                wiped.put(first, command.blanked(chain, command.body()));
            }
        }
    }

    boolean isNothing() {
        return wiped.isEmpty();
    }

    Blanked blanked() {
        return new Blanked(names, digest(wiped.values()));
    }

    /** The changed rows, in order. */
    List<LogRow> wiped() {
        return new ArrayList<>(wiped.values());
    }

    /** What stands for rows that were changed together. */
    private static String digest(Collection<LogRow> wiped) {
        Digest digest = new Digest();
        wiped.forEach(row -> digest.add(row.seq(), row.proof()));
        return digest.hex();
    }

    /** SHA-256 over places and proofs, in the order of the places. */
    static final class Digest {
        private final MessageDigest digest = Sha256.digest();

        void add(long seq, byte[] proof) {
            digest.update(ByteBuffer.allocate(Long.BYTES).putLong(seq).array());
            digest.update(proof);
        }

        String hex() {
            return HexFormat.of().formatHex(digest.digest());
        }
    }
}
