package sopwell.web.live;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * The connected screens, by the board that each looks at and by when its turn is for signs of life:
 * a change walks over the screens of its own board alone, and thousands of signs of life don't
 * leave at the same moment, in front of a frame. Thread-safe.
 */
final class Audience {
    /** So many turns make a round; each screen has one of them. */
    static final int TURNS = 50;

    private final Map<Outlet, Screen> all = new ConcurrentHashMap<>();
    private final Map<String, Set<Screen>> byBoard = new ConcurrentHashMap<>();
    private final List<Set<Screen>> byTurn =
            IntStream.range(0, TURNS).mapToObj(turn -> newSet()).toList();

    /** Puts a screen on the list. */
    synchronized void add(Screen screen) {
        all.put(screen.outlet(), screen);
        byBoard.computeIfAbsent(screen.board(), board -> newSet()).add(screen);
        turnOf(screen).add(screen);
    }

    /** Takes a screen off the list, if it is on it. */
    synchronized void remove(Outlet outlet) {
        Screen screen = all.remove(outlet);
        if (screen != null) {
            byBoard.get(screen.board()).remove(screen);
            turnOf(screen).remove(screen);
        }
    }

    Optional<Screen> find(Outlet outlet) {
        return Optional.ofNullable(all.get(outlet));
    }

    /** Everyone. */
    Collection<Screen> all() {
        return all.values();
    }

    /** The boards that somebody looks at. */
    Set<String> boards() {
        Set<String> watched = new TreeSet<>();
        byBoard.forEach(
                (board, screens) -> {
                    if (!screens.isEmpty()) {
                        watched.add(board);
                    }
                });
        return watched;
    }

    /** How many screens look at each board that was ever looked at. */
    Map<String, Integer> sizes() {
        Map<String, Integer> sizes = new TreeMap<>();
        byBoard.forEach((board, screens) -> sizes.put(board, screens.size()));
        return sizes;
    }

    /** The screens that look at a board. */
    Collection<Screen> of(String board) {
        return byBoard.getOrDefault(board, Set.of());
    }

    /**
     * The screens whose turn it is.
     *
     * @param turn from 0; the round begins anew after {@value #TURNS}
     */
    Collection<Screen> turn(long turn) {
        return byTurn.get((int) (turn % TURNS));
    }

    int size() {
        return all.size();
    }

    private Set<Screen> turnOf(Screen screen) {
        return byTurn.get(Math.floorMod(screen.outlet().id().hashCode(), TURNS));
    }

    private static Set<Screen> newSet() {
        return ConcurrentHashMap.newKeySet();
    }
}
