package sopwell.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Consumer;
import sopwell.Check;
import sopwell.log.Blanked;
import sopwell.log.Blanking;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Kept;
import sopwell.log.KeyTaken;
import sopwell.log.LogFault;
import sopwell.log.Recorded;

/**
 * The event log of one stand in a SQLite file.
 *
 * <p>Each row's hash covers the row before, so a row that was altered, put in or taken out shows
 * itself to whoever reads past it. A row that the clock dates before its predecessor is recorded at
 * its predecessor's time. Threading: as {@link EventLog} says; {@link #close} comes when the
 * appending thread has ended.
 */
public final class SqliteLog implements EventLog {
    /** Rows fetched at once: some milliseconds' worth. */
    static final int READ_ROWS = 1_000;

    private final Path file;
    private final String stand;
    private final SqliteFile.Options options;
    private final SqliteReader reader;
    private final String epoch;
    private final LogRow.Chain chain;
    private final LogMark mark;
    private SqliteWriter writer;
    private SqliteWriter.End end;
    private final NameWiper wiper = new NameWiper();
    private boolean namesInSideFile;
    private volatile long lastSeq;
    private volatile boolean closed;

    SqliteLog(Path file, String stand, SqliteFile.Options options) {
        this.file = file;
        this.stand = stand;
        this.options = options;
        this.chain = new LogRow.Chain(stand);
        this.reader = new SqliteReader(file, stand);
        this.mark = new LogMark(file);
        boolean opened = false;
        try {
            SqliteFile.create(file);
            new LogEnd(file, stand).compare(mark.read());
            SqliteFile.prepare(file);
            writer = new SqliteWriter(file, stand, options);
            end = writer.end();
            lastSeq = end.seq();
            epoch = reader.epoch();
            opened = true;
        } catch (SQLException e) {
            throw new FolderFault("The log " + file + " can't be opened: " + SqliteWords.of(e), e);
        } catch (IOException e) {
            throw new FolderFault("The log " + file + " can't be opened: " + e.getMessage(), e);
        } finally {
            if (!opened) {
                reader.close();
                giveUp();
            }
        }
    }

    /** A log that is only looked at, also while a server writes to it. */
    private SqliteLog(Path file, String stand) {
        this.file = file;
        this.stand = stand;
        this.options = SqliteFile.Options.USUAL;
        this.chain = new LogRow.Chain(stand);
        this.reader = new SqliteReader(file, stand);
        this.mark = new LogMark(file);
        this.closed = true;
        try (Connection probe = SqliteFile.reader(file)) {
            SqliteFile.verify(file, probe);
        } catch (SQLException e) {
            throw new FolderFault("The log " + file + " can't be read: " + SqliteWords.of(e), e);
        }
        lastSeq = reader.lastSeq();
        epoch = reader.epoch();
    }

    /**
     * Opens a log to look at what it holds now; it takes no entries.
     *
     * @throws FolderFault when the file is not a log that this Sopwell can read
     */
    static SqliteLog reading(Path file, String stand) {
        return new SqliteLog(file, stand);
    }

    @Override
    public String epoch() {
        return epoch;
    }

    @Override
    public long lastSeq() {
        return lastSeq;
    }

    /** The hash of an event, which stands for all events up to it. */
    public String hashOf(long seq) {
        return HexFormat.of().formatHex(row(seq).hash());
    }

    @Override
    public List<Recorded> append(List<Entry> entries) {
        List<String> keys = entries.stream().map(Entry::key).toList();
        Set<String> own = new HashSet<>();
        for (String key : keys) {
            if (!own.add(key)) {
                throw new KeyTaken(key);
            }
        }
        if (closed) {
            throw new LogFault("The log is closed.");
        }
        if (writer == null) {
            reopen();
        }
        List<LogRow> rows = new ArrayList<>();
        List<Recorded> recorded = new ArrayList<>();
        for (Entry entry : entries) {
            add(entry, rows, recorded);
        }
        write(rows, wiper.wipes(recorded), keys);
        return recorded;
    }

    @Override
    public void probe() {
        if (closed) {
            throw new LogFault("The log is closed.");
        }
        try (Connection fresh = SqliteFile.writer(file, options)) {
            SqliteFile.rewrite(fresh);
        } catch (SQLException e) {
            throw new LogFault("The log can't be written yet: " + SqliteWords.of(e), e);
        }
    }

    @Override
    public Optional<Blanked> prepare(Blanking asked) {
        Wiping wiping = new Wiping(asked, stand, this::row);
        rows(asked.fromSeq(), asked.toSeq(), wiping::look);
        return wiper.prepare(wiping);
    }

    @Override
    public void read(long fromSeq, long toSeq, Consumer<Recorded> consumer) {
        String[] key = new String[1];
        rows(
                fromSeq,
                toSeq,
                row -> {
                    key[0] = key(row, key[0]);
                    consumer.accept(recorded(row, key[0]));
                });
    }

    /** Hands on rows, each of which is what was written. */
    private void rows(long fromSeq, long toSeq, Consumer<LogRow> consumer) {
        long to = Math.min(toSeq, lastSeq);
        long from = Math.max(fromSeq, 1);
        if (from > to) {
            return;
        }
        LogRow.Chain readChain = new LogRow.Chain(stand);
        byte[] before = from == 1 ? LogRow.noHash() : row(from - 1).hash();
        for (long next = from; next <= to; ) {
            List<LogRow> rows = reader.rows(next, to, READ_ROWS);
            if (rows.isEmpty()) {
                throw damaged(next, "it is missing");
            }
            for (LogRow row : rows) {
                if (row.seq() != next) {
                    throw damaged(next, "it is missing");
                }
                if (!row.follows(readChain, before)) {
                    throw damaged(next, dated(row) + " it is not what was written");
                }
                consumer.accept(row);
                before = row.hash();
                next++;
            }
        }
    }

    @Override
    public OptionalLong lastOf(Class<? extends Event> type, long atOrBeforeSeq) {
        return reader.lastOf(EventName.needed(type), Math.min(atOrBeforeSeq, lastSeq));
    }

    @Override
    public List<Long> placesOf(Class<? extends Event> type) {
        EventName name = EventName.needed(type);
        Check.that(EventName.RARE.contains(name), "only places of rare events are listed");
        long last = lastSeq;
        return reader.placesOf(name).stream().filter(seq -> seq <= last).toList();
    }

    @Override
    public Optional<Kept> find(String key) {
        OptionalLong first = reader.byKey(key);
        if (first.isEmpty() || first.getAsLong() > lastSeq) {
            return Optional.empty();
        }
        long from = first.getAsLong();
        String fingerprint = row(from).fingerprint();
        List<Recorded> events = new ArrayList<>();
        read(from, commandEnd(from), events::add);
        return Optional.of(new Kept(fingerprint, events));
    }

    @Override
    public void close() {
        closed = true;
        reader.close();
        mark.close();
        if (writer == null) {
            return;
        }
        try (SqliteWriter last = writer) {
            writer = null;
            last.checkpoint();
        } catch (SQLException e) {
            throw new LogFault("The log was not closed cleanly: " + SqliteWords.of(e), e);
        }
    }

    private void add(Entry entry, List<LogRow> rows, List<Recorded> recorded) {
        Check.that(!entry.events().isEmpty(), "an entry has at least one event");
        byte[] before = rows.isEmpty() ? end.hash() : rows.get(rows.size() - 1).hash();
        long lastAtMs = rows.isEmpty() ? end.atMs() : rows.get(rows.size() - 1).atMs();
        long atMs = Math.max(entry.atMs(), lastAtMs);
        for (int ordinal = 0; ordinal < entry.events().size(); ordinal++) {
            Event event = entry.events().get(ordinal);
            EventName name = EventCodec.name(event);
            long seq = end.seq() + rows.size() + 1;
            boolean first = ordinal == 0;
            LogRow row =
                    new LogRow(
                                    seq,
                                    atMs,
                                    name.written(),
                                    name.version(),
                                    first ? entry.key() : null,
                                    first ? entry.fingerprint() : null,
                                    ordinal,
                                    EventCodec.encode(event),
                                    null,
                                    wiper.salt(entry, ordinal),
                                    null)
                            .hashed(chain, before);
            before = row.hash();
            rows.add(row);
            recorded.add(new Recorded(seq, atMs, entry.key(), ordinal, event));
        }
    }

    private void write(List<LogRow> rows, Map<Long, List<LogRow>> wipes, List<String> keys) {
        if (rows.isEmpty()) {
            return;
        }
        boolean sound = false;
        try {
            boolean written = writer.write(rows, wipes);
            Optional<String> taken = written ? Optional.empty() : writer.taken(keys);
            if (!written && taken.isEmpty()) {
                throw new SQLException("another program wrote to the log");
            }
            sound = true;
            if (taken.isPresent()) {
                throw new KeyTaken(taken.get());
            }
            LogRow last = rows.get(rows.size() - 1);
            end = new SqliteWriter.End(last.seq(), last.atMs(), last.hash());
            lastSeq = last.seq();
            String hash = HexFormat.of().formatHex(last.hash());
            mark.note(new LogMark.Note(stand, epoch, last.seq(), hash));
            namesInSideFile = (namesInSideFile || !wipes.isEmpty()) && !writer.emptySideFile();
        } catch (SQLException e) {
            throw new LogFault("The log could not be written: " + SqliteWords.of(e), e);
        } finally {
            if (!sound) {
                abandon();
            }
        }
    }

    /** Throws the connection away and, if the disk lets it, looks what was kept after all. */
    private void abandon() {
        try {
            writer.close();
        } catch (SQLException e) {
            // It is given up because it failed; that it fails once more says nothing new.
        }
        writer = null;
        try {
            writer = new SqliteWriter(file, stand, options);
            end = writer.end();
            lastSeq = end.seq();
        } catch (SQLException | FolderFault e) {
            giveUp();
        }
    }

    /** The next append tries again. */
    private void reopen() {
        long known = lastSeq;
        try {
            writer = new SqliteWriter(file, stand, options);
            end = writer.end();
            lastSeq = end.seq();
        } catch (SQLException e) {
            giveUp();
            throw new LogFault("The log can't be opened again: " + SqliteWords.of(e), e);
        }
        if (lastSeq != known) {
            throw new LogFault("The last entries were kept after all: read the log again.");
        }
    }

    private void giveUp() {
        if (writer != null) {
            try {
                writer.close();
            } catch (SQLException e) {
                // As above: it failed already.
            }
            writer = null;
        }
    }

    private LogRow row(long seq) {
        List<LogRow> rows = reader.rows(seq, seq, 1);
        if (rows.isEmpty()) {
            throw damaged(seq, "it is missing");
        }
        return rows.get(0);
    }

    private long commandEnd(long first) {
        long last = first;
        while (last < lastSeq) {
            List<LogRow> next = reader.rows(last + 1, last + 1, 1);
            if (next.isEmpty() || next.get(0).ordinal() == 0) {
                break;
            }
            last++;
        }
        return last;
    }

    /** A command's first event has the key; a range may begin behind it. */
    private String key(LogRow row, String before) {
        if (row.key() != null) {
            return row.key();
        }
        String key = before == null ? row(row.seq() - row.ordinal()).key() : before;
        if (key == null) {
            throw damaged(row.seq(), dated(row) + " its command has no key");
        }
        return key;
    }

    private static Recorded recorded(LogRow row, String key) {
        Event event = EventCodec.decode(row.seq(), row.kind(), row.version(), row.body());
        return new Recorded(row.seq(), row.atMs(), key, row.ordinal(), event);
    }

    private static String dated(LogRow row) {
        return "(dated " + Instant.ofEpochMilli(row.atMs()) + ")";
    }

    static LogFault damaged(long seq, String what) {
        return new LogFault("The log is damaged at event " + seq + ": " + what + ".");
    }
}
