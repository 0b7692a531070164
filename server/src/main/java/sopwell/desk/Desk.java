package sopwell.desk;

import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import sopwell.Limits;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.StandSettings;

/**
 * The one writer. Commands queue up; the desk's thread takes what has gathered, decides each
 * against the stand as the earlier ones leave it, makes all their events durable in one
 * transaction, hands the events on, and only then answers.
 *
 * <p>Thread-safe. A full queue is said at once with {@link DeskBusy}; a failed store completes the
 * answers with its {@link sopwell.log.LogFault}: whether those commands were kept is unknown, and
 * asking again under the same key is safe.
 */
public final class Desk implements AutoCloseable {
    private final Gathering<DeskRequest> requests;
    private final DiskGuard guard;
    private final DeskTally tally = new DeskTally();

    /** A desk over a log that is not on a disk. */
    public Desk(
            EventLog log,
            StandSettings settings,
            InstantSource clock,
            Consumer<List<Recorded>> committed) {
        this(log, settings, clock, committed, DiskGuard.trusting());
    }

    /**
     * A desk over a log; reads the newest day from it before it returns.
     *
     * @param committed is handed durable events on the desk's thread, in order, before the answers;
     *     no events when the desk had to read the log again
     * @param guard says what may be written, and is told what could not be
     */
    public Desk(
            EventLog log,
            StandSettings settings,
            InstantSource clock,
            Consumer<List<Recorded>> committed,
            DiskGuard guard) {
        DeskBatch batch = new DeskBatch(log, settings, clock, committed, guard);
        this.guard = guard;
        batch.rebuild();
        requests =
                new Gathering<>(
                        "desk",
                        new ArrayBlockingQueue<>(Limits.DESK_QUEUE_COMMANDS_MAX),
                        Limits.DESK_BATCH_COMMANDS_MAX,
                        batch::run);
    }

    /**
     * Asks for something. While the stand only reads, that is refused at once, whatever it is.
     *
     * @throws DeskBusy when the queue is full or the desk is closed
     */
    public CompletableFuture<Answer> submit(String key, String fingerprint, StandCommand command) {
        if (guard.isReadingOnly()) {
            Answer refused = Answer.refused(Refusal.of(Reason.READING_ONLY));
            tally.count(command, refused, null);
            return CompletableFuture.completedFuture(refused);
        }
        DeskRequest request = new DeskRequest(key, fingerprint, command);
        CompletableFuture<Answer> counted =
                request.answer().whenComplete((came, fault) -> tally.count(command, came, fault));
        if (!requests.offer(request)) {
            tally.turnAway();
            throw new DeskBusy("The desk can't take this now; ask again with the same key.");
        }
        return counted;
    }

    /** What became of commands so far. */
    public DeskTally tally() {
        return tally;
    }

    /** How many commands wait. */
    public int waiting() {
        return requests.waiting();
    }

    /** Finishes what is queued, then stops. */
    @Override
    public void close() {
        requests.close();
    }
}
