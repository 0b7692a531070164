package sopwell.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.Keys;
import sopwell.TestStand;
import sopwell.browser.Browser;

/**
 * What twenty usual calls cost at the counter in taps and keys, counted by the page while a script
 * drives it, and the seconds that the Keystroke-Level Model predicts for them. Run by hand; see
 * {@code DEVELOPERS.md}.
 *
 * <p>Operators (Card, Moran and Newell 1983): K 0.20 s for an average skilled typist and 0.28 s for
 * somebody who is no typist; P 1.10 s to point and B 0.10 s to press; M 1.35 s to make ready, once
 * a call, since the cashier repeats what is heard. P was measured with a mouse: that a finger takes
 * as long is an assumption.
 */
public final class CounterBench {
    private static final double K_SKILLED = 0.20;
    private static final double K_UNSKILLED = 0.28;
    private static final double POINT_AND_PRESS = 1.10 + 0.10;
    private static final double MAKE_READY = 1.35;
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private static final String COUNT =
            """
            window.counted = {taps: 0, keys: 0};
            document.addEventListener('click', () => { window.counted.taps += 1; }, true);
            document.addEventListener('keydown', () => { window.counted.keys += 1; }, true);
            """;

    private final Browser browser;
    private final String address;

    private CounterBench(Browser browser, String address) {
        this.browser = browser;
        this.address = address;
    }

    private record Call(boolean twoModifiers, String said, String brief, List<String> taps) {}

    private record Cost(int taps, int keys, int briefKeys, int saidLength) {}

    /** Places each call three ways and prints what it took. */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createTempDirectory("sopwell-counter");
        List<Cost> all = new ArrayList<>();
        List<Cost> sandwiches = new ArrayList<>();
        try (TestStand stand = TestStand.start(folder.resolve("stand"));
                Browser browser = Browser.start(folder)) {
            CounterBench bench = new CounterBench(browser, stand.address());
            System.out.println("taps  keys  short  call");
            for (Call call : calls()) {
                Cost cost =
                        new Cost(
                                bench.tap(call),
                                bench.type(call.said(), call.said()),
                                bench.type(call.brief(), call.said()),
                                call.said().length());
                System.out.printf(
                        Locale.ROOT,
                        "%4d %5d %6d  %s%n",
                        cost.taps(),
                        cost.keys(),
                        cost.briefKeys(),
                        call.said());
                all.add(cost);
                if (call.twoModifiers()) {
                    sandwiches.add(cost);
                }
            }
        }
        print("sandwich with two modifiers", sandwiches);
        print("all twenty", all);
    }

    private static void print(String what, List<Cost> costs) {
        double taps = median(costs.stream().map(c -> (double) c.taps()).toList());
        double keys = median(costs.stream().map(c -> (double) c.keys()).toList());
        double brief = median(costs.stream().map(c -> (double) c.briefKeys()).toList());
        double ratio = median(costs.stream().map(c -> (double) c.keys() / c.saidLength()).toList());
        System.out.printf(
                Locale.ROOT,
                "%s, medians: %.1f taps (aim 6), predicted %.2f s (aim 4.50)%n"
                        + "  typed in full %.1f keys, %.2f of the call's length (aim 1.20): %.2f s,"
                        + " no typist %.2f s%n"
                        + "  typed short   %.1f keys: %.2f s, no typist %.2f s%n",
                what,
                taps,
                MAKE_READY + taps * POINT_AND_PRESS,
                keys,
                ratio,
                MAKE_READY + keys * K_SKILLED,
                MAKE_READY + keys * K_UNSKILLED,
                brief,
                MAKE_READY + brief * K_SKILLED,
                MAKE_READY + brief * K_UNSKILLED);
    }

    private int tap(Call call) {
        fresh();
        for (String word : call.taps()) {
            Matcher figure = NUMBER.matcher(word);
            boolean isFigure = word.startsWith("n") && figure.find();
            browser.click(
                    isFigure
                            ? "[data-word='n'][data-text='" + figure.group() + "']"
                            : "[data-word='" + word + "']");
        }
        String read = readBack();
        browser.click("button.place");
        browser.waitFor("#answer .placed");
        return placed(call.said(), read, "taps");
    }

    private int type(String text, String said) {
        fresh();
        browser.type("#call", text);
        String read = readBack();
        browser.type("#call", Keys.ENTER);
        browser.waitFor("#answer .placed");
        return placed(said, read, "keys");
    }

    private void fresh() {
        browser.open(address + "/counter");
        browser.waitFor("#call-form[data-reader]");
        browser.script(COUNT);
    }

    private String readBack() {
        browser.waitFor("#reading .read-back li");
        return String.join(", ", browser.texts("#reading .read-back .said"));
    }

    /** What it took; an order that is not what was said would make the count worthless. */
    private int placed(String said, String read, String what) {
        int took = ((Number) browser.script("return window.counted." + what)).intValue();
        fresh();
        browser.type("#call", said);
        String expected = readBack();
        if (!expected.equals(read)) {
            throw new IllegalStateException(said + " was read as " + read + ", not " + expected);
        }
        return took;
    }

    private static List<Call> calls() throws IOException {
        List<Call> calls = new ArrayList<>();
        try (InputStream in =
                CounterBench.class.getResourceAsStream("/tables/counter-calls.table")) {
            String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (String line : table.lines().filter(l -> !l.startsWith("#")).toList()) {
                String[] cells = line.split("\\|", -1);
                boolean starred = cells[0].startsWith("* ");
                calls.add(
                        new Call(
                                starred,
                                cells[0].substring(starred ? 2 : 0).strip(),
                                cells[1].strip(),
                                List.of(cells[2].strip().split(" ", -1))));
            }
        }
        return calls;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1
                ? sorted.get(half)
                : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }
}
