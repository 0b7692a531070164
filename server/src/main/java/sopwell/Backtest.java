package sopwell;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.prep.forecast.ComingDay;
import sopwell.prep.forecast.CountMixture;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.forecast.Forecaster;
import sopwell.prep.forecast.Guesses;
import sopwell.prep.forecast.OpenDays;
import sopwell.prep.forecast.PastDay;
import sopwell.records.HistoryFault;
import sopwell.records.HistoryFiles;

/**
 * Forecasts past days from the days before them, and writes what was forecast, so that anybody can
 * judge it. At an origin nothing is read that came later. Not thread-safe.
 */
final class Backtest {
    private static final double[] QUANTILES = {0.5, 0.75, 0.9, 0.95};
    private static final Pattern HORIZONS = Pattern.compile("(\\d{1,2})(?:\\s*-\\s*(\\d{1,2}))?");
    private static final String HEAD = "origin,horizon,date,kind,name,quantile,value,mean\n";

    private final Config.Backtest asked;
    private final PrintStream out;

    Backtest(Config.Backtest asked, PrintStream out) {
        this.asked = asked;
        this.out = out;
    }

    /** From which to which horizon, in open days. */
    private record Horizons(int from, int to) {}

    /**
     * Writes the forecasts.
     *
     * @throws StartRefused when the records can't be read, or what is asked for can't be done
     */
    void run() throws StartRefused {
        Horizons horizons = horizons();
        if (asked.origins < 1) {
            throw new StartRefused("--origins is a number of days from 1.");
        }
        HistoryFiles.Records records;
        try {
            records = HistoryFiles.read(asked.history);
        } catch (HistoryFault fault) {
            throw new StartRefused(fault.getMessage());
        }
        List<PastDay> open = records.history().days().stream().filter(PastDay::open).toList();
        int last = open.size() - horizons.to();
        if (last < 1) {
            throw new StartRefused(
                    "There are "
                            + open.size()
                            + " days with sales; a backtest "
                            + horizons.to()
                            + " days ahead needs at least "
                            + (horizons.to() + 1)
                            + ".");
        }
        LocalDate first = open.get(Math.max(0, last - asked.origins)).date();
        LocalDate end = open.get(last - 1).date();
        try (BufferedWriter writer = Files.newBufferedWriter(asked.out, StandardCharsets.UTF_8)) {
            writer.write(HEAD);
            int origins = write(writer, records, horizons, new Span(first, end));
            out.println(
                    "wrote the forecasts of "
                            + origins
                            + " days, "
                            + first
                            + " to "
                            + end
                            + ", to "
                            + asked.out);
        } catch (IOException fault) {
            throw new StartRefused("Can't write " + asked.out + ": " + fault.getMessage());
        }
    }

    /** The days that are forecast from, both included. */
    private record Span(LocalDate first, LocalDate last) {}

    private static int write(
            BufferedWriter writer, HistoryFiles.Records records, Horizons horizons, Span origins)
            throws IOException {
        Forecaster forecaster = new Forecaster(HistoryFiles.BIN_MINUTES, Guesses.NONE);
        forecaster.hear(records.history().outlooks());
        OpenDays calendar = new OpenDays(records.coming(), records.hasCalendar());
        int written = 0;
        for (PastDay day : records.history().days()) {
            if (day.date().isAfter(origins.last())) {
                break;
            }
            forecaster.learn(day);
            if (day.open() && !day.date().isBefore(origins.first())) {
                List<ComingDay> next = calendar.after(day.date(), horizons.to());
                for (DayForecast forecast : forecaster.forecast(next)) {
                    if (forecast.horizon() >= horizons.from()) {
                        write(writer, day.date(), forecast);
                    }
                }
                written++;
            }
        }
        return written;
    }

    private static void write(BufferedWriter writer, LocalDate origin, DayForecast day)
            throws IOException {
        String head = origin + "," + day.horizon() + "," + day.date() + ",";
        write(writer, head + "total,total,", day.total());
        for (DayForecast.Item item : day.items()) {
            write(writer, head + "item," + cell(item.item()) + ",", item.demand());
        }
        for (DayForecast.Part size : day.sizes()) {
            write(writer, head + "size," + cell(size.name()) + ",", size.demand());
        }
        for (DayForecast.Part modifier : day.modifiers()) {
            write(writer, head + "modifier," + cell(modifier.name()) + ",", modifier.demand());
        }
    }

    private static void write(BufferedWriter writer, String head, CountMixture demand)
            throws IOException {
        int[] values = demand.quantiles(QUANTILES);
        String mean = String.format(Locale.ROOT, "%.4f", demand.mean());
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            lines.add(head + QUANTILES[i] + "," + values[i] + "," + mean + "\n");
        }
        writer.write(String.join("", lines));
    }

    private static String cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n');
        return plain ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private Horizons horizons() throws StartRefused {
        Matcher matcher = HORIZONS.matcher(asked.horizons.strip());
        if (matcher.matches()) {
            int from = Integer.parseInt(matcher.group(1));
            int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
            if (from >= 1 && from <= to && to <= Forecaster.HORIZON_MAX) {
                return new Horizons(from, to);
            }
        }
        throw new StartRefused(
                "--horizons "
                        + asked.horizons
                        + " is not understood; it is one or two numbers of"
                        + " open days from 1 to 14, such as 1-5.");
    }
}
