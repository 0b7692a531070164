package sopwell.prep;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
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
        PrepTerms terms,
        int coolMinutesMax,
        When when) {
    /**
     * What was sold.
     *
     * @param days in any order; of today and later ones nothing is learned
     * @param tallies the same days as they were counted, for prices; may be fewer
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
     * @param occasions what is particular, by date
     * @param guesses pieces a plain day of each item, as the owner sees it; may be empty
     * @param busy what can't be used for a while: an oven that is out
     */
    public record Calendar(
            Set<LocalDate> closed,
            Map<LocalDate, List<Occasion>> occasions,
            Map<String, Double> guesses,
            List<Busy> busy) {
        /** Nothing is known. */
        public static final Calendar NONE = new Calendar(Set.of(), Map.of(), Map.of(), List.of());

        public Calendar {
            closed = Set.copyOf(closed);
            occasions = Map.copyOf(occasions);
            guesses = Map.copyOf(guesses);
            busy = List.copyOf(busy);
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
