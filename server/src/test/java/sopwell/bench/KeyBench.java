package sopwell.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sopwell.TestStand;
import sopwell.browser.Browser;
import sopwell.call.ManyCalls;

/**
 * How long the counter's page takes to answer a key: from the key to a page that is laid out anew.
 * Run by hand; see {@code DEVELOPERS.md}.
 */
public final class KeyBench {
    private static final int CALLS = 20;
    private static final String TYPE =
            """
            const [text, done] = arguments;
            const line = document.getElementById('call');
            const next = () => new Promise((then) => requestAnimationFrame(() => setTimeout(then)));
            (async () => {
                const millis = [];
                for (let end = 1; end <= text.length; end++) {
                    await next();
                    const from = performance.now();
                    line.value = text.slice(0, end);
                    line.dispatchEvent(new Event('input', {bubbles: true}));
                    document.body.getBoundingClientRect();
                    millis.push(performance.now() - from);
                }
                done(millis);
            })();
            """;

    private KeyBench() {}

    /** Types twenty calls and prints what it took. */
    public static void main(String[] args) throws java.io.IOException {
        Path folder = Files.createTempDirectory("sopwell-keys");
        try (TestStand stand = TestStand.start(folder.resolve("stand"));
                Browser browser = Browser.start(folder)) {
            browser.open(stand.address() + "/counter");
            browser.waitFor("#call-form[data-reader]");
            List<Double> millis = new ArrayList<>();
            for (String call : ManyCalls.demo(3, CALLS * 5).texts()) {
                if (call.matches("[a-z0-9, ]+")) {
                    for (Object one : (List<?>) browser.scriptLater(TYPE, call)) {
                        millis.add(((Number) one).doubleValue());
                    }
                }
            }
            millis.sort(null);
            System.out.printf(
                    java.util.Locale.ROOT,
                    "%d keys: median %.1f ms, 95th %.1f ms, worst %.1f ms%n",
                    millis.size(),
                    millis.get(millis.size() / 2),
                    millis.get((int) Math.ceil(millis.size() * 0.95) - 1),
                    millis.get(millis.size() - 1));
        }
    }
}
