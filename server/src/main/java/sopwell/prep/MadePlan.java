package sopwell.prep;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.prep.calendar.PrepTerms;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.plan.PlanAsk;
import sopwell.prep.plan.PrepPlan;
import sopwell.prep.quantity.Stakes;
import sopwell.stock.recipes.RecipeBook;

/**
 * A plan with everything that it stands on. Immutable.
 *
 * @param asOf nothing is planned to start before
 * @param days the open days that are planned for
 * @param forecasts what is forecast of them, by date; of today all of the day
 * @param demand what they take of each ingredient by what they sell, of today what is still to come
 * @param stock what was reckoned to be there or in process
 * @param stakes what a shortage and waste cost, by ingredient
 * @param uncounted ingredients that are used and were never counted: reckoned to last for today
 * @param terms what was assumed of costs and hours; its hands are those that the book has, if any
 */
public record MadePlan(
        Instant asOf,
        ZoneId zone,
        RecipeBook book,
        List<PlanAsk.OpenDay> days,
        Map<LocalDate, DayForecast> forecasts,
        List<PlanAsk.DemandFor> demand,
        List<PlanAsk.StockLot> stock,
        Map<String, Stakes> stakes,
        Set<String> uncounted,
        PrepTerms terms,
        Basis basis,
        PrepPlan plan) {
    public MadePlan {
        days = List.copyOf(days);
        forecasts = Map.copyOf(forecasts);
        demand = List.copyOf(demand);
        stock = List.copyOf(stock);
        stakes = Map.copyOf(stakes);
    }

    /** What can be said of the ground that a plan stands on. */
    public enum Ground {
        /** There is no book of recipes: nothing can be planned. */
        NO_RECIPES,
        /** The kitchen's hours and the history name no open day. */
        NO_OPEN_DAYS,
        /** Nothing was sold yet and the owner has guessed nothing: an even guess. */
        EVEN_GUESS,
        /** Nothing was sold yet: the owner's guesses. */
        GUESSES,
        /** Fewer than fourteen open days. */
        FEW_DAYS,
        /** Days that were long ago. */
        LONG_AGO,
        /** Enough days. */
        DAYS
    }

    /**
     * The ground that it stands on.
     *
     * @param learned open days that were learned from
     * @param first the first of them
     * @param last the last of them
     * @param guessPieces pieces a day that were guessed; 0 when nothing was
     */
    public record Basis(
            Ground ground,
            int learned,
            Optional<LocalDate> first,
            Optional<LocalDate> last,
            long guessPieces) {}

    /** What a date is forecast to ask for. */
    public Optional<DayForecast> forecast(LocalDate date) {
        return Optional.ofNullable(forecasts.get(date));
    }

    /** Today's date at the stand. */
    public LocalDate today() {
        return LocalDate.ofInstant(asOf, zone);
    }
}
