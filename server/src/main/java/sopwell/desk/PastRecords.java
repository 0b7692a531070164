package sopwell.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import sopwell.log.EventLog;
import sopwell.prep.HistoryEvent.PastDayKept;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Sold;

/** What the log was given of an owner's old records. Reads the log anew each time; stateless. */
public final class PastRecords {
    private PastRecords() {}

    /** Every day that was kept, by its date; of a day that was kept again the newest. */
    public static NavigableMap<LocalDate, PastDayKept> kept(EventLog log) {
        NavigableMap<LocalDate, PastDayKept> kept = new TreeMap<>();
        List<Long> places = log.placesOf(PastDayKept.class);
        for (int i = 0; i < places.size(); i++) {
            // Days that were taken in together stand together, and are read at once.
            long from = places.get(i);
            while (i + 1 < places.size() && places.get(i + 1) == places.get(i) + 1) {
                i++;
            }
            log.read(
                    from,
                    places.get(i),
                    recorded -> {
                        PastDayKept day = (PastDayKept) recorded.event();
                        kept.put(day.day().date(), day);
                    });
        }
        return kept;
    }

    /**
     * The same as a forecaster learns them.
     *
     * @param binMinutes how long its bins are
     */
    public static History history(EventLog log, int binMinutes) {
        List<PastDay> days = new ArrayList<>();
        List<Outlook> outlooks = new ArrayList<>();
        for (PastDayKept kept : kept(log).values()) {
            days.add(inBins(kept, binMinutes));
            outlooks.addAll(kept.outlooks());
        }
        return new History(binMinutes, days, outlooks);
    }

    private static PastDay inBins(PastDayKept kept, int binMinutes) {
        PastDay day = kept.day();
        if (kept.binMinutes() == binMinutes) {
            return day;
        }
        List<Sold> sold =
                day.sold().stream()
                        .map(
                                one ->
                                        new Sold(
                                                one.bin() * kept.binMinutes() / binMinutes,
                                                one.item(),
                                                one.size(),
                                                one.modifiers(),
                                                one.pieces()))
                        .toList();
        return new PastDay(
                day.date(),
                day.open(),
                day.hours(),
                sold,
                day.outs(),
                day.occasions(),
                day.weather());
    }
}
