package sopwell.boards;

import java.util.List;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartState;
import sopwell.menu.Menu;
import sopwell.menu.Pan;
import sopwell.menu.Station;
import sopwell.stock.PanLeft;
import sopwell.stock.Pans;

/** Draws up what is left in pans. Stateless. */
public final class PanRows {
    private PanRows() {}

    /** Every pan of the menu in force, in its order. */
    public static List<PanLeft> all(Menu menu, Kitchen kitchen, Pans pans, long nowMs) {
        return menu.pans().stream()
                .map(pan -> PanLeft.of(pan, pans, promised(pan, kitchen), nowMs))
                .toList();
    }

    /** The pans of one station. */
    static List<PanLeft> of(Station station, Scene scene) {
        return all(scene.menu(), scene.kitchen(), scene.pans(), scene.nowMs()).stream()
                .filter(left -> left.pan().station().equals(station.id()))
                .toList();
    }

    /** What the open parts at a pan's station still take from it, in its unit. */
    private static long promised(Pan pan, Kitchen kitchen) {
        long promised = 0;
        for (Part part : kitchen.inSight(pan.station())) {
            if (!part.cancelled() && part.state() != PartState.UP) {
                long each = pan.amount(part.making().selection());
                promised += each * part.pieces();
            }
        }
        return promised;
    }
}
