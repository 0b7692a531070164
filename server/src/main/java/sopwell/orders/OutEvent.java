package sopwell.orders;

import sopwell.log.Event;
import sopwell.menu.Out;

/** What happens to the list of what is out. */
public sealed interface OutEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        MARKED,
        LIFTED
    }

    /** This event's kind. */
    Kind kind();

    /** What it is about. */
    Out out();

    /**
     * Something can't be sold, or only so many more; replaces an earlier mark on the same.
     *
     * @param left how many may still be sold, 0 for none
     * @param untilMs when it is sold again by itself, milliseconds since 1970-01-01 UTC, or 0 for
     *     not before the day closes
     */
    record OutMarked(Out out, int left, long untilMs) implements OutEvent {
        @Override
        public Kind kind() {
            return Kind.MARKED;
        }
    }

    /**
     * It is sold again.
     *
     * @param byTime whether its time was over, rather than that a person said so
     */
    record OutLifted(Out out, boolean byTime) implements OutEvent {
        @Override
        public Kind kind() {
            return Kind.LIFTED;
        }
    }
}
