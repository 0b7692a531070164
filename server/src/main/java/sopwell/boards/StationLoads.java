package sopwell.boards;

import java.util.List;
import java.util.Map;
import sopwell.kitchen.PartId;
import sopwell.menu.LocalText;

/**
 * What a station that makes several pieces in one go has under way and takes on next. Immutable.
 *
 * @param capacity how many pieces fit into one load
 * @param loads what is under way, the one that comes up first in front, then what is to be begun,
 *     in that order
 * @param more loads after these
 * @param feeds parts in sight that go on to another station rather than to the guest, and its name
 */
public record StationLoads(int capacity, List<Load> loads, int more, Map<PartId, LocalText> feeds) {
    public StationLoads {
        loads = List.copyOf(loads);
        feeds = Map.copyOf(feeds);
    }

    /**
     * One load.
     *
     * @param started whether it is under way
     * @param startByMs when it is to be begun, or was, milliseconds since 1970-01-01 UTC
     * @param upAtMs when it is to come up; kept as it was when it was begun
     * @param counts what is in it, by what it is
     * @param shares whose it is, oldest order first
     */
    public record Load(
            boolean started, long startByMs, long upAtMs, List<Count> counts, List<Share> shares) {
        public Load {
            counts = List.copyOf(counts);
            shares = List.copyOf(shares);
        }

        /** How many pieces are in it. */
        public int pieces() {
            return counts.stream().mapToInt(Count::pieces).sum();
        }

        /**
         * The parts that are moved with the load: not those that another load still has more of.
         */
        public List<PartId> moved() {
            return shares.stream().filter(Share::last).map(Share::part).toList();
        }
    }

    /** So many alike in one load. */
    public record Count(LocalText item, int pieces) {}

    /**
     * One order's share of a load.
     *
     * @param number the order's number
     * @param pieces how many of the part's pieces
     * @param feeds the station that it goes on to, by name; empty texts when it goes to the guest
     * @param last whether no later load has more of the part
     */
    public record Share(PartId part, int number, int pieces, LocalText feeds, boolean last) {}
}
