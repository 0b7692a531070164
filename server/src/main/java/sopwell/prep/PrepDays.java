package sopwell.prep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.Ways;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/** Counted days as the forecast wants them. Stateless. */
public final class PrepDays {
    /** How wide the bins are that days are counted in. */
    public static final int BIN_MINUTES = 30;

    private PrepDays() {}

    /**
     * Counted days. A day's hours are those from its first order's half hour to its last one's; a
     * day without orders tells nothing.
     *
     * @param outs what could not be sold, by day
     * @param calendar what was particular about them
     */
    public static List<PastDay> of(
            List<DayTally> days, Map<LocalDate, List<OutSpan>> outs, OwnerCalendar calendar) {
        List<PastDay> past = new ArrayList<>();
        for (DayTally day : days) {
            List<Sold> sold = new ArrayList<>();
            for (HalfHour half : day.halfHours()) {
                half.sold().stream()
                        .filter(some -> !some.staff() && some.pieces() > 0)
                        .forEach(some -> sold.add(sold(half.index(), some)));
            }
            past.add(
                    sold.isEmpty()
                            ? PastDay.closed(day.date())
                            : new PastDay(
                                    day.date(),
                                    true,
                                    hours(sold),
                                    sold,
                                    outs.getOrDefault(day.date(), List.of()),
                                    calendar.day(day.date()).known(),
                                    List.of()));
        }
        return past;
    }

    private static Sold sold(int index, DayTally.Sold some) {
        return new Sold(index, some.item(), some.size(), options(some.ways()), some.pieces());
    }

    /** The options that were chosen, of a piece's ways. */
    static List<String> options(List<String> ways) {
        return ways.stream()
                .map(Ways::chosen)
                .filter(chosen -> !chosen.equals(Ways.NONE))
                .flatMap(chosen -> Arrays.stream(chosen.split("\\+", -1)))
                .toList();
    }

    private static Hours hours(List<Sold> sold) {
        int first = sold.stream().mapToInt(Sold::bin).min().orElse(0);
        int last = sold.stream().mapToInt(Sold::bin).max().orElse(0);
        return new Hours(
                first * BIN_MINUTES, Math.min(History.DAY_MINUTES, (last + 1) * BIN_MINUTES));
    }
}
