package sopwell.net;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

/** What cuts of one kind came to, in milliseconds. Not thread-safe. */
final class Tally {
    /** A cut so short need not show: nothing may be said to be old before this. */
    private static final int SHOWS_MILLIS = 5_000;

    private final List<Long> stale = new ArrayList<>();
    private final List<Long> back = new ArrayList<>();
    private final List<Long> pageStale = new ArrayList<>();
    private final List<Long> pageBack = new ArrayList<>();
    private int missed;
    private int twice;
    private int liveWhileCut;
    private String difference = "";

    /** When a screen said that it is old; -1 for not at all. */
    void stale(LinkScreen screen, long millis, long cutMillis) {
        if (millis >= 0) {
            stale.add(millis);
        } else if (cutMillis > SHOWS_MILLIS) {
            liveWhileCut++;
            difference = screen.board() + " went on as live";
        }
    }

    void back(long millis) {
        back.add(millis);
    }

    void pageStale(long millis, long cutMillis) {
        if (millis >= 0) {
            pageStale.add(millis);
        } else if (cutMillis > SHOWS_MILLIS) {
            liveWhileCut++;
            difference = "a page went on as live";
        }
    }

    void pageBack(long millis) {
        pageBack.add(millis);
    }

    void compare(List<String> wanted, List<String> shown) {
        List<String> absent = new ArrayList<>(wanted);
        absent.removeAll(shown);
        missed += absent.size();
        twice += shown.size() - new HashSet<>(shown).size();
        if (!wanted.equals(shown)) {
            missed += absent.isEmpty() ? 1 : 0;
            difference = "shown " + shown + " of " + wanted;
        }
    }

    /** What a page says differs: empty for nothing. */
    void comparePage(String differences) {
        if (!differences.isEmpty()) {
            missed++;
            difference = differences;
        }
    }

    int missed() {
        return missed;
    }

    int twice() {
        return twice;
    }

    int liveWhileCut() {
        return liveWhileCut;
    }

    /** The slowest that anything was, of all that this counts. */
    long worstBack() {
        return Math.max(at(back, 100), at(pageBack, 100));
    }

    long worstStale() {
        return Math.max(at(stale, 100), at(pageStale, 100));
    }

    String difference() {
        return difference;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "back: screens %s, browser %s; stale after: screens %s, browser %s;"
                        + " missed %d, twice %d, live while cut %d %s",
                figures(back),
                figures(pageBack),
                figures(stale),
                figures(pageStale),
                missed,
                twice,
                liveWhileCut,
                difference);
    }

    private static String figures(List<Long> of) {
        return of.isEmpty()
                ? "-"
                : String.format(
                        Locale.ROOT,
                        "p50 %d p99 %d max %d ms (%d)",
                        at(of, 50),
                        at(of, 99),
                        at(of, 100),
                        of.size());
    }

    private static long at(List<Long> of, int percent) {
        if (of.isEmpty()) {
            return 0;
        }
        List<Long> sorted = of.stream().sorted().toList();
        return sorted.get(Math.min(sorted.size() - 1, sorted.size() * percent / 100));
    }
}
