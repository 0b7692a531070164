package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sopwell.TestStand;
import sopwell.call.ManyCalls;
import sopwell.counter.CallViews;
import sopwell.counter.Kit;
import sopwell.counter.ViewJson;
import sopwell.menu.Lang;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.money.CashRule;
import sopwell.money.TaxRule;
import sopwell.orders.Outs;
import sopwell.web.Texts;

/** The page reads, prices and words every call as the server does, and at once. */
@ExtendWith(Browsers.class)
class PageReaderTest {
    private static final int PER_KEY_MILLIS_MAX = 50;
    private static final TaxRule TAX = new TaxRule(8_250);
    private static final String READ =
            """
            const [kit, calls, outs, done] = arguments;
            const ascii = (text) => text.replace(/[^\\x20-\\x7e]/g,
                (c) => '\\\\u' + c.charCodeAt(0).toString(16).padStart(4, '0'));
            const js = document.querySelector('script[src*="/reading.js"]').src;
            import(js.replace('/reading.js', '/reader.js')).then((module) => {
                const reader = module.open(kit);
                done(JSON.parse(calls).map(
                    (call, at) => ascii(reader.read(call, at % 2 === 1, outs, '1000'))));
            }).catch((fault) => done(['' + fault]));
            """;

    private static TestStand stand;
    private static Browser browser;

    @BeforeAll
    static void open(Browser shared, @TempDir Path folder) {
        browser = shared;
        stand = TestStand.start(folder.resolve("stand"));
        browser.open(stand.address() + "/counter");
        browser.waitFor("#call-form[data-reader]");
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @Test
    void readsTheDemosCallsAsTheServerDoes() {
        for (Lang lang : Lang.values()) {
            compare(ManyCalls.demo(11, 1_000), lang);
            compare(ManyCalls.demo(System.nanoTime(), 1_000), lang);
        }
    }

    @Test
    void readsTheCallsOfAnyMenuAsTheServerDoes() {
        for (long seed = 0; seed < 12; seed++) {
            compare(ManyCalls.other(seed, 150), seed % 2 == 0 ? Lang.EN : Lang.ES);
        }
    }

    @Test
    void refusesWhatIsOutAsTheServerDoes() {
        List<Shortage> shortages =
                List.of(
                        new Shortage(Out.item("fries"), 0, 0),
                        new Shortage(Out.item("cola"), 0, 900),
                        new Shortage(Out.size("beef", "large"), 0, 2_000),
                        new Shortage(Out.option("hot"), 3, 0));
        for (Lang lang : Lang.values()) {
            compare(ManyCalls.demo(21, 500), lang, shortages);
        }
    }

    @Test
    void readsEveryKindOfCharacterAsTheServerDoes() {
        List<String> texts = new ArrayList<>();
        for (int from = 0x20; from < 0x30000; from += 64) {
            StringBuilder text = new StringBuilder();
            for (int point = from; point < from + 64; point++) {
                if (Character.isDefined(point) && !Character.isSurrogate((char) point)) {
                    text.append('a').appendCodePoint(point).append("b ");
                }
            }
            texts.add(text.toString());
        }
        for (int point = 0xe0000; point < 0xe0200; point++) {
            if (Character.isDefined(point)) {
                texts.add(new StringBuilder("u").appendCodePoint(point).append("a").toString());
            }
        }
        compare(new ManyCalls.Case(ManyCalls.demo(1, 1).menu(), texts), Lang.EN);
    }

    @Test
    void showsWhatTheServerWouldShow() {
        String draw =
                """
                const [calls, done] = arguments;
                const same = (text) => text.replace(/ data-live="[^"]*"| aria-label="Read back"/g,
                    '') + ' ' + document.getElementById('reading').dataset.live;
                const html = (id) => same(document.getElementById(id).outerHTML)
                    .replace(/\\s+/g, ' ').replace(/> </g, '><').replace(/ hx-[a-z-]+="[^"]*"/g, '')
                    .replace(/<dl class="sums"><div>.*?<\\/div>/, '<dl class="sums">');
                const line = document.getElementById('call');
                const found = [];
                (async () => {
                    for (const call of calls) {
                        line.value = call;
                        line.dispatchEvent(new Event('input'));
                        const here = html('hints') + html('reading');
                        const answer = await fetch('/counter/reading', {method: 'POST',
                            headers: {'Content-Type': 'application/x-www-form-urlencoded'},
                            body: new URLSearchParams({call})});
                        const there = new DOMParser().parseFromString(
                            await answer.text(), 'text/html');
                        document.getElementById('hints').replaceWith(
                            document.importNode(there.getElementById('hints'), true));
                        document.getElementById('reading').replaceWith(
                            document.importNode(there.getElementById('reading'), true));
                        const server = html('hints') + html('reading');
                        if (here !== server) {
                            found.push(call + '\\n' + here + '\\n' + server);
                        }
                    }
                    done(found.join('\\n\\n'));
                })().catch((fault) => done('' + fault));
                """;
        List<String> calls =
                new ArrayList<>(
                        ManyCalls.demo(5, 120).texts().stream().map(this::oneLine).toList());
        calls.addAll(List.of("", "beef dry dipped", "2 beef 3", "larg beef", "no", "fries hot"));
        assertEquals("", browser.scriptLater(draw, calls));
        assertEquals(List.of(), browser.consoleErrors());
    }

    @Test
    void answersEachKeyWithinFiftyMilliseconds() {
        String type =
                """
                const [text, done] = arguments;
                const line = document.getElementById('call');
                const shown = () => new Promise((then) => requestAnimationFrame(() => {
                    const channel = new MessageChannel();
                    channel.port1.onmessage = then;
                    channel.port2.postMessage(0);
                }));
                (async () => {
                    const millis = [];
                    for (let end = 1; end <= text.length; end++) {
                        await shown();
                        const from = performance.now();
                        line.value = text.slice(0, end);
                        line.dispatchEvent(new Event('input', {bubbles: true}));
                        document.body.getBoundingClientRect();
                        millis.push(performance.now() - from);
                    }
                    done(millis);
                })();
                """;
        String call = "2 beef dipped hot, beef dry prov sweet, large sausage both, 3 fries, cola";
        browser.scriptLater(type, call);
        List<Double> millis =
                ((List<?>) browser.scriptLater(type, call))
                        .stream().map(n -> ((Number) n).doubleValue()).sorted().toList();
        double ninetyFifth = millis.get((int) Math.ceil(millis.size() * 0.95) - 1);
        assertTrue(ninetyFifth <= PER_KEY_MILLIS_MAX, () -> "95th of " + millis);
    }

    private String oneLine(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints()
                .filter(c -> c >= ' ' && c != 0x7f && !(c >= 0xd800 && c < 0xe000))
                .forEach(out::appendCodePoint);
        return out.toString().replaceAll("\\p{C}|[\\u2028\\u2029]", "");
    }

    private static void compare(ManyCalls.Case some, Lang lang) {
        compare(some, lang, List.of());
    }

    private static void compare(ManyCalls.Case some, Lang lang, List<Shortage> shortages) {
        Kit kit = Kit.of(some.menu(), TAX, CashRule.USUAL, Texts.load().in(lang).phrases());
        CallViews views = kit.views();
        StringBuilder calls = new StringBuilder("[");
        for (String text : some.texts()) {
            calls.append(calls.length() == 1 ? "\"" : ",\"");
            text.chars().forEach(c -> calls.append(escaped((char) c)));
            calls.append('"');
        }
        List<?> read =
                (List<?>)
                        browser.scriptLater(
                                READ,
                                kit.written(),
                                calls.append(']').toString(),
                                shortages.stream()
                                        .map(s -> s.out() + " " + s.left() + " " + s.untilMs())
                                        .collect(Collectors.joining(";")));
        assertEquals(some.texts().size(), read.size(), () -> "" + read.get(0));
        for (int i = 0; i < read.size(); i++) {
            String text = some.texts().get(i);
            StringBuilder here = new StringBuilder();
            ViewJson.write(views.of(text, i % 2 == 1, Outs.of(shortages), 1_000))
                    .chars()
                    .forEach(c -> here.append(c >= ' ' && c < 0x7f ? "" + (char) c : escaped(c)));
            assertEquals(here.toString(), read.get(i), () -> "of the call: " + text);
        }
    }

    private static String escaped(int c) {
        String hex = Integer.toHexString(c);
        return "\\u" + "0".repeat(4 - hex.length()) + hex;
    }
}
