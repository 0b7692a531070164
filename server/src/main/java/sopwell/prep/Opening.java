package sopwell.prep;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import sopwell.prep.PrepAsk.When;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.stock.recipes.KitchenHours;

/**
 * On which days the stand opens, and when: the kitchen's weekdays, or those on which it sold of
 * late; at the usual first order's half hour of that weekday. Immutable.
 */
final class Opening {
    /** Of a day that has begun, what is missing is wanted so soon. */
    private static final int BEGUN_MINUTES = 60;

    private static final int LOOK_DAYS = 35;

    /** So long a stand must have sold before a weekday without a sale says something. */
    private static final int KNOWN_DAYS = 20;

    private static final int ALIKE_MAX = 8;
    private static final double REST_MIN = 0.01;
    private static final int DAY_MINUTES = 1_440;

    private final PrepAsk ask;
    private final KitchenHours kitchen;
    private final List<PastDay> open;

    Opening(PrepAsk ask, KitchenHours kitchen, List<PastDay> learned) {
        this.ask = ask;
        this.kitchen = kitchen;
        this.open = learned.stream().filter(PastDay::open).toList();
    }

    /** The next open days, today among them while something is still to be sold. */
    List<OpenDay> next(int many) {
        When when = ask.when();
        Set<DayOfWeek> weekdays = weekdays();
        LocalDate first = ask.terms().kitchen().opensOn().orElse(when.today());
        List<OpenDay> days = new ArrayList<>();
        for (int d = 0; d < many * 7 && days.size() < many; d++) {
            LocalDate date = when.today().plusDays(d);
            boolean isOpen =
                    (weekdays.contains(date.getDayOfWeek())
                                    || ask.calendar().hours().containsKey(date))
                            && !ask.calendar().closed().contains(date)
                            && !date.isBefore(first);
            if (isOpen && (d > 0 || rest() > REST_MIN)) {
                days.add(new OpenDay(date, ready(date)));
            }
        }
        return days;
    }

    /**
     * The weekdays on which the stand sells. Somebody may be in the kitchen on others, to make
     * things: once some weeks are known, a weekday without a sale in them is no open one.
     */
    private Set<DayOfWeek> weekdays() {
        Set<DayOfWeek> attended = kitchen.days().keySet();
        LocalDate last = open.isEmpty() ? LocalDate.MIN : open.get(open.size() - 1).date();
        List<LocalDate> late =
                open.stream()
                        .map(PastDay::date)
                        .filter(date -> date.plusDays(LOOK_DAYS).isAfter(last))
                        .toList();
        Set<DayOfWeek> sold = new TreeSet<>();
        late.forEach(date -> sold.add(date.getDayOfWeek()));
        if (attended.isEmpty()) {
            return sold;
        }
        boolean known = !late.isEmpty() && late.get(0).plusDays(KNOWN_DAYS).isBefore(last);
        if (known) {
            sold.retainAll(attended);
        }
        return known && !sold.isEmpty() ? sold : attended;
    }

    private Instant ready(LocalDate date) {
        Hours planned = ask.calendar().hours().getOrDefault(date, Hours.UNKNOWN);
        LocalTime opens =
                planned.equals(Hours.UNKNOWN)
                        ? opens(date.getDayOfWeek())
                        : LocalTime.MIDNIGHT.plusMinutes(planned.from());
        Instant usual = date.atTime(opens).atZone(ask.when().zone()).toInstant();
        Instant now = ask.when().now();
        return date.equals(ask.when().today()) && usual.isBefore(now)
                ? now.plusSeconds(60L * BEGUN_MINUTES)
                : usual;
    }

    private LocalTime opens(DayOfWeek weekday) {
        List<PastDay> alike =
                alike(open.stream().filter(day -> day.hours().isKnown()).toList(), weekday);
        if (alike.isEmpty()) {
            return ask.terms().numbers().opens();
        }
        List<Integer> first = alike.stream().map(day -> day.hours().from()).sorted().toList();
        int minute = Math.min(DAY_MINUTES - 1, first.get(first.size() / 2));
        return LocalTime.MIDNIGHT.plusMinutes(minute);
    }

    /** The last days of a weekday, or of all when there is none of it. */
    private static List<PastDay> alike(List<PastDay> days, DayOfWeek weekday) {
        List<PastDay> same =
                days.stream().filter(day -> day.date().getDayOfWeek() == weekday).toList();
        List<PastDay> some = same.isEmpty() ? days : same;
        return some.subList(Math.max(0, some.size() - ALIKE_MAX), some.size());
    }

    /** What part of today's pieces is usually sold after now, 0 to 1. */
    double rest() {
        When when = ask.when();
        int minute = when.now().atZone(when.zone()).toLocalTime().toSecondOfDay() / 60;
        List<PastDay> alike = alike(open, when.today().getDayOfWeek());
        double all = 0;
        double later = 0;
        for (PastDay day : alike) {
            for (PastDay.Sold sold : day.sold()) {
                double from = (double) sold.bin() * PrepDays.BIN_MINUTES;
                double part = (from + PrepDays.BIN_MINUTES - minute) / PrepDays.BIN_MINUTES;
                later += sold.pieces() * Math.max(0, Math.min(1, part));
                all += sold.pieces();
            }
        }
        return all > 0 ? later / all : even(minute);
    }

    /** Without history as much is sold in each hour until the kitchen closes. */
    private double even(int minute) {
        int from = ask.terms().numbers().opens().toSecondOfDay() / 60;
        int to =
                kitchen.on(ask.when().today().getDayOfWeek())
                        .map(span -> span.to().toSecondOfDay() / 60)
                        .orElse(DAY_MINUTES);
        return to <= from ? 1 : Math.max(0, Math.min(1, (double) (to - minute) / (to - from)));
    }
}
