package sopwell.net;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import sopwell.browser.Browser;
import sopwell.browser.Browsers;
import sopwell.web.StandServer;

/** Short cuts of a link: boards say that they are old, and come back whole and soon. */
@ExtendWith(Browsers.class)
class CutTest {
    private static final int BACK_MILLIS_MAX = 3_000;
    private static final int STALE_MILLIS_MAX = 5_000;

    @Test
    void boardsAreBackThreeSecondsAfterTheirLinkWithNothingMissedAndNothingTwice()
            throws IOException {
        try (StandServer stand = StandServer.fresh();
                CutRun run =
                        new CutRun(stand.uri("").toString(), List.of(Cut.values()), 2, null, 300)) {
            for (int millis : new int[] {1_000, 5_500}) {
                run.cut(millis);
            }
            for (Tally tally : run.tallies().values()) {
                assertEquals("", tally.difference());
                assertEquals(0, tally.missed() + tally.twice() + tally.liveWhileCut());
                assertTrue(tally.worstBack() <= BACK_MILLIS_MAX, tally::toString);
                assertTrue(tally.worstStale() <= STALE_MILLIS_MAX, tally::toString);
            }
            assertEquals(run.orders().get(1), run.orders().get(0), "each order once");
            assertEquals(List.of(), run.faults());
        }
    }

    @Test
    void aBoardInABrowserSaysThatItIsOldAndThatAPressWaits(Browser browser) throws IOException {
        try (StandServer stand = StandServer.fresh();
                BadLink link = new BadLink(stand.port())) {
            stand.place("beef dipped");
            LinkBoard page = new LinkBoard(browser, link.address(), "line");
            long cutAtMs = System.currentTimeMillis();
            link.cut(Cut.SILENT);
            String order = stand.place("beef dry").path("order").textValue();
            page.browser().keys(".");
            page.browser().keys("1");
            page.browser().waitText("#said", "No answer yet");
            page.browser().waitFor("body.stale");
            page.browser().waitText("#live", "Not live");
            long stale = page.staleAfter(cutAtMs, Long.MAX_VALUE);
            assertTrue(stale >= 0 && stale <= STALE_MILLIS_MAX, "stale after " + stale);
            long seq = stand.get("/api/boards/line").json().path("seq").longValue();
            long healedAtMs = System.currentTimeMillis();
            link.heal();
            long back = page.awaitSeq(seq, healedAtMs, 10_000);
            assertTrue(back <= BACK_MILLIS_MAX, "back after " + back);
            assertEquals("", page.differences());
            page.browser().waitFor("#row-" + order.replace(".", "\\.") + "\\.1\\.line");
            page.browser().waitText("#said", "did not answer");
            page.browser().keys(Keys.ESCAPE);
            page.browser().keys(".");
            page.browser().keys("1");
            page.browser().waitText("[data-row] .begun", "");
            assertEquals("", page.differences());
        }
    }
}
