package sopwell.prep.forecast;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.Sold;

/**
 * A bare daily series, births in the United States of 1978, without a calendar: the last hundred
 * origins, one to five days ahead, four quantiles, scaled by the seasonal naive error.
 */
class BirthsTest {
    /** What {@code ets} of R's package forecast 8.20 comes to on the same days. */
    private static final double R_ETS = 0.3844393;

    private static final int ORIGINS = 100;
    private static final int AHEAD = 5;
    private static final double[] QUANTILES = {0.5, 0.75, 0.9, 0.95};

    @Test
    void aBareSeriesIsForecastAsWellAsByExponentialSmoothingThatIsFitted() throws IOException {
        double loss = loss(series());
        assertTrue(loss <= R_ETS, loss + " against " + R_ETS);
    }

    private static double loss(List<PastDay> days) {
        Forecaster forecaster = new Forecaster(30, Guesses.NONE);
        int first = days.size() - AHEAD - ORIGINS;
        List<Double> before = days.subList(0, first).stream().map(BirthsTest::count).toList();
        double scale = Measures.seasonalScale(before, 7);
        double sum = 0;
        int count = 0;
        for (int t = 0; t + AHEAD < days.size(); t++) {
            forecaster.learn(days.get(t));
            if (t < first) {
                continue;
            }
            List<ComingDay> next = new ArrayList<>();
            for (int h = 1; h <= AHEAD; h++) {
                next.add(ComingDay.usual(days.get(t + h).date()));
            }
            for (DayForecast day : forecaster.forecast(next)) {
                int[] values = day.total().quantiles(QUANTILES);
                for (int q = 0; q < QUANTILES.length; q++) {
                    double came = count(days.get(t + day.horizon()));
                    sum += Measures.pinball(QUANTILES[q], values[q], came) / scale;
                    count++;
                }
            }
        }
        return sum / count;
    }

    private static double count(PastDay day) {
        return day.sold().get(0).pieces();
    }

    private static List<PastDay> series() throws IOException {
        List<PastDay> days = new ArrayList<>();
        try (BufferedReader reader =
                new BufferedReader(
                        new InputStreamReader(
                                BirthsTest.class.getResourceAsStream("/forecast/births1978.csv"),
                                StandardCharsets.UTF_8))) {
            for (String line : reader.lines().skip(1).toList()) {
                String[] cells = line.replace("\"", "").split(",", -1);
                Sold sold = new Sold(24, "births", "", List.of(), Integer.parseInt(cells[1]));
                days.add(
                        new PastDay(
                                LocalDate.parse(cells[0]),
                                true,
                                Hours.UNKNOWN,
                                List.of(sold),
                                List.of(),
                                List.of(),
                                List.of()));
            }
        }
        return days;
    }
}
