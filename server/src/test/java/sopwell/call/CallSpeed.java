package sopwell.call;

import java.util.List;
import java.util.Locale;

/**
 * Measures what reading and printing a call costs, warm, on one thread. Not a test; the command is
 * in docs/fuzzing.md.
 */
public final class CallSpeed {
    private static final int ROUNDS = 5;
    private static final int READS_PER_ROUND = 30_000;

    private CallSpeed() {}

    /** Prints microseconds per call for some typical calls. */
    public static void main(String[] args) {
        CallParser parser = new CallParser(DemoMenu.read());
        CallPrinter printer = new CallPrinter(parser);
        List<String> calls =
                List.of(
                        "fries",
                        "2 beef dipped hot, fries",
                        "2 beef dipped hot, beef dry prov sweet, fries",
                        "dos res bañadas picantes, papas y 2 aguas",
                        "hot dog everything no onion, large cola, combo twice both extra",
                        "2 beef dipped hott, fries");
        for (String call : calls) {
            List<Counted> lines = parser.read(call).counted();
            double read = micros(() -> parser.read(call).spans().size());
            double print = micros(() -> printer.print(lines).length());
            System.out.printf(
                    Locale.ROOT, "read %7.2f us   print %7.2f us   %s%n", read, print, call);
        }
    }

    private static double micros(java.util.function.IntSupplier work) {
        double best = Double.MAX_VALUE;
        long sum = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            for (int i = 0; i < READS_PER_ROUND; i++) {
                sum += work.getAsInt();
            }
            double micros = (System.nanoTime() - start) / 1_000.0 / READS_PER_ROUND;
            best = Math.min(best, micros);
        }
        if (sum < 0) {
            throw new IllegalStateException("lengths are never negative");
        }
        return best;
    }
}
