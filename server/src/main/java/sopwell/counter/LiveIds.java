package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import sopwell.call.LiveWords;

/** How the word board names its words. Stateless. */
public final class LiveIds {
    private LiveIds() {}

    /**
     * The ids of the words that may come next: {@code i.}, {@code s.}, {@code o.} or {@code b.} and
     * the menu's id; {@code n} for quantities; {@code no}; {@code comma}.
     */
    public static List<String> of(LiveWords live) {
        List<String> ids = new ArrayList<>();
        live.items().forEach(id -> ids.add("i." + id));
        live.sizes().forEach(id -> ids.add("s." + id));
        live.options().forEach(id -> ids.add("o." + id));
        live.bundles().forEach(id -> ids.add("b." + id));
        if (live.quantity()) {
            ids.add("n");
        }
        if (live.no()) {
            ids.add("no");
        }
        if (live.separator()) {
            ids.add("comma");
        }
        return ids;
    }
}
