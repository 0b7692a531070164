package sopwell.demo;

import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicLong;

/** A clock that stands until it is moved. Thread-safe. */
final class DemoClock implements InstantSource {
    private final AtomicLong nowMs;

    DemoClock(long nowMs) {
        this.nowMs = new AtomicLong(nowMs);
    }

    void moveTo(long newNowMs) {
        nowMs.set(newNowMs);
    }

    @Override
    public Instant instant() {
        return Instant.ofEpochMilli(nowMs.get());
    }

    @Override
    public long millis() {
        return nowMs.get();
    }
}
