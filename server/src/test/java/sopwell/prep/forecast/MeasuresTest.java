package sopwell.prep.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The measures against published figures. */
class MeasuresTest {
    /** Quarterly Australian beer production, 1992 to 2007: package fpp2, series ausbeer. */
    private static final List<Double> BEER =
            numbers(
                    "443 410 420 532 433 421 410 512 449 381 423 531 426 408 416 520 409 398 398"
                            + " 507 432 398 406 526 428 397 403 517 435 383 424 521 421 402 414"
                            + " 500 451 380 416 492 428 408 406 506 435 380 421 490 435 390 412"
                            + " 454 416 403 408 482 438 386 405 491 427 383 394 473");

    private static final List<Double> THEN = numbers("420 390 410 488 415 398 419 488 414 374");

    /** Hyndman and Athanasopoulos, Forecasting, 3rd edition, section 5.9: twice ours. */
    @Test
    void pinballIsHalfOfThePublishedQuantileScore() {
        assertEquals(4.86, 2 * Measures.pinball(0.1, 744.54, 741.84), 1e-9);
    }

    /** Figures computed with an independent implementation. */
    @Test
    void pinballIsTheCostOfTooLittleOrTooMuch() {
        assertEquals(0.9 * 2, Measures.pinball(0.9, 50, 52), 1e-12);
        assertEquals(0.1 * 3, Measures.pinball(0.9, 50, 47), 1e-12);
        assertEquals(0, Measures.pinball(0.9, 50, 50), 0);
    }

    /** The same authors, 2nd edition, section 3.4: the table of the beer series; from memory. */
    @Test
    void theSeasonalNaiveForecastHasThePublishedErrors() {
        List<Double> forecasts = new ArrayList<>();
        for (int h = 1; h <= THEN.size(); h++) {
            forecasts.add(Simple.seasonalNaive(BEER, 4, h));
        }
        double scale = Measures.seasonalScale(BEER, 4);
        assertEquals(14.3, scale, 1e-9);
        assertEquals(13.40, Measures.absolute(forecasts, THEN), 0.005);
        assertEquals(0.937, Measures.absolute(forecasts, THEN) / scale, 0.0005);
    }

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.split(" ", -1)).map(Double::valueOf).toList();
    }
}
