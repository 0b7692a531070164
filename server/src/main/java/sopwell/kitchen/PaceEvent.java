package sopwell.kitchen;

import java.util.List;
import sopwell.log.Event;

/** What a stand has learned about its own pace. */
public sealed interface PaceEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        CARRIED
    }

    /** This event's kind. */
    Kind kind();

    /**
     * What was learned before goes on into a day that has just opened, in place of what is known:
     * whoever reads the log from this day on knows as much as who was there all the time.
     *
     * @param learned service times, by station, item and size
     */
    record PaceCarried(List<Learned> learned, Quoting quoting) implements PaceEvent {
        public PaceCarried {
            learned = List.copyOf(learned);
        }

        @Override
        public Kind kind() {
            return Kind.CARRIED;
        }

        /** Whether it says nothing that a new stand does not know. */
        public boolean isNothing() {
            return learned.isEmpty() && quoting.orders() == 0;
        }
    }

    /**
     * How long work takes against the menu's figures.
     *
     * @param item the item, or empty for the station as a whole
     * @param size the size, or empty
     * @param parts how many taught it; forty stand for as many or more
     * @param logMillionths the natural logarithm of the factor, in millionths; a kind's comes on
     *     top of its station's
     * @param varianceMillionths the variance of such logarithms, in millionths
     */
    record Learned(
            String station,
            String item,
            String size,
            int parts,
            long logMillionths,
            long varianceMillionths) {}

    /**
     * How quotes did.
     *
     * @param orders how many taught it, so many or more
     * @param lagMs how long a whole order stays on the pass
     * @param belowMillionths how far below the expected wait a range begins, in millionths of its
     *     unit of uncertainty
     * @param aboveMillionths how far above it the range ends
     */
    record Quoting(int orders, long lagMs, long belowMillionths, long aboveMillionths) {}
}
