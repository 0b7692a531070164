package sopwell.prep.plan;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What to start, how much, when and why; what to order; and what does not work out. Immutable.
 *
 * @param tasks in the order of their start
 * @param orders in the order in which they must be placed
 */
public record PrepPlan(List<Task> tasks, List<Order> orders, List<Warning> warnings) {
    public PrepPlan {
        tasks = List.copyOf(tasks);
        orders = List.copyOf(orders);
        warnings = List.copyOf(warnings);
    }

    /**
     * One run of a recipe. Immutable.
     *
     * @param makes the ingredient
     * @param lots how many are in the run
     * @param takes what goes in, by ingredient, in base units
     * @param gives what comes out, in base units
     * @param steps when each step starts and ends
     * @param lastDay the last date on which it may be used; empty when that does not matter
     * @param bounds what keeps it from starting later, beside when it must be ready
     */
    public record Task(
            String makes,
            int lots,
            Map<String, BigDecimal> takes,
            BigDecimal gives,
            List<StepTime> steps,
            Optional<LocalDate> lastDay,
            Why why,
            List<Bound> bounds) {
        public Task {
            takes = Map.copyOf(takes);
            bounds = List.copyOf(bounds);
            steps = List.copyOf(steps);
        }

        public Instant start() {
            return steps.get(0).from();
        }

        public Instant ready() {
            return steps.get(steps.size() - 1).until();
        }
    }

    /** When one step is done, and on what. Immutable. */
    public record StepTime(String step, Optional<String> resource, Instant from, Instant until) {}

    /**
     * One order to a supplier. Immutable.
     *
     * @param orderBy the latest minute at which it may be placed
     */
    public record Order(
            String ingredient,
            String supplier,
            long packs,
            long cents,
            Instant orderBy,
            LocalDate delivered,
            Why why) {}

    /**
     * The arithmetic behind a quantity; amounts in the ingredient's base unit. Immutable.
     *
     * @param by when it must be there
     * @param firstDay the first date it is for
     * @param lastDay the last date before another batch or delivery can help
     * @param mean what these days ask for on average, what recipes take included
     * @param low what they ask for at least, in nineteen of twenty cases
     * @param high what they ask for at most, in nineteen of twenty cases
     * @param fractile Cu / (Cu + Co): how surely it should suffice
     * @param suffices what suffices that surely
     * @param onHand what is there or in process and lasts to the first day, less what earlier days
     *     take on average
     * @param lots how many lots or packs cost least
     * @param cost what that costs on average, in cents
     * @param otherLots the neighbour that came nearest
     * @param otherCost what that would cost, in cents
     */
    public record Why(
            Instant by,
            LocalDate firstDay,
            LocalDate lastDay,
            double mean,
            double low,
            double high,
            double fractile,
            double suffices,
            double onHand,
            long lots,
            double cost,
            long otherLots,
            double otherCost) {}

    /** What kind of thing does not work out. */
    public enum Kind {
        /** Not everything can be ready in time. */
        NOT_IN_TIME,
        /** It keeps for a shorter time than it is made for. */
        EXPIRES_TOO_EARLY,
        /** Nothing can be delivered within the days that are looked at. */
        NO_DELIVERY,
        /** It will run short before the first delivery. */
        SHORT_BEFORE_DELIVERY,
        /** Cooling takes longer than is allowed, so it is not planned. */
        COOLING_TOO_LONG,
        /** One lot alone is more than the kitchen can take. */
        LOT_TOO_LARGE,
        /** What a shortage and waste cost is not set; nine to one is taken. */
        NO_STAKES,
        /** The forecast says nothing, or nonsense, about it; it is not planned. */
        NO_FORECAST
    }

    /**
     * One thing that does not work out. Immutable.
     *
     * @param by when it was needed
     * @param asked how many lots were asked for; 0 where lots do not matter
     * @param possible how many of them can be ready in time
     * @param hindrance what stands in the way, of {@link Kind#NOT_IN_TIME}
     * @param readyAt when the others could be ready, if ever
     */
    public record Warning(
            Kind kind,
            String ingredient,
            Optional<Instant> by,
            long asked,
            long possible,
            Optional<Hindrance> hindrance,
            Optional<Instant> readyAt) {
        static Warning of(Kind kind, String ingredient, Optional<Instant> by) {
            return new Warning(kind, ingredient, by, 0, 0, Optional.empty(), Optional.empty());
        }
    }
}
