package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import sopwell.TestStand;

/**
 * A station's question and the counter's answer, and two cashiers on one order, in two windows of
 * the real server.
 */
@ExtendWith(Browsers.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class QueryPathTest {
    private Browser counter;
    private Browser other;
    private TestStand stand;

    @BeforeAll
    void take(Browser first, Browser second) {
        counter = first;
        other = second;
    }

    @BeforeEach
    void open(@TempDir Path folder) {
        counter.fresh();
        other.fresh();
        stand = TestStand.start(folder.resolve("stand"));
        counter.open(stand.address() + "/counter");
        waitLive(counter);
        counter.waitFor("#call-form[data-reader]");
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void aStationAsksAndTheCounterAnswersByOneKeyWhileACallIsHalfTyped() {
        place("2 beef dipped hot", 1);
        openLine();
        askByKeys("1", "4");
        other.waitText(".row.noted .note", "Dip?");
        assertEquals(1, other.count(".cell.asked"), "the asked cell is marked");

        counter.type("#call", "beef dry, fri");
        counter.waitText(".query-what", "Line asks:");
        counter.waitText(".query-line", "dipped, hot");
        counter.waitText(".query-line", "all 2");
        assertEquals("beef dry, fri", typed(), "nothing that was typed is lost");
        waitUntilKeysAnswer();
        List<String> answers = counter.texts("[data-answer] span");
        counter.keys(key(answers.indexOf("dry")));
        counter.waitText("#query-said", "Order 1 is changed");
        counter.keys("es");
        assertEquals("beef dry, fries", typed(), "the caret stayed where it was");

        other.waitFor(".row.unseen .cell.changed");
        assertTrue(other.texts(".cell.changed s").contains("dipped"), "the old word stands");
        other.waitText(".note", "changed");
        other.keys("1");
        other.waitGone(".row.unseen");
        other.waitGone(".note");
        other.keys("1");
        other.waitGone("#board [data-row]");

        counter.open(stand.address() + "/mix/today");
        assertTrue(counter.texts(".exceptions th").contains("answered"));
        assertEquals(List.of(), other.consoleErrors());
    }

    @Test
    void asItStandsIsTheFirstKeyAndOwnWordsReachTheStation() {
        place("beef dipped", 1);
        place("beef dry, fries", 2);
        openLine();
        askByKeys("1", "4");
        counter.waitFor("[data-query]");
        waitUntilKeysAnswer();
        counter.keys(Keys.F2);
        other.waitText(".row.unseen .note", "as it stands");
        assertEquals(0, other.count(".cell.changed"));

        askByKeys("2", "5");
        counter.waitText(".query-what", "Right as is?");
        waitUntilKeysAnswer();
        counter.click("[data-words]");
        counter.keys("no salt please", Keys.ENTER);
        other.waitText(".row.unseen .note", "no salt please");
        counter.waitGone("[data-query]");
    }

    @Test
    void theSameKeyTakesAQuestionBackBeforeItIsAskedAndTheRowStaysInItsPlace() {
        place("beef dipped", 1);
        openLine();
        Object top = other.script("return document.querySelector('.row').offsetTop");
        other.keys("+");
        other.waitText("#armed", "Ask");
        other.keys("1");
        other.waitFor(".asking");
        assertEquals(top, other.script("return document.querySelector('.row').offsetTop"));
        assertEquals("", other.axe());
        other.keys("+");
        other.waitGone(".asking");
        other.click("[data-act='ask']");
        other.waitFor(".asking");
        other.keys(Keys.ESCAPE);
        other.waitGone(".asking");
        assertEquals(0, other.count(".note"), "nothing was asked");
    }

    @Test
    void startOnABegunRowSaysSo() {
        place("beef dipped", 1);
        openLine();
        other.keys(".");
        other.keys("1");
        other.waitText(".begun", "begun");
        other.keys(".");
        other.keys("1");
        other.waitText("#armed", "1 is begun already");
        other.keys(".");
        other.keys("7");
        other.waitText("#armed", "No row");
        other.waitText("#part-quote", "quote");
    }

    @Test
    void theSecondCashierIsToldWhatChangedAndCanPutTheirsOverIt() {
        place("beef dipped hot, fries", 1);
        String edit = editAddress();
        other.open(edit);
        counter.open(edit);
        retype(other, "beef dry hot, fries, cola");
        other.keys(Keys.ENTER);
        other.waitText(".done-note", "Order 1 is changed");

        retype(counter, "2 beef dipped hot, fries");
        counter.keys(Keys.ENTER);
        counter.waitText(".meanwhile", "changed meanwhile");
        assertTrue(counter.texts(".meanwhile s").contains("regular beef, dipped, hot"));
        assertTrue(counter.texts(".meanwhile .after").contains("regular beef, dry, hot"));
        counter.waitText(".meanwhile .after", "cola");
        assertEquals("2 beef dipped hot, fries", typed(), "nothing that was typed is lost");
        assertEquals("", counter.axe());
        counter.click(".meanwhile button");
        counter.waitText(".done-note", "Order 1 is changed");
        counter.open(edit);
        assertEquals("2 beef dipped hot, fries", typed().replace("regular ", ""));
    }

    @Test
    void theSecondCashierCanTakeWhatTheFirstMadeOfIt() {
        place("beef dipped", 1);
        String edit = editAddress();
        other.open(edit);
        counter.open(edit);
        retype(other, "beef dry");
        other.keys(Keys.ENTER);
        other.waitText(".done-note", "Order 1 is changed");
        retype(counter, "beef wet");
        counter.keys(Keys.ENTER);
        counter.click(".meanwhile a");
        counter.waitGone(".meanwhile");
        assertFalse(typed().contains("wet"), typed());
        assertTrue(typed().contains("dry"), typed());
    }

    private void openLine() {
        other.open(stand.address() + "/boards/line");
        waitLive(other);
    }

    private void askByKeys(String row, String what) {
        other.waitFor("[data-digit='" + row + "']");
        other.keys("+");
        other.keys(row);
        other.waitFor(".asking [data-ask='" + what + "']");
        other.keys(what);
        other.waitGone(".asking");
    }

    /** A key pressed right after the question changed is passed over, so that none is a mistake. */
    private void waitUntilKeysAnswer() {
        counter.scriptLater("setTimeout(arguments[arguments.length - 1], 600)");
    }

    private static Keys key(int place) {
        return List.of(Keys.F2, Keys.F3, Keys.F4, Keys.F7).get(place);
    }

    private String typed() {
        return (String) counter.script("return document.getElementById('call').value");
    }

    private static void retype(Browser window, String call) {
        window.waitFor("#call").sendKeys(Keys.chord(Keys.CONTROL, "a"), call);
    }

    private String editAddress() {
        return counter.waitFor("[data-row] a[href$='/edit']").getDomProperty("href");
    }

    private void place(String call, int number) {
        counter.type("#call", call);
        counter.keys(Keys.ENTER);
        counter.waitText("#answer .placed-number", "Order " + number);
        counter.script("document.getElementById('call').focus()");
    }

    private static void waitLive(Browser window) {
        window.waitText("#live", "live");
        window.waitFor("body:not(.stale) #live");
    }
}
