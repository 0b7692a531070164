package sopwell.net;

import java.util.List;
import sopwell.browser.Browser;

/**
 * A board in a real browser over a bad link. The page notes when its banner came and went, and when
 * which place of the log was shown. Not thread-safe.
 */
final class LinkBoard implements AutoCloseable {
    private static final String NOTE =
            """
            window.noted = [];
            const board = document.querySelector('[data-board]');
            let stale = null;
            const note = () => {
                const now = document.body.classList.contains('stale');
                if (now !== stale) {
                    stale = now;
                    window.noted.push([now ? 'stale' : 'fresh', Date.now(), 0]);
                }
            };
            new MutationObserver(note).observe(document.body, {attributeFilter: ['class']});
            board.addEventListener('board:shown', () => {
                window.noted.push(['shown', Date.now(), Number(board.dataset.seq)]);
            });
            note();
            """;

    /** What each row says, but for its age, which goes on by itself. */
    private static final String DIFFERENCES =
            """
            const done = arguments[arguments.length - 1];
            const text = (e) => e.textContent.trim().replace(/\\s+/g, ' ');
            const rows = (page) => [...page.querySelectorAll('[data-row]')].map((row) =>
                [row.dataset.row, ...[...row.querySelectorAll(
                    '.number, .who, .c-quantity, .cell, .what')].map(text)].join('|'));
            fetch(location.href).then((answer) => answer.text()).then((html) => {
                const truth = rows(new DOMParser().parseFromString(html, 'text/html'));
                const shown = rows(document);
                const twice = shown.length - new Set(shown).size;
                const same = JSON.stringify(truth) === JSON.stringify(shown) && twice === 0;
                done(same ? '' : 'page shows ' + shown.join(' / ') + ' of ' + truth.join(' / '));
            }, (fault) => done('no page: ' + fault));
            """;

    /** The first time after a moment at which a place was shown and no banner stood, or -1. */
    private static final String BACK =
            """
            const [seq, from] = arguments;
            let shown = false;
            let stale = false;
            for (const [what, at, place] of window.noted) {
                stale = what === 'stale' || (stale && what !== 'fresh');
                shown = shown || (what === 'shown' && place >= seq);
                if (shown && !stale) {
                    return Math.max(0, at - from);
                }
            }
            return -1;
            """;

    private static final String STALE =
            """
            const [from, until] = arguments;
            const first = window.noted.find(([what, at]) =>
                what === 'stale' && at >= from && at <= until);
            return first ? first[1] - from : -1;
            """;

    private final Browser browser;
    private final String board;

    /** In a browser that this board closes in the end. */
    LinkBoard(Browser browser, String address, String board) {
        this.browser = browser;
        this.board = board;
        browser.open(address + "/boards/" + board);
        browser.waitText("#live", "live");
        browser.script(NOTE);
    }

    String board() {
        return board;
    }

    Browser browser() {
        return browser;
    }

    /** How long after a moment it showed a place of the log as live; the patience if it did not. */
    long awaitSeq(long seq, long fromMs, long patienceMillis) {
        while (System.currentTimeMillis() - fromMs < patienceMillis) {
            long back = (Long) browser.script(BACK, seq, fromMs);
            if (back >= 0) {
                return back;
            }
            BadLink.pause(50);
        }
        return patienceMillis;
    }

    /** How long after a moment its banner came, if it came before another moment; else -1. */
    long staleAfter(long fromMs, long untilMs) {
        return (Long) browser.script(STALE, fromMs, untilMs);
    }

    /** What differs between its rows and those of the server's own page now; empty for nothing. */
    String differences() {
        String found = "";
        for (int i = 0; i < 40; i++) {
            found = (String) browser.scriptLater(DIFFERENCES);
            if (found.isEmpty()) {
                return found;
            }
            BadLink.pause(50);
        }
        return found;
    }

    /** The texts that an element shows. */
    List<String> texts(String css) {
        return browser.texts(css);
    }

    @Override
    public void close() {
        browser.close();
    }
}
