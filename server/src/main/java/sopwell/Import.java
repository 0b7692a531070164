package sopwell;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import sopwell.desk.PastRecords;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.log.Entry;
import sopwell.log.EventLog;
import sopwell.menu.Item;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.StandSettings;
import sopwell.prep.HistoryEvent.PastDayKept;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.records.HistoryFault;
import sopwell.records.HistoryFiles;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;

/** Takes an owner's old records into the log of a stand that does not run. Not thread-safe. */
final class Import {
    private static final int NAMED_MAX = 10;

    private final Config.Import asked;
    private final InstantSource clock;
    private final PrintStream out;

    Import(Config.Import asked, InstantSource clock, PrintStream out) {
        this.asked = asked;
        this.clock = clock;
        this.out = out;
    }

    /**
     * Takes in every day of the records that is not kept yet: all of them or none.
     *
     * @throws StartRefused when the records can't be read or taken, or there is no such stand
     */
    void run() throws StartRefused {
        NavigableMap<LocalDate, PastDayKept> days = read(asked.history);
        Path data = asked.data;
        if (!Files.isDirectory(data)) {
            throw new StartRefused(
                    "There is no folder " + data + ". Name the stand's with --data.");
        }
        try (DataFolder folder = DataFolder.open(data)) {
            if (!folder.hasLog()) {
                throw new StartRefused(
                        "There is no stand in "
                                + data
                                + ". Name its folder with --data; a new stand is started once"
                                + " before it takes in old records.");
            }
            StandSettings settings = StandFolder.settings(folder);
            try (SqliteLog log = folder.openLog(settings.stand())) {
                take(log, settings, days);
            }
        }
    }

    private static NavigableMap<LocalDate, PastDayKept> read(Path folder) throws StartRefused {
        HistoryFiles.Records records;
        try {
            records = HistoryFiles.read(folder);
        } catch (HistoryFault fault) {
            throw new StartRefused(fault.getMessage() + " Nothing was taken in.");
        }
        Map<LocalDate, List<Outlook>> outlooks =
                records.history().outlooks().stream().collect(Collectors.groupingBy(Outlook::date));
        NavigableMap<LocalDate, PastDayKept> days = new TreeMap<>();
        for (PastDay day : records.history().days()) {
            days.put(
                    day.date(),
                    new PastDayKept(
                            records.history().binMinutes(),
                            records.closedReasons().getOrDefault(day.date(), ""),
                            day,
                            outlooks.getOrDefault(day.date(), List.of())));
        }
        if (days.isEmpty()) {
            throw new StartRefused("There is no day in the records of " + folder + ".");
        }
        return days;
    }

    private void take(
            EventLog log, StandSettings settings, NavigableMap<LocalDate, PastDayKept> days)
            throws StartRefused {
        LocalDate today = LocalDate.ofInstant(clock.instant(), settings.zone());
        refuse(
                days.tailMap(today, true).keySet(),
                "These days are not over yet",
                "Leave them out of the records.");
        Set<LocalDate> own = opened(log);
        own.retainAll(days.keySet());
        refuse(
                own,
                "These days the stand has sold itself, and its log knows them better",
                "Leave them out of the records.");
        NavigableMap<LocalDate, PastDayKept> kept = PastRecords.kept(log);
        List<PastDayKept> taken = new ArrayList<>();
        TreeSet<LocalDate> other = new TreeSet<>();
        for (PastDayKept day : days.values()) {
            LocalDate date = day.day().date();
            if (!day.equals(kept.get(date))) {
                taken.add(day);
                if (kept.containsKey(date)) {
                    other.add(date);
                }
            }
        }
        if (!asked.replace) {
            refuse(
                    other,
                    "These days were taken in before with other numbers",
                    "To have the new ones count, say --replace.");
        }
        append(log, taken);
        report(days, taken, other.size());
        unknownItems(log, settings, days.values());
    }

    /**
     * One command a day, all in one transaction; keys hold a space, as no program's may. Times
     * never run backwards in the log, whatever the box's clock does.
     */
    private void append(EventLog log, List<PastDayKept> taken) {
        if (taken.isEmpty()) {
            return;
        }
        List<Long> lastMs = new ArrayList<>(List.of(clock.millis()));
        log.read(log.lastSeq(), log.lastSeq(), recorded -> lastMs.add(recorded.atMs()));
        List<Entry> entries = new ArrayList<>();
        for (PastDayKept day : taken) {
            String key = "past day " + day.day().date() + " " + log.lastSeq();
            entries.add(new Entry(Collections.max(lastMs), key, key, List.of(day)));
        }
        log.append(entries);
    }

    private void report(
            NavigableMap<LocalDate, PastDayKept> days, List<PastDayKept> taken, int replaced) {
        int same = days.size() - taken.size();
        out.println(
                "took in "
                        + taken.size()
                        + " of "
                        + days.size()
                        + " days, "
                        + days.firstKey()
                        + " to "
                        + days.lastKey()
                        + (replaced > 0 ? "; " + replaced + " of them replace others" : "")
                        + (same > 0 ? "; " + same + " were kept already" : ""));
    }

    /** Names that are no items of the menu are taken in all the same, but may be misspelt. */
    private void unknownItems(EventLog log, StandSettings settings, Collection<PastDayKept> days) {
        Stand stand = Replay.before(log, settings, log.lastSeq());
        if (!stand.hasMenu()) {
            return;
        }
        TreeSet<String> names = new TreeSet<>();
        days.forEach(day -> day.day().sold().forEach(sold -> names.add(sold.item())));
        names.removeAll(stand.menu().items().stream().map(Item::id).toList());
        if (!names.isEmpty()) {
            out.println(
                    "not the id of an item on the menu, and kept under these names: "
                            + some(names));
        }
    }

    private static Set<LocalDate> opened(EventLog log) {
        TreeSet<LocalDate> dates = new TreeSet<>();
        for (long place : log.placesOf(DayOpened.class)) {
            log.read(place, place, recorded -> dates.add(((DayOpened) recorded.event()).date()));
        }
        return dates;
    }

    private static void refuse(Collection<LocalDate> dates, String wrong, String right)
            throws StartRefused {
        if (!dates.isEmpty()) {
            String named = some(dates.stream().map(LocalDate::toString).toList());
            throw new StartRefused(wrong + ": " + named + ". " + right + " Nothing was taken in.");
        }
    }

    private static String some(Collection<String> names) {
        String first = names.stream().limit(NAMED_MAX).collect(Collectors.joining(", "));
        int more = names.size() - NAMED_MAX;
        return more > 0 ? first + " and " + more + " more" : first;
    }
}
