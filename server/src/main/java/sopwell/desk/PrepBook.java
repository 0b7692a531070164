package sopwell.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;
import sopwell.log.EventLog;
import sopwell.orders.StandSettings;
import sopwell.prep.past.DayPrep;
import sopwell.prep.past.DayReading;

/**
 * What past days planned and made, read from the log and remembered: days that another has followed
 * never change. Thread-safe; reads on the thread that asks.
 */
public final class PrepBook {
    private final EventLog log;
    private final StandSettings settings;
    private final Map<LocalDate, DayPrep> known =
            Collections.synchronizedMap(
                    new LinkedHashMap<>() {
                        private static final long serialVersionUID = 1L;

                        @Override
                        protected boolean removeEldestEntry(Map.Entry<LocalDate, DayPrep> eldest) {
                            return size() > 2 * Limits.PREP_PAST_DAYS_MAX;
                        }
                    });

    public PrepBook(EventLog log, StandSettings settings) {
        this.log = log;
        this.settings = settings;
    }

    /** The business days between two dates, both included, oldest first; of the newest so far. */
    public List<DayPrep> days(LocalDate from, LocalDate to) {
        List<LocalDate> dates = Replay.dates(log, from, LocalDate.MAX);
        List<DayPrep> days = new ArrayList<>();
        for (int i = 0; i < dates.size() && !dates.get(i).isAfter(to); i++) {
            LocalDate date = dates.get(i);
            DayPrep day = known.get(date);
            if (day == null) {
                day = read(date);
                if (i + 1 < dates.size()) {
                    known.put(date, day);
                }
            }
            days.add(day);
        }
        return days;
    }

    private DayPrep read(LocalDate date) {
        DayReading reading = new DayReading();
        Optional<Stand> stand = Replay.day(log, settings, date, reading::take);
        return reading.of(date, stand.orElseThrow().larder());
    }
}
