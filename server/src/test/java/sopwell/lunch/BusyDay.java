package sopwell.lunch;

import java.util.ArrayList;
import java.util.List;
import sopwell.log.Entry;
import sopwell.log.EventLog;
import sopwell.log.Recorded;

/** Days through the stand's own rules, for whoever looks at days that are over. Stateless. */
public final class BusyDay {
    private BusyDay() {}

    /**
     * Everything that happened on days one after the other, from a Wednesday on.
     *
     * @param perHour orders an hour, at the full hours
     * @param lineHands people on the line
     * @param startTaps the share of parts whose start is tapped
     */
    public static List<Recorded> events(
            List<Integer> perHour, int lineHands, double startTaps, long seed, int days) {
        Truth truth =
                new Truth(
                        perHour,
                        60,
                        lineHands,
                        1.3,
                        startTaps,
                        0.01,
                        Truth.Work.LOG_NORMAL,
                        4,
                        "",
                        List.of());
        Season season = new Season(truth, false);
        for (int day = 0; day < days; day++) {
            season.next(seed + day, lunch -> {});
        }
        return menuFirst(season.script().log());
    }

    /** The menu is adopted before the first guest comes, as in any log. */
    private static List<Recorded> menuFirst(List<Recorded> events) {
        List<Recorded> all = new ArrayList<>(events);
        Recorded menu = all.get(0);
        all.set(0, new Recorded(1, all.get(1).atMs(), menu.key(), 0, menu.event()));
        return all;
    }

    /** About five hundred orders between eleven and seven, with a hard lunch. */
    public static List<Recorded> ofFiveHundred(long seed) {
        return events(List.of(40, 110, 120, 70, 40, 30, 40, 45, 20), 3, 0.9, seed, 1);
    }

    /** Puts events into an empty log. */
    public static void into(EventLog log, List<Recorded> events) {
        List<Entry> entries = new ArrayList<>();
        for (Recorded one : events) {
            entries.add(new Entry(one.atMs(), one.key(), "", List.of(one.event())));
        }
        log.append(entries);
    }
}
