package sopwell.prep.forecast;

import java.util.List;
import java.util.Optional;

/**
 * How well the last weeks would have been forecast from the days before them, beside two simple
 * rules. Immutable.
 *
 * @param total all pieces of a day
 * @param items each item, that of which most is sold first
 */
public record Accuracy(Line total, List<Line> items) {
    /** The quantiles whose pinball losses are averaged. */
    static final List<Double> QUANTILES = List.of(0.5, 0.75, 0.9, 0.95);

    /** Of these, nine days in ten should fall between. */
    static final double LOW = 0.05;

    static final double HIGH = 0.95;

    public Accuracy {
        items = List.copyOf(items);
    }

    /**
     * What is asked.
     *
     * @param weeks how many weeks before and with the last day are judged, from 1
     * @param ahead how many open days ahead is forecast, 1 to {@link Forecaster#HORIZON_MAX}
     */
    public record Asked(int weeks, int ahead) {}

    /**
     * How one thing was forecast. On days on which it may have run out nobody knows what guests
     * would have taken, and on days of a weekday that was never seen before the simple rules say
     * nothing: these are not judged.
     *
     * @param name the item's; {@code total} for all pieces
     * @param sold pieces on the judged days
     * @param days how many days were judged
     * @param leftOut how many were not
     * @param ours by the method of {@link Forecaster}
     * @param lastWeek as many as on the same weekday of the last week that had it
     * @param meanOf4 the mean of the last four of the same weekday
     * @param meanOf8 of the last eight
     */
    public record Line(
            String name,
            int sold,
            int days,
            int leftOut,
            Score ours,
            Score lastWeek,
            Score meanOf4,
            Score meanOf8) {}

    /**
     * How far off one way of forecasting was. All 0 when no day was judged.
     *
     * @param absolute mean absolute error of the middle forecast, pieces a day
     * @param pinball mean pinball loss over the quantiles .5, .75, .9 and .95, as a part of the
     *     mean difference between a day and the same weekday a week before: lower is better
     * @param covered share of the days within the interval that should hold nine in ten
     */
    public record Score(double absolute, double pinball, double covered) {}

    /**
     * Judges the last weeks of a history: for each of their days, everything up to an earlier open
     * day is learned, and that day's forecast compared with what was sold.
     *
     * @param guesses what the owner believed before the first day
     * @return empty when no day can be judged
     */
    public static Optional<Accuracy> of(History history, Guesses guesses, Asked asked) {
        return new Judging(history, asked).judge(guesses);
    }

    /** An item's line, if it was sold. */
    public Optional<Line> item(String name) {
        return items.stream().filter(line -> line.name().equals(name)).findFirst();
    }
}
