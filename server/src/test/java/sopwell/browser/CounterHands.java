package sopwell.browser;

import org.openqa.selenium.Keys;

/** What a cashier does at the counter's page, for the tests of its outbox. Stateless. */
final class CounterHands {
    private CounterHands() {}

    /** Waits until the page reads calls. */
    static void ready(Browser counter) {
        counter.waitFor("#call-form[data-reader]");
    }

    /** Types a call and places it; what is said of it begins like this. */
    static void place(Browser counter, String call, String said) {
        counter.script("document.getElementById('call').focus()");
        counter.type("#call", call);
        counter.type("#call", Keys.ENTER);
        counter.waitText("#answer .placed-number", said);
        counter.waitFor("#call:placeholder-shown");
    }
}
