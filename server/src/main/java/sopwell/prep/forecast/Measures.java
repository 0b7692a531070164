package sopwell.prep.forecast;

import java.util.List;
import sopwell.Check;

/** How far forecasts fell from what came. Stateless. */
public final class Measures {
    private Measures() {}

    /**
     * The pinball loss of one quantile: the cost of having too little, at q for each piece, or too
     * much, at 1 - q. Hyndman and Athanasopoulos (2021, section 5.9) write twice as much.
     */
    public static double pinball(double q, double forecast, double came) {
        return came >= forecast ? q * (came - forecast) : (1 - q) * (forecast - came);
    }

    /** The mean absolute error of the seasonal naive forecast within a series: MASE's scale. */
    public static double seasonalScale(List<Double> series, int season) {
        Check.that(series.size() > season, "a scale needs more than a season");
        double sum = 0;
        for (int t = season; t < series.size(); t++) {
            sum += Math.abs(series.get(t) - series.get(t - season));
        }
        return sum / (series.size() - season);
    }

    /** The mean absolute error. */
    public static double absolute(List<Double> forecasts, List<Double> came) {
        Check.that(forecasts.size() == came.size(), "each forecast has what came");
        double sum = 0;
        for (int i = 0; i < came.size(); i++) {
            sum += Math.abs(forecasts.get(i) - came.get(i));
        }
        return sum / came.size();
    }
}
