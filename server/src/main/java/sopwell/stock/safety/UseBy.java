package sopwell.stock.safety;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import sopwell.orders.FoodLimits.Dating;
import sopwell.stock.safety.Standing.Advice;
import sopwell.stock.safety.Standing.State;

/**
 * The date on a label: the last day on which cold ready-to-eat food may be used. Stateless.
 *
 * <p>The day of preparation, or of opening a package, is day 1: what is prepared on Monday the 1st
 * and keeps 7 days is used on Sunday the 7th at the latest. Days are calendar days of the stand.
 */
public final class UseBy {
    private UseBy() {}

    /**
     * Food that the stand prepared, or a package that it opened.
     *
     * @param days how long the recipe lets it keep; 0 when it does not say
     * @param underOil whether it is a vegetable under oil, which has a shorter limit
     */
    public static LocalDate of(LocalDate day, int days, boolean underOil, Dating limits) {
        int most = underOil ? Math.min(limits.oilDays(), limits.keepDays()) : limits.keepDays();
        int kept = days == 0 ? most : Math.min(days, most);
        return day.plusDays(Math.max(1, kept) - 1L);
    }

    /** What is made of several foods is as old as the oldest of them. */
    public static LocalDate combined(LocalDate own, Collection<LocalDate> ingredients) {
        return ingredients.stream().filter(own::isAfter).min(LocalDate::compareTo).orElse(own);
    }

    /** How food with a date stands on a day: on its last it must be used up. */
    public static Standing on(LocalDate today, LocalDate useBy) {
        if (today.isAfter(useBy)) {
            return new Standing(State.FAILED, Advice.DISCARD, 0, Optional.empty());
        }
        State state = today.equals(useBy) ? State.ACT : State.FINE;
        return new Standing(state, Advice.USE_UP, 0, Optional.empty());
    }
}
