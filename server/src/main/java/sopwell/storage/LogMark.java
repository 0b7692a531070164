package sopwell.storage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * How far the log has come, noted in a file beside it after each commit, so that a log that lost
 * its end shows it. The note is always behind the log and never ahead, so one that is ahead means
 * loss. It lies in two places by turns: a torn note leaves the one before. It is rarely forced to
 * the disk: what a power cut takes of it makes it older, not wrong. Not thread-safe: it belongs to
 * the thread that appends.
 */
final class LogMark implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(LogMark.class.getName());
    static final String NAME = "log.mark";
    private static final String KIND = "sopwell-mark-1";
    private static final int PLACES = 2;

    /** A place is a disk's block, so that writing one never touches the other. */
    private static final int PLACE_BYTES = 4_096;

    private static final int FIELDS = 6;

    private final Path file;
    private FileChannel channel;
    private long notes;

    LogMark(Path log) {
        this.file = log.resolveSibling(NAME);
    }

    /**
     * What is noted.
     *
     * @param epoch of the log
     * @param seq its last place
     * @param hash that row's hash, in hexadecimal
     */
    record Note(String stand, String epoch, long seq, String hash) {
        private String line() {
            String said = KIND + " " + stand + " " + epoch + " " + seq + " " + hash;
            return said + " " + sum(said) + "\n";
        }
    }

    /** The newest note that can be read. */
    Optional<Note> read() {
        Optional<Note> newest = Optional.empty();
        try {
            byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
            for (int place = 0; place < PLACES; place++) {
                int from = Math.min(place * PLACE_BYTES, bytes.length);
                int to = Math.min(from + PLACE_BYTES, bytes.length);
                Optional<Note> note = note(Arrays.copyOfRange(bytes, from, to));
                if (note.isPresent()
                        && (newest.isEmpty() || note.get().seq() > newest.get().seq())) {
                    newest = note;
                }
            }
            if (newest.isEmpty() && bytes.length > 0) {
                Told.of(Happening.MARK_LOST).own("file", file.toString()).to(LOGGER);
            }
        } catch (IOException unreadable) {
            Told.of(Happening.MARK_LOST).own("file", file.toString()).fault(unreadable).to(LOGGER);
        }
        return newest;
    }

    /** Notes; a disk that does not take it only makes the note older. */
    void note(Note note) {
        try {
            if (channel == null) {
                channel =
                        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            }
            byte[] line = note.line().getBytes(StandardCharsets.UTF_8);
            ByteBuffer place = ByteBuffer.wrap(line);
            long at = notes % PLACES * PLACE_BYTES;
            while (place.hasRemaining()) {
                at += channel.write(place, at);
            }
            if (notes % LogLimits.MARK_FORCED_NOTES == 0) {
                channel.force(false);
            }
            notes++;
        } catch (IOException fault) {
            LOGGER.log(Level.FINE, file + " was not written", fault);
        }
    }

    /** Throws what is noted away. */
    void forget() throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public void close() {
        if (channel != null) {
            try {
                channel.force(false);
                channel.close();
            } catch (IOException fault) {
                LOGGER.log(Level.FINE, file + " was not closed cleanly", fault);
            }
            channel = null;
        }
    }

    private static Optional<Note> note(byte[] place) {
        String text = new String(place, StandardCharsets.UTF_8);
        int end = text.indexOf('\n');
        String[] fields = end < 0 ? new String[0] : text.substring(0, end).split(" ", -1);
        if (fields.length != FIELDS || !fields[0].equals(KIND)) {
            return Optional.empty();
        }
        String said = text.substring(0, text.lastIndexOf(' ', end));
        if (!fields[5].equals(sum(said))) {
            return Optional.empty();
        }
        return Optional.of(new Note(fields[1], fields[2], Long.parseLong(fields[3]), fields[4]));
    }

    private static String sum(String said) {
        return HexFormat.of().formatHex(Sha256.of(said.getBytes(StandardCharsets.UTF_8)), 0, 8);
    }
}
