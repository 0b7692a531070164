package sopwell.prep.plan;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.prep.quantity.Stakes;
import sopwell.stock.recipes.RecipeBook;

/**
 * All that a plan is made from. Immutable.
 *
 * @param now nothing is planned to start before
 * @param days the open days that are planned for, in order and without repeats
 * @param demand what they will ask for, by ingredient
 * @param stock what is on hand and in process
 * @param busy what is occupied or out already
 */
public record PlanAsk(
        RecipeBook book,
        ZoneId zone,
        Instant now,
        List<OpenDay> days,
        List<DemandFor> demand,
        List<StockLot> stock,
        List<Busy> busy,
        Terms terms) {
    public PlanAsk {
        days = List.copyOf(days);
        demand = List.copyOf(demand);
        stock = List.copyOf(stock);
        busy = List.copyOf(busy);
    }

    /**
     * A day on which the stand opens. Immutable.
     *
     * @param readyBy when what is sold that day must be ready
     */
    public record OpenDay(LocalDate date, Instant readyBy) {}

    /**
     * What the open days take of one ingredient by what they sell; one entry a day. Immutable.
     *
     * @param means in the ingredient's base unit
     * @param variances of each day by itself, in that unit squared
     * @param levelPhi the squared coefficient of variation that all days share, from 0
     */
    public record DemandFor(
            String ingredient, List<Double> means, List<Double> variances, double levelPhi) {
        public DemandFor {
            means = List.copyOf(means);
            variances = List.copyOf(variances);
        }
    }

    /**
     * An amount that is there or will be. Immutable.
     *
     * @param amount in the ingredient's base unit
     * @param from when it can be used; later than now for what is in process
     * @param lastDay the last date on which it may be used
     */
    public record StockLot(String ingredient, BigDecimal amount, Instant from, LocalDate lastDay) {}

    /**
     * Slots that are not free: a batch in process, or a resource that is out. Immutable.
     *
     * @param slots how many; all of them when the resource is out
     */
    public record Busy(String resource, int slots, Instant from, Instant until) {}

    /**
     * The stand's settings. Immutable.
     *
     * @param stakes by ingredient
     * @param reviewDays how many open days one batch is made for, by ingredient; 1 unless named
     * @param hands how many pairs work at the same time, at least 1
     * @param coolMinutesMax how long a step of cooling cooked food may take (Food Code 3-501.14(A):
     *     6 hours from 135 °F to 41 °F, of which 2 to 70 °F; local codes come first)
     * @param deliveredBy until when suppliers have come, in the stand's local time
     * @param away dates on which nobody is in the kitchen
     */
    public record Terms(
            Map<String, Stakes> stakes,
            Map<String, Integer> reviewDays,
            int hands,
            int coolMinutesMax,
            LocalTime deliveredBy,
            Set<LocalDate> away) {
        public Terms {
            stakes = Map.copyOf(stakes);
            reviewDays = Map.copyOf(reviewDays);
            away = Set.copyOf(away);
        }

        /** The same with somebody in the kitchen on every date that the book of recipes has. */
        public Terms(
                Map<String, Stakes> stakes,
                Map<String, Integer> reviewDays,
                int hands,
                int coolMinutesMax,
                LocalTime deliveredBy) {
            this(stakes, reviewDays, hands, coolMinutesMax, deliveredBy, Set.of());
        }
    }
}
