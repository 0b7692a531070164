package sopwell.prep.forecast;

/**
 * The logarithm of the gamma function, as the counts need it: Stirling's series from 12 on, carried
 * down by the recurrence below. Good to 1e-13 relative. Stateless.
 */
final class Gammas {
    private static final double SERIES_FROM = 12;
    private static final double HALF_LOG_2PI = 0.5 * Math.log(2 * Math.PI);
    private static final int TABLE = 4_096;
    private static final double[] LOG_FACTORIALS = logFactorials();

    private Gammas() {}

    /** ln gamma(x), for x above 0. */
    static double log(double x) {
        double factor = 1;
        double at = x;
        while (at < SERIES_FROM) {
            factor *= at;
            at++;
        }
        double whole = series(at);
        return factor == 1 ? whole : whole - Math.log(factor);
    }

    /** ln n!, for n from 0. */
    static double logFactorial(int n) {
        return n < TABLE ? LOG_FACTORIALS[n] : series(n + 1.0);
    }

    private static double series(double x) {
        double inverse = 1 / x;
        double square = inverse * inverse;
        double tail =
                inverse
                        * (1.0 / 12
                                - square
                                        * (1.0 / 360
                                                - square
                                                        * (1.0 / 1_260
                                                                - square
                                                                        * (1.0 / 1_680
                                                                                - square
                                                                                        / 1_188))));
        return (x - 0.5) * Math.log(x) - x + HALF_LOG_2PI + tail;
    }

    private static double[] logFactorials() {
        double[] table = new double[TABLE];
        for (int n = 2; n < TABLE; n++) {
            table[n] = log(n + 1.0);
        }
        return table;
    }
}
