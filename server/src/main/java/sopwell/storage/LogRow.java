package sopwell.storage;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;

/**
 * One event as a row of the log. Never changed after it is made.
 *
 * @param key the command's key on its first event, otherwise null, as in the table
 * @param fingerprint on a command's first event, otherwise null
 * @param body JSON in UTF-8
 * @param hash SHA-256 over the hash of the row before and everything else here but the proof, as it
 *     was when the row was written
 * @param salt chance that is hashed with what may name somebody; otherwise, and once the name was
 *     taken out, null
 * @param proof SHA-256 over the row as it is since a name was taken out; null while none was
 */
@SuppressWarnings("ArrayRecordComponent") // Rows live between two calls and are never compared.
record LogRow(
        long seq,
        long atMs,
        String kind,
        int version,
        String key,
        String fingerprint,
        int ordinal,
        byte[] body,
        byte[] hash,
        byte[] salt,
        byte[] proof) {
    private static final byte[] NO_HASH = new byte[Sha256.BYTES];

    /** What stands for the row before the first one. */
    static byte[] noHash() {
        return NO_HASH.clone();
    }

    LogRow hashed(Chain chain, byte[] before) {
        byte[] own = chain.hash(before, this);
        return new LogRow(
                seq, atMs, kind, version, key, fingerprint, ordinal, body, own, salt, null);
    }

    /** This row with another body, and with nothing left that its names could be guessed from. */
    LogRow blanked(Chain chain, byte[] other) {
        String asked = fingerprint == null ? null : "";
        LogRow bare =
                new LogRow(seq, atMs, kind, version, key, asked, ordinal, other, hash, null, null);
        byte[] own = chain.hash(hash, bare);
        return new LogRow(seq, atMs, kind, version, key, asked, ordinal, other, hash, null, own);
    }

    /**
     * Whether this row is what was written after a row with that hash, or what was left of it when
     * a name was taken out. The row behind it holds the hash either way.
     */
    boolean follows(Chain chain, byte[] before) {
        return proof == null
                ? Arrays.equals(chain.hash(before, this), hash)
                : Arrays.equals(chain.hash(hash, this), proof);
    }

    /** Hashes the rows of one stand. Not thread-safe: for one thread. */
    static final class Chain {
        private static final int NUMBERS_BYTES = 8 + 8 + 4 + 4;

        private final MessageDigest digest = Sha256.digest();
        private final ByteBuffer numbers = ByteBuffer.allocate(NUMBERS_BYTES);
        private final ByteBuffer length = ByteBuffer.allocate(4);
        private final byte[] stand;

        Chain(String stand) {
            this.stand = stand.getBytes(StandardCharsets.UTF_8);
        }

        /** Every text goes in behind its length, so that no two rows look alike. */
        private byte[] hash(byte[] before, LogRow row) {
            digest.update(before);
            numbers.clear();
            numbers.putLong(row.seq).putLong(row.atMs).putInt(row.version).putInt(row.ordinal);
            digest.update(numbers.array());
            add(stand);
            add(row.kind);
            add(row.key);
            add(row.fingerprint);
            add(row.body);
            if (row.salt != null) {
                add(row.salt);
            }
            return digest.digest();
        }

        private void add(String text) {
            if (text == null) {
                digest.update(length.clear().putInt(-1).array());
            } else {
                add(text.getBytes(StandardCharsets.UTF_8));
            }
        }

        private void add(byte[] bytes) {
            digest.update(length.clear().putInt(bytes.length).array());
            digest.update(bytes);
        }
    }
}
