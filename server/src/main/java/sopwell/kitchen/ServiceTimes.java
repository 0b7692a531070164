package sopwell.kitchen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.kitchen.PaceEvent.Learned;
import sopwell.menu.Selection;

/**
 * How long work really takes here, against the menu's figures: a factor for each station and, on
 * top of it, one for each kind of part there (item and size). Learned from what was begun and put
 * up by a tap each. Not thread-safe: its owner is one thread.
 *
 * <p>Factors live as logarithms, where half and double weigh alike. Each time learned moves its
 * factor by a share of its surprise: a large share at first, when the menu's figure is all there is
 * (it counts as five parts), a fortieth in the end, so that about the last forty of a kind decide.
 * A surprise counts for no more than half in logarithms, so that one forgotten tap moves little,
 * and nothing at all beyond six times too long or too short: forty minutes for a sandwich teach
 * nothing. (Huber 1964 for the clipped surprise; the growing denominator is that of a running
 * mean.)
 */
final class ServiceTimes {
    private static final int PRIOR_PARTS = 5;
    private static final int RECENT_PARTS = 40;
    private static final double SURPRISE_MAX = 0.5;
    private static final double BELIEVED_MAX = StrictMath.log(6);

    /** The variance of logarithms before any is known: times vary by about three tenths. */
    private static final double PRIOR_VARIANCE = 0.09;

    private final Map<String, Cell> stations = new HashMap<>();
    private final Map<Kind, Cell> kinds = new HashMap<>();

    /** A kind of part. */
    private record Kind(String station, String item, String size) {}

    /** What is known of one station or kind. */
    private static final class Cell {
        private double log;
        private double variance = PRIOR_VARIANCE;
        private int parts;
        private double factor = 1;

        void set(double newLog, double newVariance, int newParts) {
            log = newLog;
            variance = newVariance;
            parts = newParts;
            factor = StrictMath.exp(log);
        }

        double share() {
            return 1.0 / (PRIOR_PARTS + Math.min(parts + 1, RECENT_PARTS - PRIOR_PARTS));
        }

        void learn(double surprise) {
            double share = share();
            double newVariance = variance + share * (surprise * surprise - variance);
            set(log + share * surprise, newVariance, parts + 1);
        }

        /** A mean is above the middle of times that are skewed; log-normal ones by this much. */
        double meanOverMiddle() {
            return 1 + variance / 2;
        }
    }

    /** How long one piece of some work, or one load of it, is expected to take one hand. */
    long pieceMs(Work work) {
        double ms = 1000.0 * work.menuSeconds();
        Cell station = stations.get(work.part().id().station());
        if (station == null) {
            return Math.round(ms);
        }
        Cell kind = kinds.get(kind(work));
        double factor = station.factor * (kind == null ? 1 : kind.factor);
        return Math.max(1, Math.round(ms * factor * station.meanOverMiddle()));
    }

    /** One piece, or one load, took so long from its start to its up. */
    void learn(Work work, long tookMs) {
        if (tookMs <= 0 || work.menuSeconds() == 0) {
            return;
        }
        String id = work.part().id().station();
        Cell station = stations.get(id);
        Cell kind = kinds.get(kind(work));
        double known = (station == null ? 0 : station.log) + (kind == null ? 0 : kind.log);
        double surprise = StrictMath.log(tookMs / (1000.0 * work.menuSeconds())) - known;
        if (Math.abs(surprise) > BELIEVED_MAX) {
            return;
        }
        double clipped = Math.max(-SURPRISE_MAX, Math.min(SURPRISE_MAX, surprise));
        stations.computeIfAbsent(id, i -> new Cell()).learn(clipped);
        kinds.computeIfAbsent(kind(work), k -> new Cell()).learn(clipped);
    }

    List<Learned> carried() {
        List<Learned> all = new ArrayList<>();
        stations.forEach((id, cell) -> all.add(learned(new Kind(id, "", ""), cell)));
        kinds.forEach((kind, cell) -> all.add(learned(kind, cell)));
        all.sort(
                Comparator.comparing(Learned::station)
                        .thenComparing(Learned::item)
                        .thenComparing(Learned::size));
        return all;
    }

    void restore(List<Learned> learned) {
        stations.clear();
        kinds.clear();
        for (Learned one : learned) {
            Cell cell = new Cell();
            cell.set(one.logMillionths() / 1e6, one.varianceMillionths() / 1e6, one.parts());
            if (one.item().isEmpty()) {
                stations.put(one.station(), cell);
            } else {
                kinds.put(new Kind(one.station(), one.item(), one.size()), cell);
            }
        }
    }

    private static Learned learned(Kind kind, Cell cell) {
        return new Learned(
                kind.station(),
                kind.item(),
                kind.size(),
                Math.min(cell.parts, RECENT_PARTS),
                Math.round(cell.log * 1e6),
                Math.round(cell.variance * 1e6));
    }

    private static Kind kind(Work work) {
        Selection selection = work.part().making().selection();
        return new Kind(work.part().id().station(), selection.item(), selection.size());
    }
}
