package sopwell.prep.quantity;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Ways in which the next days may go. A path draws the level of the trade once and each day by
 * itself, and the same draws serve every quantity and every ingredient, so that quantities are
 * compared under the same days. Immutable.
 *
 * <p>Amounts are gamma distributed; a draw turns a normal number into one by Wilson and Hilferty's
 * cube (1931), which is good to a few per mille of the spread for shapes above 1.
 */
public final class DemandPaths {
    private static final int DRAWS = 1_000;
    private static final long SEED = 0x50F3_11A7L;

    private final double[][] levels;
    private final double[][] days;

    private DemandPaths(double[][] levels, double[][] days) {
        this.levels = levels;
        this.days = days;
    }

    /** Draws for so many days; the same draws each time. */
    public static DemandPaths ofDays(int count) {
        SplittableRandom dice = new SplittableRandom(SEED);
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double[][] levels = new double[DRAWS][1];
        double[][] days = new double[DRAWS][count];
        for (int i = 0; i < DRAWS; i += 2) {
            fill(levels, i, dice, normal);
            fill(days, i, dice, normal);
        }
        return new DemandPaths(levels, days);
    }

    /** A path and its mirror image, so that the draws' own mean is right. */
    private static void fill(
            double[][] into, int at, SplittableRandom dice, NormalDistribution normal) {
        for (int d = 0; d < into[at].length; d++) {
            double z = normal.inverseCumulativeProbability(dice.nextDouble(1e-12, 1));
            into[at][d] = z;
            into[at + 1][d] = -z;
        }
    }

    /**
     * The paths of one ingredient.
     *
     * @param means by day, from 0
     * @param variances of each day by itself
     * @param levelPhi the squared coefficient of variation that all days share
     */
    public double[][] of(List<Double> means, List<Double> variances, double levelPhi) {
        int count = means.size();
        double[] mean = means.stream().mapToDouble(Double::doubleValue).toArray();
        double[] square = new double[count];
        for (int d = 0; d < count; d++) {
            square[d] = mean[d] > 0 ? variances.get(d) / (mean[d] * mean[d]) : 0;
        }
        double[] roots = new double[count];
        for (int d = 0; d < count; d++) {
            roots[d] = Math.sqrt(square[d] / 9);
        }
        double levelRoot = Math.sqrt(levelPhi / 9);
        double[][] paths = new double[DRAWS][count];
        for (int i = 0; i < DRAWS; i++) {
            double level = cube(levels[i][0], levelPhi, levelRoot);
            for (int d = 0; d < count; d++) {
                paths[i][d] = mean[d] * level * cube(days[i][d], square[d], roots[d]);
            }
        }
        return paths;
    }

    /** A gamma number with mean 1 and this variance, a ninth of which has this root. */
    private static double cube(double z, double variance, double ninthRoot) {
        if (variance <= 0) {
            return 1;
        }
        double root = Math.max(0, 1 - variance / 9 + z * ninthRoot);
        return root * root * root;
    }
}
