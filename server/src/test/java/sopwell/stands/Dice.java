package sopwell.stands;

import java.util.SplittableRandom;

/** Draws from distributions. Stateless. */
final class Dice {
    private Dice() {}

    /** A gamma variate of scale 1: Marsaglia and Tsang (2000). */
    static double gamma(SplittableRandom dice, double shape) {
        if (shape < 1) {
            return gamma(dice, shape + 1) * Math.pow(dice.nextDouble(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = dice.nextGaussian();
            double v = Math.pow(1 + c * x, 3);
            if (v > 0) {
                double u = dice.nextDouble();
                if (Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
                    return d * v;
                }
            }
        }
    }

    /** A Poisson variate: by products of uniforms, larger means in halves. */
    static int poisson(SplittableRandom dice, double mean) {
        if (mean > 30) {
            return poisson(dice, mean / 2) + poisson(dice, mean / 2);
        }
        double limit = Math.exp(-mean);
        double product = dice.nextDouble();
        int count = 0;
        while (product > limit) {
            product *= dice.nextDouble();
            count++;
        }
        return count;
    }
}
