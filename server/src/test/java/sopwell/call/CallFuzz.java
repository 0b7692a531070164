package sopwell.call;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import sopwell.menu.Menu;

/**
 * Reads mutated calls for as long as it is told to, on the demo's menu and on invented ones, and
 * stops at the first text that breaks a law of {@link Readings}, throws, or takes long. Not a test;
 * the command is in docs/fuzzing.md. The same seed tries the same texts.
 */
public final class CallFuzz {
    private static final int TEXTS_PER_MENU = 2_000;
    private static final int INVENTED_MENUS = 200;

    private static final String MARKS = " \t\n,;/x2909\u0301\u0000";

    /** Processor time within which any text is read, warm or not; the wall clock is others' too. */
    private static final long SLOW_MILLIS = 500;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final SplittableRandom random;
    private long texts;
    private long refused;
    private long slowestNanos;

    private CallFuzz(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Arguments: seconds, and a seed. */
    public static void main(String[] args) {
        long seconds = args.length > 0 ? Long.parseLong(args[0]) : 60;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        CallFuzz fuzz = new CallFuzz(seed);
        try {
            fuzz.run(System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds));
        } catch (AssertionError broken) {
            throw new AssertionError("seed " + seed + ": " + broken.getMessage(), broken);
        }
        System.out.printf(
                Locale.ROOT,
                "%d texts read, %d refused, slowest %.1f ms of processor time, seed %d:"
                        + " no law broken%n",
                fuzz.texts,
                fuzz.refused,
                fuzz.slowestNanos / 1e6,
                seed);
    }

    private void run(long deadlineNanos) {
        Menu demo = DemoMenu.read();
        for (long round = 0; System.nanoTime() < deadlineNanos; round++) {
            boolean invented = round % 2 == 1;
            Menu menu = invented ? RandomMenus.menu(random.nextInt(INVENTED_MENUS)) : demo;
            CallParser parser = new CallParser(menu);
            RandomCalls calls = new RandomCalls(menu, random.nextLong());
            for (int i = 0; i < TEXTS_PER_MENU && System.nanoTime() < deadlineNanos; i++) {
                String text = random.nextBoolean() ? calls.mixture(30) : printed(parser, calls);
                one(parser, mutated(text, RandomCalls.allWords(menu)));
            }
        }
    }

    private static String printed(CallParser parser, RandomCalls calls) {
        List<Counted> order = calls.order(6);
        String text = new CallPrinter(parser).print(order);
        if (!parser.read(text).counted().equals(order)) {
            throw new AssertionError("printed and read differ: " + text);
        }
        return text;
    }

    private void one(CallParser parser, String text) {
        long start = THREADS.getCurrentThreadCpuTime();
        Reading reading;
        try {
            reading = Readings.check(parser, text);
        } catch (RuntimeException e) {
            throw new AssertionError("threw on " + parser.menu().revision() + ": " + text, e);
        }
        long nanos = THREADS.getCurrentThreadCpuTime() - start;
        if (nanos > TimeUnit.MILLISECONDS.toNanos(SLOW_MILLIS)) {
            throw new AssertionError("slow: " + text);
        }
        slowestNanos = Math.max(slowestNanos, nanos);
        texts++;
        refused += reading.refusal().isPresent() ? 1 : 0;
        if (reading.refusal().isEmpty()) {
            List<Counted> lines = reading.counted();
            String printed = new CallPrinter(parser).print(lines);
            if (!parser.read(printed).counted().equals(lines)) {
                throw new AssertionError("read, printed and read differ: " + text);
            }
        }
    }

    private String mutated(String text, List<String> words) {
        StringBuilder changed = new StringBuilder(text);
        int changes = random.nextInt(5);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(changed.length() + 1);
            int to = Math.min(changed.length(), at + random.nextInt(6));
            switch (random.nextInt(7)) {
                case 0 -> changed.delete(at, to);
                case 1 -> changed.insert(at, changed.substring(at, to));
                case 2 -> changed.insert(at, (char) random.nextInt(0x10000));
                case 3 -> changed.insert(at, Character.toChars(random.nextInt(0x110000)));
                case 4 -> changed.insert(at, MARKS.charAt(random.nextInt(MARKS.length())));
                case 5 -> changed.insert(at, words.get(random.nextInt(words.size())));
                default -> repeat(changed, at, to);
            }
        }
        return changed.toString();
    }

    private void repeat(StringBuilder changed, int at, int to) {
        if (random.nextInt(20) == 0) {
            changed.insert(at, changed.substring(at, to).repeat(1 + random.nextInt(500)));
        }
    }
}
