package sopwell.storage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.Consumer;
import sopwell.Check;
import sopwell.audit.AuditEvent;
import sopwell.log.Blanked;
import sopwell.log.Blanking;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Kept;
import sopwell.log.KeyTaken;
import sopwell.log.Recorded;

/** An event log that is gone when the program ends, for trials and tests. Thread-safe. */
public final class MemoryLog implements EventLog {
    private final String epoch;
    private final List<Recorded> events = new ArrayList<>();
    private final Map<String, Kept> byKey = new HashMap<>();
    private final Map<Long, Event> prepared = new TreeMap<>();

    /** An empty log under an epoch of the caller's choice. */
    public MemoryLog(String epoch) {
        this.epoch = epoch;
    }

    @Override
    public String epoch() {
        return epoch;
    }

    @Override
    public synchronized long lastSeq() {
        return events.size();
    }

    @Override
    public synchronized List<Recorded> append(List<Entry> entries) {
        Map<String, Kept> added = new HashMap<>();
        List<Recorded> recorded = new ArrayList<>();
        long atMs = events.isEmpty() ? 0 : events.get(events.size() - 1).atMs();
        for (Entry entry : entries) {
            Check.that(!entry.events().isEmpty(), "an entry has at least one event");
            atMs = Math.max(atMs, entry.atMs());
            List<Recorded> own = new ArrayList<>();
            for (int ordinal = 0; ordinal < entry.events().size(); ordinal++) {
                long seq = events.size() + recorded.size() + own.size() + 1L;
                Event event = entry.events().get(ordinal);
                own.add(new Recorded(seq, atMs, entry.key(), ordinal, event));
            }
            Kept kept = new Kept(entry.fingerprint(), own);
            if (byKey.containsKey(entry.key()) || added.put(entry.key(), kept) != null) {
                throw new KeyTaken(entry.key());
            }
            recorded.addAll(own);
        }
        byKey.putAll(added);
        events.addAll(recorded);
        if (recorded.stream().anyMatch(one -> one.event() instanceof AuditEvent.NamesErased)) {
            prepared.forEach(this::replace);
        }
        return recorded;
    }

    @Override
    public void probe() {
        // Memory takes what it is given.
    }

    @Override
    public synchronized Optional<Blanked> prepare(Blanking asked) {
        prepared.clear();
        Wiping.Digest digest = new Wiping.Digest();
        int names = 0;
        for (Recorded one : events) {
            if (one.seq() >= asked.fromSeq() && one.seq() <= asked.toSeq()) {
                EventName name = EventCodec.name(one.event());
                byte[] body = EventCodec.encode(one.event());
                NameFields.Renamed now =
                        NameFields.rename(name, body, asked.order(), asked.names());
                if (now.texts() > 0) {
                    names += now.texts();
                    digest.add(one.seq(), Sha256.of(now.body()));
                    prepared.put(
                            one.seq(),
                            EventCodec.decode(
                                    one.seq(), name.written(), name.version(), now.body()));
                }
            }
        }
        return names == 0 ? Optional.empty() : Optional.of(new Blanked(names, digest.hex()));
    }

    private void replace(long seq, Event event) {
        Recorded old = events.get((int) seq - 1);
        events.set(
                (int) seq - 1,
                new Recorded(old.seq(), old.atMs(), old.key(), old.ordinal(), event));
        long first = seq - old.ordinal();
        int events = byKey.get(old.key()).events().size();
        byKey.put(
                old.key(),
                new Kept("", this.events.subList((int) first - 1, (int) first - 1 + events)));
    }

    @Override
    public void read(long fromSeq, long toSeq, Consumer<Recorded> reader) {
        List<Recorded> range = new ArrayList<>();
        synchronized (this) {
            long to = Math.min(toSeq, events.size());
            for (long seq = Math.max(fromSeq, 1); seq <= to; seq++) {
                range.add(events.get((int) seq - 1));
            }
        }
        range.forEach(reader);
    }

    @Override
    public synchronized OptionalLong lastOf(Class<? extends Event> type, long atOrBeforeSeq) {
        for (long seq = Math.min(atOrBeforeSeq, events.size()); seq >= 1; seq--) {
            if (type.isInstance(events.get((int) seq - 1).event())) {
                return OptionalLong.of(seq);
            }
        }
        return OptionalLong.empty();
    }

    @Override
    public synchronized List<Long> placesOf(Class<? extends Event> type) {
        return events.stream()
                .filter(recorded -> type.isInstance(recorded.event()))
                .map(Recorded::seq)
                .toList();
    }

    @Override
    public synchronized Optional<Kept> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    @Override
    public void close() {
        // Nothing is held but memory.
    }
}
