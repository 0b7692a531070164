package sopwell;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import sopwell.log.Blanked;
import sopwell.log.Blanking;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Kept;
import sopwell.log.Recorded;

/** A log whose appends are timed, those that fail too. Threading: as {@link EventLog} says. */
record TimedLog(EventLog log, Meters meters) implements EventLog {
    @Override
    public List<Recorded> append(List<Entry> entries) {
        long from = meters.nanos().getAsLong();
        try {
            return log.append(entries);
        } finally {
            meters.commits().took(meters.nanos().getAsLong() - from);
        }
    }

    @Override
    public String epoch() {
        return log.epoch();
    }

    @Override
    public long lastSeq() {
        return log.lastSeq();
    }

    @Override
    public void read(long fromSeq, long toSeq, Consumer<Recorded> reader) {
        log.read(fromSeq, toSeq, reader);
    }

    @Override
    public OptionalLong lastOf(Class<? extends Event> type, long atOrBeforeSeq) {
        return log.lastOf(type, atOrBeforeSeq);
    }

    @Override
    public List<Long> placesOf(Class<? extends Event> type) {
        return log.placesOf(type);
    }

    @Override
    public Optional<Kept> find(String key) {
        return log.find(key);
    }

    @Override
    public Optional<Blanked> prepare(Blanking asked) {
        return log.prepare(asked);
    }

    @Override
    public void probe() {
        log.probe();
    }

    @Override
    public void close() {
        log.close();
    }
}
