package sopwell.records;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import sopwell.mix.DayExceptions;
import sopwell.mix.OutTime;
import sopwell.records.TableWriter.Plain;

/** What did not go straight on a day: a row for each figure, reason and time out. Stateless. */
public final class ExceptionRecords {
    /** The columns, in their order. */
    public static final List<String> COLUMNS =
            List.of("date", "figure", "what", "count", "from", "to");

    private ExceptionRecords() {}

    /**
     * What is written of a day.
     *
     * @param outs what could not be sold; its times are by the zone's clock, to the minute
     */
    public record Day(LocalDate date, DayExceptions exceptions, List<OutTime> outs, ZoneId zone) {
        public Day {
            outs = List.copyOf(outs);
        }
    }

    /** Writes a day. */
    public static void write(TableWriter to, Day day) throws IOException {
        DayExceptions exceptions = day.exceptions();
        count(to, day, "queries", "", exceptions.asked());
        count(to, day, "queries lapsed", "", exceptions.lapsed());
        count(to, day, "changes", "", exceptions.changes());
        count(to, day, "changes after start", "", exceptions.changesAfterStart());
        count(to, day, "voids after start", "", exceptions.voidsAfterStart());
        for (DayExceptions.VoidCount one : exceptions.voids()) {
            count(to, day, "void orders", one.reason(), one.orders());
        }
        for (DayExceptions.RemakeCount one : exceptions.remakes()) {
            String reason = one.reason().name().toLowerCase(Locale.ROOT);
            count(to, day, "pieces made again", reason, one.pieces());
        }
        for (OutTime out : day.outs()) {
            to.row(
                    List.of(
                            new Plain(day.date().toString()),
                            "out",
                            out.out().toString(),
                            out.sold(),
                            time(day, out.fromMs()),
                            out.open() ? TableWriter.NONE : time(day, out.toMs())));
        }
    }

    private static void count(TableWriter to, Day day, String figure, String what, int count)
            throws IOException {
        to.row(
                List.of(
                        new Plain(day.date().toString()),
                        figure,
                        what,
                        count,
                        TableWriter.NONE,
                        TableWriter.NONE));
    }

    private static Plain time(Day day, long atMs) {
        return new Plain(
                Instant.ofEpochMilli(atMs)
                        .atZone(day.zone())
                        .toLocalTime()
                        .truncatedTo(ChronoUnit.MINUTES)
                        .toString());
    }
}
