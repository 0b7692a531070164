/**
 * A real browser for the tests.
 *
 * <p>Purpose: {@link sopwell.browser.Browser} drives Chromium against a server of ours on this
 * machine. Rules: nothing is downloaded, and no page outside this machine can be reached. A machine
 * without Chromium skips these tests and says how to get it; with {@code SOPWELL_REQUIRE_BROWSER=1}
 * it fails them. Threading: one test thread for each browser.
 *
 * <p>A picture of a screen: open a page, give the window its size, and save it. The folder {@code
 * target} is forgotten by {@code mvn clean}.
 *
 * <pre>{@code
 * try (Browser browser = Browser.start(temporaryFolder)) {
 *     browser.size(1280, 800);
 *     browser.open(server.url("/boards/line"));
 *     browser.waitFor("[data-live]");
 *     browser.screenshot(Path.of("target/screens/line.png"));
 * }
 * }</pre>
 */
package sopwell.browser;
