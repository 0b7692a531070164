package sopwell.desk;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.orders.StandSettings;

/**
 * The real desk and the real follower without their threads: batches are what the caller says, so
 * that the same commands always come to the same log. To throw it away and make another over the
 * same log is what a killed process does. Belongs to one thread.
 */
public final class SteppedDesk {
    private final DeskBatch batch;
    private final Following following;

    /** One command on its way. */
    public record Asking(String key, String fingerprint, StandCommand command) {}

    /** A desk that knows the newest day of its log. */
    public SteppedDesk(EventLog log, StandSettings settings, InstantSource clock) {
        this(log, settings, clock, DiskGuard.trusting());
    }

    /** The same on a disk that is minded. */
    public SteppedDesk(EventLog log, StandSettings settings, InstantSource clock, DiskGuard guard) {
        following = new Following(log, settings);
        batch = new DeskBatch(log, settings, clock, this::committed, guard);
        batch.rebuild();
    }

    /** Decides these in one go; every future is complete when it returns. */
    public List<CompletableFuture<Answer>> run(List<Asking> askings) {
        List<DeskRequest> requests = new ArrayList<>();
        for (Asking asking : askings) {
            requests.add(new DeskRequest(asking.key(), asking.fingerprint(), asking.command()));
        }
        batch.run(requests);
        return requests.stream().map(DeskRequest::answer).toList();
    }

    /** What commands are decided by. */
    public Stand deciding() {
        return batch.stand();
    }

    /** What is shown. */
    public Stand shown() {
        return following.stand();
    }

    /** The stand as a process that starts now would read it. */
    public static Stand replayed(EventLog log, StandSettings settings) {
        return Replay.newestDay(log, settings, recorded -> {});
    }

    private void committed(List<Recorded> events) {
        following.take(events);
    }
}
