package sopwell.prep;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.prep.calendar.CalendarDay;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.calendar.OwnerTerms;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.plan.PlanAsk.Busy;
import sopwell.stock.larder.StockNow;

/**
 * All that a plan is made from. Immutable.
 *
 * @param menu in force
 * @param stock what is kept and in process, with the book of recipes
 * @param past what was sold, by day
 * @param calendar what the owner knows of coming days
 * @param terms what the owner has set
 * @param coolMinutesMax within how long cooked food is cold, by the stand's safety limits
 */
public record PrepAsk(
        Menu menu,
        StockNow stock,
        Past past,
        Calendar calendar,
        OwnerTerms terms,
        int coolMinutesMax,
        When when) {
    /**
     * What was sold.
     *
     * @param days in any order; of today and later ones nothing is learned
     * @param tallies the same days as they were counted, for prices; oldest first, may be fewer
     * @param outlooks weather forecasts
     */
    public record Past(List<PastDay> days, List<DayTally> tallies, List<Outlook> outlooks) {
        public Past {
            days = List.copyOf(days);
            tallies = List.copyOf(tallies);
            outlooks = List.copyOf(outlooks);
        }
    }

    /**
     * What is known of coming days.
     *
     * @param closed dates on which the stand does not open
     * @param hours those that are not the usual ones, by date
     * @param occasions what is particular, by date
     * @param guesses pieces a plain day of each item, as the owner sees it; may be empty
     * @param busy what can't be used for a while: an oven that is out
     */
    public record Calendar(
            Set<LocalDate> closed,
            Map<LocalDate, Hours> hours,
            Map<LocalDate, List<Occasion>> occasions,
            Map<String, Double> guesses,
            List<Busy> busy) {
        /** Nothing is known. */
        public static final Calendar NONE =
                new Calendar(Set.of(), Map.of(), Map.of(), Map.of(), List.of());

        public Calendar {
            closed = Set.copyOf(closed);
            hours = Map.copyOf(hours);
            occasions = Map.copyOf(occasions);
            guesses = Map.copyOf(guesses);
            busy = List.copyOf(busy);
        }

        /** What the owner has said of days. */
        public static Calendar of(OwnerCalendar said) {
            Set<LocalDate> closed = new HashSet<>();
            Map<LocalDate, Hours> hours = new HashMap<>();
            Map<LocalDate, List<Occasion>> occasions = new HashMap<>();
            for (CalendarDay day : said.days().values()) {
                if (day.closed()) {
                    closed.add(day.date());
                }
                if (day.hours().isPresent()) {
                    hours.put(day.date(), day.plannedHours());
                }
                occasions.put(day.date(), day.known());
            }
            return new Calendar(closed, hours, occasions, said.guesses().items(), List.of());
        }
    }

    /** Now, and where. */
    public record When(Instant now, ZoneId zone) {
        /** Today's date at the stand. */
        public LocalDate today() {
            return LocalDate.ofInstant(now, zone);
        }
    }
}
