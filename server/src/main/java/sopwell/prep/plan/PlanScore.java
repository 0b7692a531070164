package sopwell.prep.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.prep.quantity.Stakes;

/**
 * What waste and shortage of one ingredient cost, week by week, beside what the simple rule "make
 * what this weekday took on average" would have cost on the same days. Immutable; costs in the
 * stakes' money.
 *
 * @param monday the week's first date
 * @param days how many days of the week were compared
 * @param planned what was planned on them
 * @param made what was made
 * @param cost what waste and shortage cost
 * @param ruleCost what they would have cost with the simple rule, nothing kept overnight
 */
public record PlanScore(
        LocalDate monday, int days, double planned, double made, double cost, double ruleCost) {
    /** So many past days of a weekday make its average. */
    private static final int AVERAGE_DAYS = 8;

    /**
     * What became of one day; amounts in the ingredient's base unit. Immutable.
     *
     * @param used what guests and recipes took
     * @param wasted what was thrown away
     * @param missing what was asked for and not there, as far as is known
     */
    public record Day(
            LocalDate date,
            double planned,
            double made,
            double used,
            double wasted,
            double missing) {
        double asked() {
            return used + missing;
        }
    }

    /**
     * The weeks in order. A day whose weekday was not seen before is compared with nothing and left
     * out of both sides.
     *
     * @param days in any order, each date once
     */
    public static List<PlanScore> weeks(List<Day> days, Stakes stakes) {
        List<Day> sorted = new ArrayList<>(days);
        sorted.sort(Comparator.comparing(Day::date));
        Map<DayOfWeek, List<Double>> seen = new EnumMap<>(DayOfWeek.class);
        Map<LocalDate, PlanScore> weeks = new TreeMap<>();
        for (Day day : sorted) {
            List<Double> past =
                    seen.computeIfAbsent(day.date().getDayOfWeek(), weekday -> new ArrayList<>());
            if (!past.isEmpty()) {
                PlanScore one = of(day, average(past), stakes);
                weeks.merge(one.monday(), one, PlanScore::plus);
            }
            past.add(day.asked());
        }
        return List.copyOf(weeks.values());
    }

    private static PlanScore of(Day day, double rule, Stakes stakes) {
        double shortage = stakes.shortage().doubleValue();
        double waste = stakes.waste().doubleValue();
        double left = Math.max(0, rule - day.asked());
        double missing = Math.max(0, day.asked() - rule);
        return new PlanScore(
                day.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)),
                1,
                day.planned(),
                day.made(),
                shortage * day.missing() + waste * day.wasted(),
                shortage * missing + waste * left);
    }

    private static double average(List<Double> past) {
        return past.subList(Math.max(0, past.size() - AVERAGE_DAYS), past.size()).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
    }

    private PlanScore plus(PlanScore other) {
        return new PlanScore(
                monday,
                days + other.days,
                planned + other.planned,
                made + other.made,
                cost + other.cost,
                ruleCost + other.ruleCost);
    }
}
