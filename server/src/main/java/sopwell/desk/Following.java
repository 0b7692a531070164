package sopwell.desk;

import java.util.List;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.orders.StandSettings;

/**
 * A stand that is kept up with the durable events as they are handed on. Not thread-safe: its owner
 * is one thread.
 */
final class Following {
    private final EventLog log;
    private final StandSettings settings;
    private Stand stand;

    /** Knows the newest day when it returns. */
    Following(EventLog log, StandSettings settings) {
        this.log = log;
        this.settings = settings;
        rebuild();
    }

    /** The stand as the events leave it. */
    Stand stand() {
        return stand;
    }

    /**
     * Takes in durable events, in order. No events means that there may be more in the log than was
     * ever handed on, and so does a gap.
     */
    void take(List<Recorded> events) {
        if (events.isEmpty() || events.get(0).seq() > stand.seq() + 1) {
            rebuild();
        }
        for (Recorded recorded : events) {
            if (recorded.seq() > stand.seq()) {
                stand.apply(recorded);
            }
        }
    }

    /** Throws the stand away and reads it from the log again. */
    void rebuild() {
        stand = Replay.newestDay(log, settings, recorded -> {});
    }
}
