package sopwell.kitchen;

import java.util.List;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Selection;

/**
 * What an open part asks of its station, looked up once. Immutable.
 *
 * @param menuSeconds how long one piece takes one hand, or one load, by the menu's figures
 * @param waitsFor the stations whose parts of the same line must be up first
 * @param shortLived whether its item is soon no longer good once up
 */
record Work(Part part, int menuSeconds, List<PartId> waitsFor, boolean shortLived) {
    static Work of(Part part, Menu menu) {
        Selection selection = part.making().selection();
        PartId id = part.id();
        Item item = menu.item(selection.item());
        return new Work(
                part,
                Router.seconds(menu, selection, id.station()),
                Router.waitsFor(menu, selection, id.station()).stream()
                        .map(other -> new PartId(id.order(), id.line(), other))
                        .toList(),
                item.isShortLived() && !Router.feedsAnother(menu, selection, id.station()));
    }

    /** The same work on a part that got further. */
    Work now(Part further) {
        return new Work(further, menuSeconds, waitsFor, shortLived);
    }

    int pieces() {
        return part.pieces();
    }

    boolean isStarted() {
        return part.state() == PartState.STARTED;
    }

    /** What it would take one hand alone, in seconds, by the menu's figures. */
    long menuSecondsInAll() {
        return (long) menuSeconds * pieces();
    }
}
