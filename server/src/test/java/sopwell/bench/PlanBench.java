package sopwell.bench;

import java.util.Arrays;
import sopwell.prep.plan.BigAsk;
import sopwell.prep.plan.PlanAsk;
import sopwell.prep.plan.Planner;
import sopwell.prep.plan.PrepPlan;

/** How long a plan of 60 ingredients and 14 days takes. */
public final class PlanBench {
    private static final int WARM = 20;
    private static final int RUNS = 50;

    private PlanBench() {}

    public static void main(String[] args) {
        PlanAsk ask = BigAsk.of(60, 14);
        PrepPlan plan = Planner.plan(ask);
        for (int i = 0; i < WARM; i++) {
            plan = Planner.plan(ask);
        }
        long[] micros = new long[RUNS];
        for (int i = 0; i < RUNS; i++) {
            long from = System.nanoTime();
            plan = Planner.plan(ask);
            micros[i] = (System.nanoTime() - from) / 1_000;
        }
        Arrays.sort(micros);
        System.out.println(
                plan.tasks().size()
                        + " tasks, "
                        + plan.orders().size()
                        + " orders, "
                        + plan.warnings().size()
                        + " warnings; median "
                        + micros[RUNS / 2] / 1_000.0
                        + " ms, slowest "
                        + micros[RUNS - 1] / 1_000.0
                        + " ms");
    }
}
