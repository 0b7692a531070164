package sopwell.sim;

import java.util.Locale;

/**
 * Plays days by the thousand: {@code SimMain COUNT [FIRST_SEED [STEPS]]}. Without a first seed they
 * are fresh ones. Ends with 1 at the first that goes wrong.
 */
public final class SimMain {
    private SimMain() {}

    /** Plays and prints how many went well. */
    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 1_000;
        long first = args.length > 1 ? Long.parseLong(args[1]) : System.nanoTime();
        int steps = args.length > 2 ? Integer.parseInt(args[2]) : DaySim.STEPS;
        long from = System.nanoTime();
        for (int i = 0; i < count; i++) {
            try (Store store = Store.memory()) {
                new DaySim(first + i, store).play(steps);
            } catch (SimFailure failure) {
                System.out.println(failure.getMessage());
                if (failure.getCause() != null) {
                    failure.getCause().printStackTrace(System.out);
                }
                System.exit(1);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d days of %d steps from seed %d went well in %.1f s%n",
                count,
                steps,
                first,
                (System.nanoTime() - from) / 1e9);
    }

    /** The shortest command that plays a day up to a step. */
    static String command(long seed, int step) {
        return "java -cp target/test-classes:target/sopwell.jar sopwell.sim.SimMain 1 "
                + seed
                + " "
                + step;
    }
}
