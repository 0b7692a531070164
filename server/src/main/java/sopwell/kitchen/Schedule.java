package sopwell.kitchen;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import sopwell.menu.Menu;

/**
 * What is to be begun when, as seen at one moment, and when it is expected to be up. Made anew
 * whenever it is asked for; made twice from the same kitchen at the same time, it is the same.
 * Immutable.
 *
 * <p>All times are milliseconds since 1970-01-01 UTC. They move a little with every tap at a
 * station; what is shown to people goes through a {@link Settler} first.
 */
public final class Schedule {
    private final Map<PartId, Slot> slots;
    private final Map<String, List<Load>> loads;
    private final Map<String, Long> wholeAtMs;

    Schedule(Map<PartId, Slot> slots, Map<String, List<Load>> loads, Map<String, Long> wholeAtMs) {
        this.slots = slots;
        this.loads = loads;
        this.wholeAtMs = wholeAtMs;
    }

    /**
     * When one part is to be begun and up.
     *
     * @param startByMs when it is to be begun so that nothing waits for it and it waits for nothing
     *     longer than it must; never before now; when it was begun, if it was
     * @param upAtMs when it is expected to be up
     */
    public record Slot(PartId part, long startByMs, long upAtMs) {}

    /**
     * What one hand or machine of a station takes on in one go.
     *
     * @param started whether its work has begun
     * @param shares what is in it, oldest order first; at a station whose load is 1 there is one
     *     share, of as many pieces as one hand makes one behind the other
     */
    public record Load(
            String station, long startByMs, long upAtMs, boolean started, List<Share> shares) {
        public Load {
            shares = List.copyOf(shares);
        }

        /** How many pieces are in it. */
        public int pieces() {
            int pieces = 0;
            for (Share share : shares) {
                pieces += share.pieces();
            }
            return pieces;
        }
    }

    /**
     * A part's share of a load.
     *
     * @param pieces how many of the part's pieces; fewer than the part has if it takes several
     *     loads
     */
    public record Share(PartId part, int pieces) {}

    /**
     * The schedule of everything that is open.
     *
     * @param menu the menu in force, whose stations do the work
     */
    public static Schedule of(Kitchen kitchen, Menu menu, long nowMs) {
        return Planner.schedule(kitchen, menu, nowMs);
    }

    /** The slot of a part that is neither up nor cancelled. */
    public Optional<Slot> slot(PartId part) {
        return Optional.ofNullable(slots.get(part));
    }

    /**
     * What a station takes on, in the order in which it is to be begun; what has begun is first.
     */
    public List<Load> loads(String station) {
        return loads.getOrDefault(station, List.of());
    }

    /** When an order that is not whole is expected to be whole. */
    public OptionalLong wholeAtMs(String order) {
        Long atMs = wholeAtMs.get(order);
        return atMs == null ? OptionalLong.empty() : OptionalLong.of(atMs);
    }

    /** Gathers what a planner decides. Not thread-safe. */
    static final class Builder {
        private final Map<PartId, Slot> slots = new HashMap<>();
        private final Map<String, List<Load>> loads = new HashMap<>();
        private final Map<String, Long> wholeAtMs = new HashMap<>();

        void slot(Slot slot) {
            slots.put(slot.part(), slot);
            wholeAtMs.merge(slot.part().order(), slot.upAtMs(), Math::max);
        }

        void loads(String station, List<Load> ofStation) {
            loads.put(station, List.copyOf(ofStation));
        }

        Schedule done() {
            return new Schedule(slots, loads, wholeAtMs);
        }
    }
}
