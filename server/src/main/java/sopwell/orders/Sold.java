package sopwell.orders;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;
import sopwell.Limits;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;

/**
 * Whether a menu makes exactly this; it may have changed since the call was read. What was found to
 * be sold is remembered, since most guests ask for the same few things. Not thread-safe: its owner
 * is one thread.
 */
public final class Sold implements Predicate<Selection> {
    private final Menu menu;
    private final Set<Selection> known = new HashSet<>();

    /** What this menu sells. */
    public Sold(Menu menu) {
        this.menu = menu;
    }

    @Override
    public boolean test(Selection selection) {
        if (known.contains(selection)) {
            return true;
        }
        Wish wish = Wishes.asked(menu, selection);
        boolean sold =
                Wishes.fault(menu, wish).isEmpty() && Wishes.select(menu, wish).equals(selection);
        if (sold && known.size() < Limits.SELECTIONS_REMEMBERED_MAX) {
            known.add(selection);
        }
        return sold;
    }
}
