package sopwell.web.pages;

import java.time.ZoneId;
import java.util.List;
import sopwell.boards.StationBoard;
import sopwell.stock.PanLeft;
import sopwell.web.T;

/**
 * What a station keeps hot, in one language. Immutable.
 *
 * @param zone the stand's, for times of day
 */
public record PanView(T t, ZoneId zone, StationBoard board) {
    public List<PanLeft> pans() {
        return board.pans();
    }

    /** For how many more it lasts. */
    public String lasts(PanLeft pan) {
        return t.of("pan.lasts", pan.builds());
    }

    /** Until when the next batch must be put on, or that nothing tells. */
    public String by(PanLeft pan) {
        if (!pan.isKnown()) {
            return t.get("pan.unknown");
        }
        if (pan.startByMs() == 0) {
            return pan.builds() == 0 ? t.get("pan.now") : "";
        }
        String key = pan.pan().reheatMinutes() == 0 ? "pan.refill.by" : "pan.by";
        return t.of(key, t.time(pan.startByMs(), zone));
    }

    /** Whether nothing is left for another piece. */
    public boolean isEmpty(PanLeft pan) {
        return pan.isKnown() && pan.builds() == 0;
    }

    /** What is said once that time has come. */
    public String now(PanLeft pan) {
        return t.get(pan.pan().reheatMinutes() == 0 ? "pan.refill.now" : "pan.now");
    }

    /** What is in it, for whoever looks closer. */
    public String detail(PanLeft pan) {
        return t.of(
                "pan.detail",
                t.local(pan.pan().name()),
                pan.left(),
                t.local(pan.pan().unit()),
                pan.promised());
    }

    /** Where a press is sent. */
    public String address(PanLeft pan) {
        return "/boards/" + board.station() + "/pans/" + pan.pan().id() + "/refilled";
    }
}
