package sopwell;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import sopwell.desk.DayBook;
import sopwell.desk.MenuShelf;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.mix.DayExceptions;
import sopwell.mix.Names;
import sopwell.mix.OutTime;
import sopwell.mix.Period;
import sopwell.mix.Waits;
import sopwell.orders.StandSettings;
import sopwell.records.Csv;
import sopwell.records.ExceptionRecords;
import sopwell.records.JsonRows;
import sopwell.records.MixRecords;
import sopwell.records.TableWriter;
import sopwell.records.TillRecords;
import sopwell.records.WaitRecords;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;
import sopwell.till.DayReport;

/** Writes tables of a stand's days from its log, which is only looked at. Not thread-safe. */
final class Exporting {
    private final Config.Export asked;
    private final PrintStream out;

    Exporting(Config.Export asked, PrintStream out) {
        this.asked = asked;
        this.out = out;
    }

    /**
     * Writes the file, whole or not at all.
     *
     * @throws StartRefused when there is no such stand, no such day, or the file can't be written
     */
    void run() throws StartRefused {
        LocalDate to = asked.to == null ? asked.from : asked.to;
        if (to.isBefore(asked.from)) {
            throw new StartRefused(
                    "The days end before they begin: from "
                            + asked.from
                            + " to "
                            + to
                            + ". Put the earlier one first.");
        }
        if (ChronoUnit.DAYS.between(asked.from, to) >= Limits.MIX_DAYS_MAX) {
            throw new StartRefused(
                    "That is more than " + Limits.MIX_DAYS_MAX + " days. Ask for fewer.");
        }
        try (DataFolder folder = DataFolder.look(asked.data)) {
            if (!folder.hasLog()) {
                throw new StartRefused(
                        "There is no stand in " + asked.data + ". Name its folder with --data.");
            }
            StandSettings settings = StandFolder.settings(folder);
            try (SqliteLog log = folder.openLog(settings.stand())) {
                write(new Source(log, settings, Replay.dates(log, asked.from, to)), to);
            }
        }
    }

    /** Where the days come from. */
    private record Source(SqliteLog log, StandSettings settings, List<LocalDate> dates) {}

    private void write(Source source, LocalDate to) throws StartRefused {
        if (source.dates().isEmpty()) {
            throw new StartRefused(
                    "The stand was not open on any day from " + asked.from + " to " + to + ".");
        }
        Path fresh = asked.out.resolveSibling(asked.out.getFileName() + ".new");
        try {
            try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(fresh));
                    TableWriter table = table(stream)) {
                Names names = new Names(new MenuShelf(source.log()).newestFirst());
                for (LocalDate date : source.dates()) {
                    day(
                            table,
                            Replay.day(source.log(), source.settings(), date).orElseThrow(),
                            names);
                }
            }
            Files.move(fresh, asked.out, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException fault) {
            throw new StartRefused(asked.out + " can't be written: " + fault);
        } finally {
            throwAway(fresh);
        }
        int days = source.dates().size();
        out.println("wrote " + days + (days == 1 ? " day to " : " days to ") + asked.out);
    }

    /** What was not finished is no table. */
    private static void throwAway(Path fresh) throws StartRefused {
        try {
            Files.deleteIfExists(fresh);
        } catch (IOException fault) {
            throw new StartRefused(fresh + " can't be thrown away: " + fault);
        }
    }

    private TableWriter table(OutputStream stream) throws IOException {
        List<String> columns =
                switch (asked.what) {
                    case mix -> MixRecords.COLUMNS;
                    case waits -> WaitRecords.COLUMNS;
                    case till -> TillRecords.COLUMNS;
                    case exceptions -> ExceptionRecords.COLUMNS;
                };
        return switch (asked.format) {
            case csv -> new Csv(stream, columns);
            case json -> new JsonRows(stream, columns);
        };
    }

    private void day(TableWriter table, Stand stand, Names names) throws IOException {
        StandSettings settings = stand.settings();
        LocalDate date = stand.orders().date().orElseThrow();
        switch (asked.what) {
            case mix -> MixRecords.write(table, DayBook.mix(stand), names);
            case waits ->
                    WaitRecords.write(
                            table,
                            Waits.of(
                                    Period.day(date),
                                    List.of(DayBook.waits(stand)),
                                    settings.targetSeconds(),
                                    names));
            case till ->
                    TillRecords.write(
                            table, DayReport.of(stand.orders(), stand.till()), settings.zone());
            case exceptions ->
                    ExceptionRecords.write(
                            table,
                            new ExceptionRecords.Day(
                                    date,
                                    DayExceptions.of(stand.orders(), stand.kitchen()),
                                    OutTime.of(stand.outSpans(), stand.orders(), stand.atMs()),
                                    settings.zone()));
        }
    }
}
