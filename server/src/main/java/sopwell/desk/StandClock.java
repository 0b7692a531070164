package sopwell.desk;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import java.util.logging.Logger;
import sopwell.Limits;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * What time it is at the stand. It never goes back, and while a day is open it goes by a clock that
 * never jumps, so that a step of the box's clock neither splits the day nor makes a wait negative.
 * Thread-safe.
 *
 * <p>The box's clock is looked at every second. A difference of up to two seconds is made up at
 * once. A larger one is a step, and is noted. While a day is open the stand keeps its own time;
 * with none open it takes the box's, or waits for it if that is earlier. A box that at the start
 * says a time before the log's last event, or before this Sopwell was made, has no clock to speak
 * of: the stand goes on at the log's time, and takes the box's as soon as it is later, also in the
 * middle of a day.
 */
public final class StandClock implements InstantSource {
    private static final Logger LOGGER = Logger.getLogger(StandClock.class.getName());

    private final InstantSource box;
    private final LongSupplier nanos;
    private final LongSupplier upMillis;
    private BooleanSupplier dayOpen = () -> false;
    private long anchorMs;
    private long anchorNanos;
    private long givenMs;
    private ClockState.Trust trust = ClockState.Trust.RIGHT;
    private boolean everRight;
    private boolean waiting;
    private long notedStepMs;
    private long seenUpMillis;
    private long seenNanos;

    /**
     * The clocks of a box.
     *
     * @param box what time the box says it is
     * @param nanos a clock that never jumps, in nanoseconds
     * @param upMillis for how long the box is up, also while it slept, in milliseconds
     */
    public record Clocks(InstantSource box, LongSupplier nanos, LongSupplier upMillis) {}

    /**
     * A clock that goes on from where the log ends.
     *
     * @param floorMs what no right clock is before: the log's last event, or when this was made
     */
    public StandClock(Clocks clocks, long floorMs) {
        this.box = clocks.box();
        this.nanos = clocks.nanos();
        this.upMillis = clocks.upMillis();
        long now = box.millis();
        everRight = now >= floorMs - Limits.CLOCK_STEP_MILLIS;
        if (!everRight) {
            trust = ClockState.Trust.BEHIND;
            Told.of(Happening.CLOCK_WRONG)
                    .own("box", Instant.ofEpochMilli(now).toString())
                    .own("standGoesOnFrom", Instant.ofEpochMilli(floorMs).toString())
                    .to(LOGGER);
        }
        anchor(Math.max(now, floorMs));
        givenMs = anchorMs;
        seenUpMillis = upMillis.getAsLong();
        seenNanos = nanos.getAsLong();
    }

    /** Tells how it is known whether a day is open. */
    public synchronized void during(BooleanSupplier open) {
        dayOpen = open;
    }

    @Override
    public Instant instant() {
        return Instant.ofEpochMilli(millis());
    }

    @Override
    public synchronized long millis() {
        givenMs = Math.max(givenMs, ownMs());
        return givenMs;
    }

    /** Looks at the box's clock; called every second or so. */
    public void look() {
        boolean open = isDayOpen();
        long boxMs = box.millis();
        synchronized (this) {
            addSleep();
            long stepMs = boxMs - ownMs();
            if (Math.abs(stepMs) <= Limits.CLOCK_STEP_MILLIS) {
                agree(boxMs);
            } else if (!everRight && stepMs > 0) {
                note(stepMs, "the box has the time now; the stand takes it on");
                agree(boxMs);
            } else if (everRight && open) {
                note(stepMs, "a day is open; the stand keeps its own time until it is closed");
                trust = ClockState.Trust.STEPPED;
                goOn();
            } else if (everRight && stepMs > 0) {
                note(stepMs, "no day is open; the stand takes it on");
                agree(boxMs);
            } else if (everRight) {
                note(stepMs, "that is before the log's last; the stand waits for it");
                trust = ClockState.Trust.BEHIND;
                waiting = true;
                anchor(givenMs);
            }
        }
    }

    /** How the box's clock stands to this one. */
    public synchronized ClockState state() {
        return new ClockState(trust, box.millis(), millis());
    }

    private boolean isDayOpen() {
        BooleanSupplier open;
        synchronized (this) {
            open = dayOpen;
        }
        return open.getAsBoolean();
    }

    /** A box that slept did not step: its clock and the count of how long it is up agree. */
    private void addSleep() {
        long up = upMillis.getAsLong();
        long now = nanos.getAsLong();
        long slept = up - seenUpMillis - Duration.ofNanos(now - seenNanos).toMillis();
        if (slept > Limits.CLOCK_STEP_MILLIS) {
            Told.of(Happening.BOX_SLEPT).with("millis", slept).to(LOGGER);
            anchorMs += slept;
        }
        seenUpMillis = up;
        seenNanos = now;
    }

    private void agree(long boxMs) {
        everRight = true;
        waiting = false;
        anchor(boxMs);
        trust = ClockState.Trust.RIGHT;
        notedStepMs = 0;
    }

    /** The same step is noted once, however long it stays. */
    private void note(long stepMs, String what) {
        if (Math.abs(stepMs - notedStepMs) > Limits.CLOCK_STEP_MILLIS) {
            notedStepMs = stepMs;
            Told.of(Happening.CLOCK_WRONG).with("offMillis", stepMs).own("why", what).to(LOGGER);
        }
    }

    /** Whoever waited goes on from where it stands. */
    private void goOn() {
        if (waiting) {
            waiting = false;
            anchor(anchorMs);
        }
    }

    private void anchor(long atMs) {
        anchorMs = atMs;
        anchorNanos = nanos.getAsLong();
    }

    private long ownMs() {
        return waiting
                ? anchorMs
                : anchorMs + Duration.ofNanos(nanos.getAsLong() - anchorNanos).toMillis();
    }
}
