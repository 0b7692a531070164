package sopwell.kitchen;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import sopwell.Limits;
import sopwell.kitchen.PaceEvent.PaceCarried;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.orders.Order;

/**
 * What the kitchen has learned about its own pace: how long work takes, how many hands are really
 * at work, and how good its quotes were. Not thread-safe: its owner is one thread.
 */
final class Pace {
    /** So little off a whole number of hands is that number. */
    private static final double NEARLY = 0.1;

    private final OpenWork open;
    private final Hands hands;
    private final ServiceTimes times = new ServiceTimes();
    private final Quoted quoted = new Quoted();
    private final Map<String, HandsAtWork> atWork = new HashMap<>();

    Pace(OpenWork open, Hands hands) {
        this.open = open;
        this.hands = hands;
    }

    ServiceTimes times() {
        return times;
    }

    Quoted quoted() {
        return quoted;
    }

    PaceCarried carried() {
        return new PaceCarried(times.carried(), quoted.carried());
    }

    void apply(PaceCarried carried) {
        times.restore(carried.learned());
        quoted.restore(carried.quoting());
    }

    void begin(LocalDate date) {
        quoted.begin(date);
    }

    void leaveDay() {
        atWork.clear();
    }

    /** Hands were said anew: what was believed of them is void. */
    void handsSet(String station) {
        atWork.remove(station);
    }

    /** How many hands are at work; machines don't walk away, so those are as many as was said. */
    double hands(Station station, long nowMs) {
        HandsAtWork people = atWork.get(station.id());
        if (people == null) {
            return hands.at(station);
        }
        double mean = people.mean(nowMs);
        return Math.abs(mean - Math.rint(mean)) < NEARLY ? Math.rint(mean) : mean;
    }

    /** Parts came, went, or became ready. */
    void worked(Menu menu, long atMs) {
        for (Station station : menu.stations()) {
            if (station.load() == 1) {
                people(station).work(atMs, takeable(station.id()));
            }
        }
    }

    void started(Work work, Menu menu, long atMs) {
        Station station = menu.station(work.part().id().station());
        if (station.load() == 1) {
            people(station).started(work.part().id(), atMs, takeable(station.id()));
        }
    }

    /** A part is up for the first time; {@code work} is as it was before. */
    void up(Work work, Menu menu, long atMs) {
        Station station = menu.station(work.part().id().station());
        boolean single = station.load() == 1;
        if (single) {
            people(station)
                    .up(
                            work.part().id(),
                            work.isStarted(),
                            Math.max(1, times.pieceMs(work) * work.pieces()),
                            atMs,
                            takeable(station.id()));
        }
        if (work.isStarted() && work.pieces() <= (single ? Planner.RUN_PIECES : station.load())) {
            long tookMs = atMs - work.part().startedAtMs();
            times.learn(work, single ? tookMs / work.pieces() : tookMs);
        }
    }

    void gone(PartId part) {
        HandsAtWork people = atWork.get(part.station());
        if (people != null) {
            people.gone(part);
        }
    }

    void handed(Order order, long wholeAtMs) {
        quoted.handed(order, wholeAtMs);
    }

    private int takeable(String station) {
        return open.takeable(station, Limits.STATION_HANDS_MAX + HandsAtWork.MORE_MAX);
    }

    private HandsAtWork people(Station station) {
        HandsAtWork people = atWork.computeIfAbsent(station.id(), id -> new HandsAtWork());
        if (!people.isBegun()) {
            people.begin(hands.at(station));
        }
        return people;
    }
}
