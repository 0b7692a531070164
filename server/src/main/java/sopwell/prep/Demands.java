package sopwell.prep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.plan.PlanAsk.DemandFor;

/**
 * What coming days take of each ingredient: with M pieces of which each takes u, M E[u] on average,
 * and M E[u²] + φ M² E[u]² + M² Var(E[u]) for the variance, the last because shares vary from day
 * to day. For one plan.
 */
final class Demands {
    private final Kinds kinds;
    private final Takings takings;
    private final List<DayForecast> forecasts;
    private final Part part;

    /** How much of a date's demand for an ingredient counts, 0 to 1. */
    interface Part {
        double of(LocalDate date, String ingredient);
    }

    Demands(Kinds kinds, Takings takings, List<DayForecast> forecasts, Part part) {
        this.kinds = kinds;
        this.takings = takings;
        this.forecasts = forecasts;
        this.part = part;
    }

    /** The demand for everything that any piece takes. */
    List<DemandFor> all(Menu menu) {
        List<Blend> blends =
                forecasts.stream()
                        .map(day -> new Blend(kinds, day, item -> isSold(menu, item, day.date())))
                        .toList();
        double level = forecasts.stream().mapToDouble(DayForecast::phiLevel).min().orElse(0);
        return takings.ingredients().stream()
                .map(ingredient -> demand(ingredient, blends, Math.max(0, level)))
                .toList();
    }

    private static boolean isSold(Menu menu, String id, LocalDate date) {
        if (!menu.hasItem(id)) {
            return false;
        }
        Item item = menu.item(id);
        return item.days().isEmpty() || item.days().contains(date.getDayOfWeek());
    }

    private DemandFor demand(String ingredient, List<Blend> blends, double level) {
        double[] takes = takings.amounts(ingredient);
        List<Double> means = new ArrayList<>();
        List<Double> variances = new ArrayList<>();
        for (int d = 0; d < blends.size(); d++) {
            Blend blend = blends.get(d);
            DayForecast day = forecasts.get(d);
            double each = 0;
            double squared = 0;
            for (int k = 0; k < takes.length; k++) {
                each += blend.chance(k) * takes[k];
                squared += blend.chance(k) * takes[k] * takes[k];
            }
            double pieces = blend.pieces() * part.of(day.date(), ingredient);
            double phi = Math.max(0, day.total().phi() - level);
            double wide = phi * each * each + blend.variance(each, takes);
            means.add(pieces * each);
            variances.add(pieces * squared + pieces * pieces * wide);
        }
        return new DemandFor(ingredient, means, variances, level);
    }
}
