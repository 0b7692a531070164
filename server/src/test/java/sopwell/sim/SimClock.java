package sopwell.sim;

import java.time.Instant;
import java.time.InstantSource;

/** A clock that only its owner moves, also backwards. Belongs to one thread. */
final class SimClock implements InstantSource {
    private long nowMs;

    SimClock(long nowMs) {
        this.nowMs = nowMs;
    }

    void move(long byMs) {
        nowMs += byMs;
    }

    @Override
    public Instant instant() {
        return Instant.ofEpochMilli(nowMs);
    }
}
