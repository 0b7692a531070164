package sopwell.prep.plan;

import java.time.Instant;

/**
 * One thing that keeps a task from starting later than it does. Immutable.
 *
 * @param step the step that it is about
 * @param resource what is taken, of {@link Kind#RESOURCE}; empty otherwise
 * @param from when it begins: the wait, the other work, the moment at which nobody is there
 * @param until when it ends; the same moment where nothing lasts
 * @param otherwise when the task could start without it; its own start of {@link Kind#WAIT}
 */
public record Bound(
        Kind kind, String step, String resource, Instant from, Instant until, Instant otherwise) {
    /** What kind of thing it is. */
    public enum Kind {
        /** A step or the wait behind it takes its time with nobody at it: cooling, ripening. */
        WAIT,
        /** An oven or another resource is taken, or out. */
        RESOURCE,
        /** Nobody is in the kitchen when somebody must be. */
        HOURS,
        /** All hands are busy with something else. */
        HANDS,
        /** Several of these at once. */
        SEVERAL,
        /** It could start later; like this, other tasks fit. */
        EARLY
    }
}
