package sopwell.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import sopwell.Check;
import sopwell.Limits;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.orders.Decision;
import sopwell.orders.StandSettings;

/**
 * The desk's rules without its thread, for whole days at once into a log that nobody else writes:
 * commands are decided and applied as at the desk, and their events made durable in large batches.
 * What was not flushed is lost with the process. Not thread-safe.
 */
public final class BulkDesk {
    private final EventLog log;
    private final List<Entry> entries = new ArrayList<>();
    private final Consumer<List<Entry>> writer;
    private final Stand stand;
    private int events;
    private long seq;

    /**
     * A desk over an empty log.
     *
     * @param writer appends a batch to the log, now or in a moment, in order
     */
    public BulkDesk(EventLog log, StandSettings settings, Consumer<List<Entry>> writer) {
        Check.that(log.lastSeq() == 0, "whole days go in bulk into an empty log only");
        this.log = log;
        this.writer = writer;
        this.stand = new Stand(settings);
    }

    /**
     * Decides and applies.
     *
     * @param atMs when, milliseconds since 1970-01-01 UTC; not before the last command
     * @param key new to the log
     */
    public Decision submit(long atMs, String key, String fingerprint, StandCommand command) {
        Decision decision = StandRules.decide(stand, command, atMs);
        int ordinal = 0;
        for (Event event : decision.events()) {
            seq++;
            stand.apply(new Recorded(seq, atMs, key, ordinal, event));
            ordinal++;
        }
        if (ordinal > 0) {
            entries.add(new Entry(atMs, key, fingerprint, decision.events()));
            events += ordinal;
            if (events >= Limits.BULK_BATCH_EVENTS) {
                flush();
            }
        }
        return decision;
    }

    /** The stand as all commands so far leave it. */
    public Stand stand() {
        return stand;
    }

    /** Hands on what has gathered. */
    public void flush() {
        if (!entries.isEmpty()) {
            writer.accept(List.copyOf(entries));
            entries.clear();
            events = 0;
        }
    }

    /** Makes sure that the log numbered everything as it was decided; after the last flush. */
    public void verify() {
        Check.that(log.lastSeq() == seq, "the log numbers events as the desk");
    }
}
