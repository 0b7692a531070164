package sopwell.stands;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
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
        System.out.println(
                "group       ours   naive  mean4  mean8  oracle gap    .5    .75   .9" + "    .95");
        for (MadeStand.Group group : MadeStand.Group.values()) {
            Map<Who, Double> losses = new EnumMap<>(Who.class);
            double[] covered = new double[StandScore.QUANTILES.length];
            for (int seed = 1; seed <= seeds; seed++) {
                StandScore score = new StandScore(new MadeStand(group, seed), origins);
                for (Who who : Who.values()) {
                    losses.merge(who, score.loss(who) / seeds, Double::sum);
                }
                for (int q = 0; q < covered.length; q++) {
                    covered[q] += score.coverage(q) / seeds;
                }
            }
            print(group, losses, covered);
        }
    }

    private static void print(MadeStand.Group group, Map<Who, Double> losses, double[] covered) {
        double simple = losses.get(Who.MEAN_8);
        double oracle = losses.get(Who.ORACLE);
        double closed = (simple - losses.get(Who.OURS)) / (simple - oracle);
        StringBuilder line = new StringBuilder();
        line.append(String.format(Locale.ROOT, "%-10s", group));
        for (double loss : losses.values()) {
            line.append(String.format(Locale.ROOT, " %.4f", loss));
        }
        line.append(String.format(Locale.ROOT, " %.3f", closed));
        for (double share : covered) {
            line.append(String.format(Locale.ROOT, " %.3f", share));
        }
        System.out.println(line);
    }
}
