package sopwell.stands;

import java.util.Locale;
import sopwell.stands.StandScore.Who;

/** Prints how the forecast does on many made stands: {@code StandsMain [seeds] [origins]}. */
public final class StandsMain {
    private static final int SEEDS = 8;
    private static final int ORIGINS = 150;

    private StandsMain() {}

    /** Prints one line a group. */
    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : SEEDS;
        int origins = args.length > 1 ? Integer.parseInt(args[1]) : ORIGINS;
        System.out.println("group       ours   naive  mean4  mean8  oracle gap    .5    .75   .9"
 + "    .95");
        for (MadeStand.Group group : MadeStand.Group.values()) {
            double[] losses = new double[Who.values().length];
            double[] covered = new double[StandScore.QUANTILES.length];
            for (int seed = 1; seed <= seeds; seed++) {
                StandScore score = new StandScore(new MadeStand(group, seed), origins);
                for (Who who : Who.values()) {
                    losses[who.ordinal()] += score.loss(who) / seeds;
                }
                for (int q = 0; q < covered.length; q++) {
                    covered[q] += score.coverage(q) / seeds;
                }
            }
            print(group, losses, covered);
        }
    }

    private static void print(MadeStand.Group group, double[] losses, double[] covered) {
        double simple = losses[Who.MEAN_8.ordinal()];
        double oracle = losses[Who.ORACLE.ordinal()];
        double closed = (simple - losses[Who.OURS.ordinal()]) / (simple - oracle);
        StringBuilder line = new StringBuilder();
        line.append(String.format(Locale.ROOT, "%-10s", group));
        for (double loss : losses) {
            line.append(String.format(Locale.ROOT, " %.4f", loss));
        }
        line.append(String.format(Locale.ROOT, " %.3f", closed));
        for (double share : covered) {
            line.append(String.format(Locale.ROOT, " %.3f", share));
        }
        System.out.println(line);
    }
}
