package sopwell.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import sopwell.Limits;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent.MenuAdopted;

/** Finds the menu of any revision that was ever in force. Thread-safe. */
public final class MenuShelf {
    private final EventLog log;
    private final Map<String, Menu> menus = new ConcurrentHashMap<>();
    private volatile List<Menu> named = List.of();
    private volatile int namedUpTo;

    /** A shelf over a log. */
    public MenuShelf(EventLog log) {
        this.log = log;
    }

    /** The menu of a revision; reads the log only when it was not asked for before. */
    public Optional<Menu> menu(String revision) {
        Menu known = menus.get(revision);
        if (known != null) {
            return Optional.of(known);
        }
        List<Long> places = log.placesOf(MenuAdopted.class);
        for (int i = places.size() - 1; i >= 0 && !menus.containsKey(revision); i--) {
            log.read(places.get(i), places.get(i), this::put);
        }
        return Optional.ofNullable(menus.get(revision));
    }

    /** The last menus that were adopted, the newest first; at most so many as are remembered. */
    public List<Menu> newestFirst() {
        List<Long> places = log.placesOf(MenuAdopted.class);
        int last = places.size();
        int first = Math.max(0, last - Limits.MENUS_NAMED_MAX);
        if (named.size() != last - first || namedUpTo != last) {
            readNamed(places.subList(first, last), last);
        }
        return named;
    }

    private synchronized void readNamed(List<Long> places, int last) {
        List<Menu> read = new ArrayList<>();
        for (long place : places) {
            log.read(place, place, r -> read.add(0, ((MenuAdopted) r.event()).menu()));
        }
        named = List.copyOf(read);
        namedUpTo = last;
    }

    private void put(Recorded recorded) {
        Menu menu = ((MenuAdopted) recorded.event()).menu();
        menus.put(menu.revision(), menu);
    }
}
