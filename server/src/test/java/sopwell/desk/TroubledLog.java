package sopwell.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import sopwell.log.Blanked;
import sopwell.log.Blanking;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Kept;
import sopwell.log.LogFault;
import sopwell.log.Recorded;

/** A log that can be told to fail, before or after it has kept what it was given, or to wait. */
public final class TroubledLog implements EventLog {
    /** What happens to the next append. */
    public enum Trouble {
        NONE,
        FAILS_BEFORE_KEEPING,
        FAILS_AFTER_KEEPING,
        STAYS_BROKEN
    }

    private final EventLog inner;
    private final AtomicReference<Runnable> between = new AtomicReference<>();
    private volatile Trouble trouble = Trouble.NONE;
    private volatile CountDownLatch gate = new CountDownLatch(0);

    /** A log without trouble so far. */
    public TroubledLog(EventLog inner) {
        this.inner = inner;
    }

    /** What happens to the next append. */
    public void next(Trouble next) {
        trouble = next;
    }

    /** Appends wait until the latch is opened. */
    void holdAt(CountDownLatch latch) {
        gate = latch;
    }

    /** Something that comes between the next reading of many events and the use of them. */
    void whenNextRead(Runnable then) {
        between.set(then);
    }

    @Override
    public List<Recorded> append(List<Entry> entries) {
        try {
            gate.await();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
        Trouble now = trouble;
        if (now == Trouble.STAYS_BROKEN) {
            throw new LogFault("the disk is gone");
        }
        trouble = Trouble.NONE;
        if (now == Trouble.FAILS_BEFORE_KEEPING) {
            throw new LogFault("the disk is full");
        }
        List<Recorded> recorded = inner.append(entries);
        if (now == Trouble.FAILS_AFTER_KEEPING) {
            throw new LogFault("the sync failed");
        }
        return recorded;
    }

    @Override
    public void probe() {
        if (trouble == Trouble.STAYS_BROKEN) {
            throw new LogFault("the disk is gone");
        }
        inner.probe();
    }

    @Override
    public String epoch() {
        return inner.epoch();
    }

    @Override
    public long lastSeq() {
        return inner.lastSeq();
    }

    @Override
    public void read(long fromSeq, long toSeq, Consumer<Recorded> reader) {
        if (trouble == Trouble.STAYS_BROKEN) {
            throw new LogFault("the disk is gone");
        }
        List<Recorded> read = new ArrayList<>();
        inner.read(fromSeq, toSeq, read::add);
        Runnable then = toSeq > fromSeq ? between.getAndSet(null) : null;
        if (then != null) {
            then.run();
        }
        read.forEach(reader);
    }

    @Override
    public OptionalLong lastOf(Class<? extends Event> type, long atOrBeforeSeq) {
        return inner.lastOf(type, atOrBeforeSeq);
    }

    @Override
    public List<Long> placesOf(Class<? extends Event> type) {
        return inner.placesOf(type);
    }

    @Override
    public Optional<Blanked> prepare(Blanking asked) {
        return inner.prepare(asked);
    }

    @Override
    public Optional<Kept> find(String key) {
        return inner.find(key);
    }

    @Override
    public void close() {
        inner.close();
    }
}
