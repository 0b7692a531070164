package sopwell.records;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/**
 * Reads an owner's old records: {@code lines.csv}, and where they are there {@code days.csv},
 * {@code outs.csv} and {@code weather.csv}; their columns are described in {@code
 * docs/forecast.md}. Not thread-safe.
 */
public final class HistoryFiles {
    /** How wide the bins are that old records are counted in. */
    public static final int BIN_MINUTES = 15;

    private static final int NIGHT_MINUTES = 240;
    private static final int DAY_MINUTES = 1_440;
    private static final int QUANTITY_MAX = 10_000;
    private static final double MILLIONTHS = 1e6;

    /** Weather that needs no word. */
    private static final Set<String> PLAIN =
            Set.of(
                    "",
                    "dry",
                    "clear",
                    "sun",
                    "sunny",
                    "fair",
                    "fine",
                    "cloudy",
                    "clouds",
                    "overcast",
                    "mild",
                    "none",
                    "normal",
                    "ok",
                    "plain",
                    "no");

    private final Path folder;
    private final Map<LocalDate, Map<Sold, Integer>> sold = new TreeMap<>();
    private final Map<LocalDate, List<OutSpan>> outs = new HashMap<>();
    private final Map<LocalDate, Row> days = new TreeMap<>();

    private HistoryFiles(Path folder) {
        this.folder = folder;
    }

    /** What {@code days.csv} says of a day. */
    private record Row(
            Hours hours, String closedReason, List<Occasion> events, List<String> weather) {}

    /**
     * What was read. Immutable.
     *
     * @param coming open days by {@code days.csv}, also those after the last sale
     * @param hasCalendar whether there was a {@code days.csv}
     * @param closedReasons why the stand was closed, by day, where {@code days.csv} says so
     */
    public record Records(
            History history,
            List<PastDay> coming,
            boolean hasCalendar,
            Map<LocalDate, String> closedReasons) {
        public Records {
            coming = List.copyOf(coming);
            closedReasons = Map.copyOf(closedReasons);
        }
    }

    /**
     * Reads a folder.
     *
     * @throws HistoryFault when something in it can't be understood
     */
    public static Records read(Path folder) throws HistoryFault {
        HistoryFiles files = new HistoryFiles(folder);
        files.lines();
        boolean hasDays = Files.exists(folder.resolve("days.csv"));
        if (hasDays) {
            files.days();
        }
        if (Files.exists(folder.resolve("outs.csv"))) {
            files.outs();
        }
        List<Outlook> outlooks =
                Files.exists(folder.resolve("weather.csv")) ? files.weather() : List.of();
        return files.records(outlooks, hasDays);
    }

    private Records records(List<Outlook> outlooks, boolean hasDays) {
        TreeSet<LocalDate> dates = new TreeSet<>(sold.keySet());
        dates.addAll(days.keySet());
        List<PastDay> past = new ArrayList<>();
        List<PastDay> planned = new ArrayList<>();
        Row unknown = new Row(Hours.UNKNOWN, "", List.of(), List.of());
        for (LocalDate date : dates) {
            Row row = days.getOrDefault(date, unknown);
            List<Sold> pieces = new ArrayList<>();
            sold.getOrDefault(date, Map.of()).forEach((kind, n) -> pieces.add(with(kind, n)));
            pieces.sort(Sold.ORDER);
            boolean open = !pieces.isEmpty();
            PastDay day =
                    new PastDay(
                            date,
                            open,
                            row.hours(),
                            pieces,
                            outs.getOrDefault(date, List.of()),
                            row.events(),
                            row.weather());
            past.add(day);
            if (open || (row.closedReason().isEmpty() && row.hours().isKnown())) {
                planned.add(day);
            }
        }
        Map<LocalDate, String> reasons = new TreeMap<>();
        days.forEach((date, row) -> reasons.put(date, row.closedReason()));
        reasons.values().removeIf(String::isEmpty);
        return new Records(new History(BIN_MINUTES, past, outlooks), planned, hasDays, reasons);
    }

    private static Sold with(Sold kind, int pieces) {
        return new Sold(kind.bin(), kind.item(), kind.size(), kind.modifiers(), pieces);
    }

    private void lines() throws HistoryFault {
        Path file = folder.resolve("lines.csv");
        if (!Files.exists(file)) {
            throw new HistoryFault(
                    file,
                    0,
                    "",
                    "is not in "
                            + folder
                            + "; it must be there with the columns"
                            + " business_date, local_time, item, size, modifiers, quantity.");
        }
        HistoryTable table = HistoryTable.read(file, List.of("business_date", "item"));
        for (HistoryTable.Row row : table.rows()) {
            LocalDate date = row.date("business_date");
            int minutes = night(row.minutes("local_time", 12 * 60));
            String item = row.needed("item", "it must name what was sold.");
            TreeSet<String> modifiers = new TreeSet<>();
            for (String modifier : row.text("modifiers").split("\\|", -1)) {
                if (!modifier.isBlank()) {
                    modifiers.add(modifier.strip());
                }
            }
            int quantity = quantity(row);
            Sold kind =
                    new Sold(
                            minutes / BIN_MINUTES,
                            item,
                            row.text("size"),
                            List.copyOf(modifiers),
                            0);
            if (quantity != 0) {
                sold.computeIfAbsent(date, d -> new HashMap<>())
                        .merge(kind, quantity, Integer::sum);
            }
        }
        sold.values().forEach(HistoryFiles::takeBack);
        sold.values().removeIf(Map::isEmpty);
    }

    /** What is taken back was sold in the same bin or in the next before it that sold any. */
    private static void takeBack(Map<Sold, Integer> day) {
        List<Sold> back = new ArrayList<>(day.keySet());
        back.removeIf(kind -> day.get(kind) >= 0);
        back.sort(Sold.ORDER);
        for (Sold kind : back) {
            int left = -day.get(kind);
            for (int bin = kind.bin() - 1; bin >= 0 && left > 0; bin--) {
                Sold sold = new Sold(bin, kind.item(), kind.size(), kind.modifiers(), 0);
                int taken = Math.min(left, Math.max(0, day.getOrDefault(sold, 0)));
                day.computeIfPresent(sold, (k, pieces) -> pieces - taken);
                left -= taken;
            }
        }
        day.values().removeIf(n -> n <= 0);
    }

    private static int quantity(HistoryTable.Row row) throws HistoryFault {
        String text = row.text("quantity");
        if (text.isEmpty()) {
            return 1;
        }
        try {
            double quantity = Double.parseDouble(text);
            if (quantity == Math.rint(quantity) && Math.abs(quantity) <= QUANTITY_MAX) {
                return (int) quantity;
            }
        } catch (NumberFormatException wrong) {
            throw row.fault("quantity", notWhole(text));
        }
        throw row.fault("quantity", notWhole(text));
    }

    private static String notWhole(String text) {
        return "\""
                + text
                + "\" is no quantity; it must be a whole number such as 2, and negative"
                + " for what was taken back.";
    }

    /** What is sold before four in the morning belongs to the night of the day before. */
    private static int night(int minutes) {
        return minutes < NIGHT_MINUTES ? minutes + DAY_MINUTES : minutes;
    }

    private void days() throws HistoryFault {
        HistoryTable table =
                HistoryTable.read(folder.resolve("days.csv"), List.of("business_date"));
        for (HistoryTable.Row row : table.rows()) {
            LocalDate date = row.date("business_date");
            int open = row.minutes("open", -1);
            int close = row.minutes("close", -1);
            close = close >= 0 && close <= open ? close + DAY_MINUTES : close;
            if ((open < 0) != (close < 0)) {
                throw row.fault(
                        open < 0 ? "open" : "close",
                        "is empty; a day has both times, or neither when the stand was closed.");
            }
            if (close > History.DAY_MINUTES) {
                throw row.fault("close", "lies after noon of the next day; it must be before.");
            }
            Hours hours = open < 0 ? Hours.UNKNOWN : new Hours(open, close);
            Row said = new Row(hours, row.text("closed_reason"), events(row), weather(row));
            if (days.put(date, said) != null) {
                throw row.fault("business_date", date + " stands twice; each day has one line.");
            }
        }
    }

    private static List<Occasion> events(HistoryTable.Row row) {
        List<Occasion> events = new ArrayList<>();
        for (String event : row.text("events").split("\\|", -1)) {
            if (!event.isBlank()) {
                events.add(Occasion.read(event));
            }
        }
        return events;
    }

    private static List<String> weather(HistoryTable.Row row) {
        List<String> kinds = new ArrayList<>();
        for (String kind : row.text("weather").split("\\|", -1)) {
            if (!PLAIN.contains(kind(kind))) {
                kinds.add(kind(kind));
            }
        }
        return kinds;
    }

    private static String kind(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private void outs() throws HistoryFault {
        HistoryTable table =
                HistoryTable.read(folder.resolve("outs.csv"), List.of("business_date", "what"));
        for (HistoryTable.Row row : table.rows()) {
            LocalDate date = row.date("business_date");
            String what = row.needed("what", "it must name what was out.");
            int from = row.minutes("from", OutSpan.UNKNOWN);
            from = from == OutSpan.UNKNOWN ? from : night(from);
            int to = row.minutes("to", History.DAY_MINUTES);
            to = to < from ? to + DAY_MINUTES : to;
            outs.computeIfAbsent(date, d -> new ArrayList<>())
                    .add(new OutSpan(what, from, Math.min(History.DAY_MINUTES, to)));
        }
    }

    private List<Outlook> weather() throws HistoryFault {
        HistoryTable table =
                HistoryTable.read(
                        folder.resolve("weather.csv"),
                        List.of("issued", "business_date", "kind", "probability"));
        List<Outlook> outlooks = new ArrayList<>();
        for (HistoryTable.Row row : table.rows()) {
            outlooks.add(
                    new Outlook(
                            row.date("issued"),
                            row.date("business_date"),
                            kind(row.text("kind")),
                            probability(row)));
        }
        return outlooks;
    }

    private static double probability(HistoryTable.Row row) throws HistoryFault {
        String text = row.text("probability");
        try {
            boolean percent = text.endsWith("%");
            String digits = percent ? text.substring(0, text.length() - 1).strip() : text;
            double value = Double.parseDouble(digits.replace(',', '.')) / (percent ? 100 : 1);
            if (value >= 0 && value <= 1) {
                // As it is kept, so that the same file read again is the same.
                return Math.rint(value * MILLIONTHS) / MILLIONTHS;
            }
        } catch (NumberFormatException wrong) {
            throw row.fault("probability", notChance(text));
        }
        throw row.fault("probability", notChance(text));
    }

    private static String notChance(String text) {
        return "\"" + text + "\" is no probability; it must be from 0 to 1, such as 0.35.";
    }
}
