package sopwell.prep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Pricing;
import sopwell.menu.Selection;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.Counts;
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

    /**
     * Old records as if they had been counted here, at the menu's prices. What is not on the menu
     * is left out, and so are modifiers that its item does not have.
     *
     * @param days in bins of {@link #BIN_MINUTES}
     */
    public static List<DayTally> priced(List<PastDay> days, Menu menu) {
        List<DayTally> tallies = new ArrayList<>();
        for (PastDay day : days) {
            Map<Integer, List<DayTally.Sold>> halves = new TreeMap<>();
            for (Sold some : day.sold()) {
                if (isOn(menu, some)) {
                    halves.computeIfAbsent(some.bin(), bin -> new ArrayList<>())
                            .add(priced(some, menu));
                }
            }
            List<HalfHour> counted = new ArrayList<>();
            halves.forEach((bin, some) -> counted.add(new HalfHour(bin, Counts.NONE, some)));
            tallies.add(new DayTally(day.date(), counted));
        }
        return tallies;
    }

    private static boolean isOn(Menu menu, Sold some) {
        if (!menu.hasItem(some.item())) {
            return false;
        }
        Item item = menu.item(some.item());
        return item.sizes().isEmpty() ? some.size().isEmpty() : item.size(some.size()).isPresent();
    }

    private static DayTally.Sold priced(Sold some, Menu menu) {
        Selection said = new Selection(some.item(), some.size(), some.modifiers(), List.of());
        List<String> ways = Ways.of(menu, said);
        Selection made = new Selection(some.item(), some.size(), options(ways), List.of());
        long cents = Math.multiplyExact(Pricing.unitCents(menu, made), (long) some.pieces());
        return new DayTally.Sold(some.item(), some.size(), ways, false, some.pieces(), cents);
    }

    private static Sold sold(int index, DayTally.Sold some) {
        return new Sold(index, some.item(), some.size(), options(some.ways()), some.pieces());
    }

    /** The options that were chosen, of a piece's ways. */
    public static List<String> options(List<String> ways) {
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
