package sopwell.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import sopwell.demo.HistoryDay.Shortage;
import sopwell.menu.Out;

/** Which invented days there are, and what each is like; all figures are invented. Stateless. */
public final class HistoryCalendar {
    /** Sandwiches that an order comes to on average, see {@link HistoryGuests}. */
    static final double SANDWICHES_PER_ORDER = 1.73;

    private static final int DEMO_WEEKS = 8;
    private static final int DEMO_SANDWICHES = 320;
    private static final int FESTIVAL_WEEK = 2;
    private static final int RAINY_WEEK = 5;
    private static final double DIPPED_FIRST = 0.33;
    private static final double DIPPED_LAST = 0.43;

    /** How a weekday compares with a Thursday, Monday first. */
    private static final double[] WEEKDAYS = {0, 0.94, 0.98, 1.0, 1.08, 1.62, 1.02};

    private static final double FESTIVAL = 1.55;
    private static final double RAIN = 0.72;
    private static final double GROWTH_A_YEAR = 1.04;
    private static final double SEASON = 0.10;
    private static final double WANDER = 0.05;

    private HistoryCalendar() {}

    /**
     * The demo's eight weeks: a river-festival Saturday, a rainy week, two sell-outs, and ever more
     * sandwiches dipped.
     *
     * @param last the last of its days
     */
    public static List<HistoryDay> eightWeeks(LocalDate last, long seed) {
        LocalDate first = last.minusWeeks(DEMO_WEEKS).plusDays(1);
        LocalDate monday = first.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        List<HistoryDay> days = new ArrayList<>();
        for (LocalDate date = first; !date.isAfter(last); date = date.plusDays(1)) {
            int week = (int) ChronoUnit.WEEKS.between(monday, date);
            DayOfWeek weekday = date.getDayOfWeek();
            boolean festival = week == FESTIVAL_WEEK && weekday == DayOfWeek.SATURDAY;
            boolean rain = week == RAINY_WEEK;
            double factor = wander(date, seed) * (festival ? FESTIVAL : 1) * (rain ? RAIN : 1);
            Optional<Shortage> shortage = Optional.empty();
            if (festival) {
                shortage = Optional.of(new Shortage(Out.item("fries"), LocalTime.of(16, 10), 0));
            } else if (week == DEMO_WEEKS - 2 && weekday == DayOfWeek.THURSDAY) {
                shortage = Optional.of(new Shortage(Out.item("sausage"), LocalTime.of(12, 50), 0));
            }
            double share = ChronoUnit.DAYS.between(first, date) / (7.0 * DEMO_WEEKS);
            double dipped = DIPPED_FIRST + (DIPPED_LAST - DIPPED_FIRST) * share;
            int orders = orders(date, DEMO_SANDWICHES / SANDWICHES_PER_ORDER * factor);
            days.add(new HistoryDay(date, orders, dipped, rain, shortage));
        }
        return days;
    }

    /**
     * Years of a busy stand: it grows, has its seasons, keeps holidays, and something runs out now
     * and then.
     *
     * @param last the last of its days
     * @param orders about how many in all
     */
    public static List<HistoryDay> years(LocalDate last, int years, int orders, long seed) {
        List<LocalDate> dates = new ArrayList<>();
        LocalDate first = last.minusYears(years).plusDays(1);
        double sum = 0;
        for (LocalDate date = first; !date.isAfter(last); date = date.plusDays(1)) {
            dates.add(date);
            sum += weight(date, first, seed);
        }
        List<HistoryDay> days = new ArrayList<>();
        for (LocalDate date : dates) {
            SplittableRandom random = random(date, seed + 1);
            boolean rain = random.nextInt(6) == 0;
            double share = ChronoUnit.DAYS.between(first, date) / (double) dates.size();
            int count = (int) Math.round(weight(date, first, seed) * orders / sum);
            days.add(new HistoryDay(date, count, 0.30 + 0.12 * share, rain, shortage(random)));
        }
        return days;
    }

    private static double weight(LocalDate date, LocalDate first, long seed) {
        if (isHoliday(date)) {
            return 0;
        }
        boolean half = date.getMonth() == Month.DECEMBER && date.getDayOfMonth() % 7 == 3;
        double season = 1 + SEASON * Math.cos(2 * Math.PI * (date.getDayOfYear() - 200) / 365);
        double growth = Math.pow(GROWTH_A_YEAR, ChronoUnit.DAYS.between(first, date) / 365.0);
        return WEEKDAYS[date.getDayOfWeek().getValue() - 1]
                * season
                * growth
                * (half ? 0.6 : 1)
                * wander(date, seed);
    }

    private static Optional<Shortage> shortage(SplittableRandom random) {
        if (random.nextInt(16) != 0) {
            return Optional.empty();
        }
        List<Out> outs =
                List.of(
                        Out.item("sausage"),
                        Out.item("fries"),
                        Out.item("jus-bread"),
                        Out.option("provolone"),
                        Out.size("beef", "large"));
        return Optional.of(
                new Shortage(
                        outs.get(random.nextInt(outs.size())),
                        LocalTime.of(11 + random.nextInt(8), random.nextInt(60)),
                        random.nextBoolean() ? 0 : 30 + random.nextInt(60)));
    }

    /** New Year's Day, the fourth Thursday of November, and Christmas. */
    private static boolean isHoliday(LocalDate date) {
        LocalDate feast =
                date.withMonth(Month.NOVEMBER.getValue())
                        .with(TemporalAdjusters.dayOfWeekInMonth(4, DayOfWeek.THURSDAY));
        return date.getDayOfYear() == 1
                || date.equals(feast)
                || (date.getMonth() == Month.DECEMBER && date.getDayOfMonth() == 25);
    }

    private static int orders(LocalDate date, double usual) {
        return (int) Math.round(usual * WEEKDAYS[date.getDayOfWeek().getValue() - 1]);
    }

    private static double wander(LocalDate date, long seed) {
        return 1 + WANDER * (2 * random(date, seed).nextDouble() - 1);
    }

    private static SplittableRandom random(LocalDate date, long seed) {
        return new SplittableRandom(seed * 1_000_003 + date.toEpochDay());
    }
}
