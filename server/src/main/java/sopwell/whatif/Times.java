package sopwell.whatif;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.kitchen.PaceEvent.Learned;
import sopwell.menu.Selection;

/** What a stand knew of how long its work takes, against the menu's figures. Not changed. */
final class Times {
    /** Beyond so many times too long or too short, a time is a forgotten tap. */
    private static final double BELIEVED_MAX = 6;

    /** The spread of logarithms before any is known: times vary by about three tenths. */
    private static final double SPREAD_USUAL = 0.3;

    private static final double MILLION = 1e6;

    private final Map<Kind, Learned> known = new HashMap<>();

    private record Kind(String station, String item, String size) {}

    Times(List<Learned> learned) {
        for (Learned one : learned) {
            known.put(new Kind(one.station(), one.item(), one.size()), one);
        }
    }

    /** The middle of the times of one piece, or one load. */
    double pieceMs(String station, Selection selection, int menuSeconds) {
        double log = log(new Kind(station, "", ""));
        log += log(new Kind(station, selection.item(), selection.size()));
        return Math.max(1, 1000.0 * menuSeconds * Math.exp(log));
    }

    /** The standard deviation of the logarithms of a station's times. */
    double spread(String station) {
        Learned learned = known.get(new Kind(station, "", ""));
        return learned == null ? SPREAD_USUAL : Math.sqrt(learned.varianceMillionths() / MILLION);
    }

    static boolean isBelieved(double tookMs, double knownMs) {
        return tookMs < knownMs * BELIEVED_MAX && knownMs < tookMs * BELIEVED_MAX;
    }

    private double log(Kind kind) {
        Learned learned = known.get(kind);
        return learned == null ? 0 : learned.logMillionths() / MILLION;
    }
}
