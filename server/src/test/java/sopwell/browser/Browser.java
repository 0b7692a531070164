package sopwell.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedCondition;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * One browser with a profile of its own: two of them are two screens that share nothing. Not
 * thread-safe. See the package's text for how to take a picture of a screen.
 */
public final class Browser implements AutoCloseable {
    /**
     * A name of this machine that browsers don't trust over plain http, as they don't trust a
     * stand's network: without service workers and locks.
     */
    public static final String PLAIN_NAME = "stand.test";

    /** What nobody looks at here, and a start or a new window pays for with a process or more. */
    private static final List<String> SPARED =
            List.of(
                    "AudioServiceOutOfProcess",
                    "ContextualTasks",
                    "Glic",
                    "InitialWebUI",
                    "MediaRouter",
                    "OptimizationGuideModelExecution",
                    "OptimizationGuideOnDeviceModel",
                    "OptimizationHints",
                    "PreloadTopChromeWebUI",
                    "SpareRendererForSitePerProcess",
                    "TabSearch",
                    "Translate",
                    "WebUIOmniboxAimPopup",
                    "WebUIOmniboxFullPopup",
                    "WebUIOmniboxPopup",
                    "WebUITabStrip",
                    "WebUIToolbar");

    /** With one line end between blocks, one space between cells, and nothing of what is hidden. */
    private static final String SHOWN_TEXTS =
            """
            return Array.from(document.querySelectorAll(arguments[0]), (one) => {
                const seen = one.checkVisibility({ visibilityProperty: true });
                const text = seen ? one.innerText : '';
                return text.replace(/[\\t\\u00a0]/g, ' ').replace(/ *\\n\\s*/g, '\\n').trim();
            });
            """;

    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** Kept here, or its level would be forgotten: it warns at each start of a newer Chromium. */
    private static final Logger NOISE = Logger.getLogger("org.openqa.selenium");

    private final ChromeDriver driver;

    /** Where pages were opened that may have kept something. */
    private final Set<String> origins = new TreeSet<>();

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Starts a browser that speaks English, with a profile that goes when it is closed. */
    static Browser start() {
        return start(Optional.empty(), "en-US");
    }

    /** Starts a browser that speaks English, its profile in a temporary folder of the test. */
    public static Browser start(Path folder) {
        return start(folder, "en-US");
    }

    /** Starts a browser that asks for pages in a language, such as {@code es}. */
    public static Browser start(Path folder, String language) {
        return startAgain(profile(folder), language);
    }

    /**
     * Starts a browser with the profile that another one left behind: what it kept is there.
     *
     * @param profile the profile's own folder
     */
    public static Browser startAgain(Path profile, String language) {
        return start(Optional.of(profile), language);
    }

    private static Browser start(Optional<Path> profile, String language) {
        Chromium chromium = Chromium.require();
        NOISE.setLevel(Level.SEVERE);
        ChromeDriverService service =
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(chromium.driver().toFile())
                        .usingAnyFreePort()
                        .withSilent(true)
                        .build();
        Browser browser =
                new Browser(new ChromeDriver(service, options(chromium, profile, language)));
        browser.size(1280, 800);
        return browser;
    }

    private static ChromeOptions options(
            Chromium chromium, Optional<Path> profile, String language) {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.program().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-software-rasterizer",
                "--disable-extensions",
                "--disable-features=" + String.join(",", SPARED),
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--no-proxy-server",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--host-resolver-rules=MAP "
                        + PLAIN_NAME
                        + " 127.0.0.1, MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1");
        profile.ifPresent(folder -> options.addArguments("--user-data-dir=" + folder));
        options.setExperimentalOption("prefs", Map.of("intl.accept_languages", language));
        options.setCapability("goog:loggingPrefs", logs);
        return options;
    }

    private static Path profile(Path folder) {
        try {
            return Files.createTempDirectory(folder, "profile");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens a page and waits until it is loaded. */
    public void open(String url) {
        URI uri = URI.create(url);
        origins.add(uri.getScheme() + "://" + uri.getAuthority());
        driver.get(url);
    }

    /**
     * As good as new: one window that saw nothing yet, no cookies, nothing kept for the addresses
     * that were open, and nothing left in the console.
     */
    public void fresh() {
        List<String> old = List.copyOf(driver.getWindowHandles());
        driver.switchTo().newWindow(WindowType.TAB);
        String fresh = driver.getWindowHandle();
        for (String handle : old) {
            driver.switchTo().window(handle).close();
        }
        driver.switchTo().window(fresh);
        driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
        for (String origin : origins) {
            driver.executeCdpCommand(
                    "Storage.clearDataForOrigin", Map.of("origin", origin, "storageTypes", "all"));
        }
        origins.clear();
        size(1280, 800);
        consoleErrors();
    }

    /** The address of the page that is open. */
    public String address() {
        return driver.getCurrentUrl();
    }

    /** Sets the inside of the window, in CSS pixels. */
    public void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        width,
                        "height",
                        height,
                        "screenWidth",
                        width,
                        "screenHeight",
                        height,
                        "deviceScaleFactor",
                        1,
                        "mobile",
                        false));
    }

    /** Shows pages as someone who has asked for dark ({@code dark}) or light colours. */
    public void colours(String scheme) {
        Map<String, String> feature = Map.of("name", "prefers-color-scheme", "value", scheme);
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia", Map.of("features", List.of(feature)));
    }

    /** Waits until an element is there, and returns the first. */
    public WebElement waitFor(String css) {
        return patience()
                .withMessage(() -> "no " + css + " on " + address())
                .until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(css)));
    }

    /** Waits until no element fits. */
    public void waitGone(String css) {
        patience()
                .withMessage(() -> "still " + css + " on " + address())
                .until(d -> d.findElements(By.cssSelector(css)).isEmpty());
    }

    /** Waits until an element that fits shows a text, among other text. */
    public void waitText(String css, String text) {
        patience()
                .withMessage(() -> "no \"" + text + "\" in " + css + ", but: " + texts(css))
                .until(d -> texts(css).stream().anyMatch(shown -> shown.contains(text)));
    }

    /** The shown texts of all elements that fit, in the order of the page, with one question. */
    public List<String> texts(String css) {
        List<?> texts = (List<?>) driver.executeScript(SHOWN_TEXTS, css);
        return texts.stream().map(String.class::cast).toList();
    }

    /** How many elements fit. */
    public int count(String css) {
        return driver.findElements(By.cssSelector(css)).size();
    }

    /** Waits until an element can be clicked, and clicks it. */
    public void click(String css) {
        ExpectedCondition<WebElement> there =
                ExpectedConditions.elementToBeClickable(By.cssSelector(css));
        patience()
                .withMessage(() -> "cannot click " + css + " on " + address())
                .ignoring(StaleElementReferenceException.class)
                .until(driver -> clicked(there.apply(driver)));
    }

    /** An element that is drawn anew meanwhile is looked for again, as a finger would. */
    private static boolean clicked(WebElement element) {
        if (element == null) {
            return false;
        }
        element.click();
        return true;
    }

    /** Types into a field, after what is in it. */
    public void type(String css, CharSequence... text) {
        waitFor(css).sendKeys(text);
    }

    /** Presses keys where the focus is. */
    public void keys(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    /** Runs a script in the page; {@code return} gives its value. */
    public Object script(String javaScript, Object... arguments) {
        return driver.executeScript(javaScript, arguments);
    }

    /** Runs a script that calls its last argument when it is done, with what is returned here. */
    public Object scriptLater(String javaScript, Object... arguments) {
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
        return driver.executeAsyncScript(javaScript, arguments);
    }

    /** Opens a page in a further window of the same browser, and gives the window's handle. */
    public String openWindow(String url) {
        driver.switchTo().newWindow(WindowType.TAB);
        open(url);
        return driver.getWindowHandle();
    }

    /** The window that is looked at. */
    public String window() {
        return driver.getWindowHandle();
    }

    /** Looks at another window. */
    public void look(String window) {
        driver.switchTo().window(window);
    }

    /** Cuts the page off from the network, or connects it again. */
    public void offline(boolean cut) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of(
                        "offline",
                        cut,
                        "latency",
                        0,
                        "downloadThroughput",
                        -1,
                        "uploadThroughput",
                        -1));
    }

    /** Has the page stand still, as a browser does with one that nobody sees, or go on again. */
    public void frozen(boolean still) {
        driver.executeCdpCommand(
                "Page.setWebLifecycleState", Map.of("state", still ? "frozen" : "active"));
    }

    /** A measure of the page, such as {@code JSHeapUsedSize} in bytes, with its garbage gone. */
    public long measured(String name) {
        driver.executeCdpCommand("Performance.enable", Map.of());
        driver.executeCdpCommand("HeapProfiler.collectGarbage", Map.of());
        Object metrics =
                driver.executeCdpCommand("Performance.getMetrics", Map.of()).get("metrics");
        for (Object one : (List<?>) metrics) {
            Map<?, ?> metric = (Map<?, ?>) one;
            if (name.equals(metric.get("name"))) {
                return ((Number) metric.get("value")).longValue();
            }
        }
        throw new IllegalStateException("the browser measures no " + name);
    }

    /** Saves what is in the window as a PNG file, whose folder is made if need be. */
    public void screenshot(Path file) {
        try {
            Path whole = file.toAbsolutePath();
            Files.createDirectories(whole.getParent());
            Files.write(whole, driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What axe finds wrong with the page for people with disabilities, WCAG 2.2's target size
     * included: one line for each serious or critical finding, and nothing when there is none.
     */
    public String axe() {
        return Axe.everything(driver);
    }

    /** The same of its colours alone. */
    public String axeOfColours() {
        return Axe.colours(driver);
    }

    /** The same of everything but its colours. */
    public String axeBesidesColours() {
        return Axe.besidesColours(driver);
    }

    /** Errors in the browser's console since the last call; a broken content policy is one. */
    public List<String> consoleErrors() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.SEVERE.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    @Override
    public void close() {
        driver.quit();
    }

    private WebDriverWait patience() {
        WebDriverWait wait = new WebDriverWait(driver, PATIENCE, Duration.ofMillis(80));
        wait.ignoring(StaleElementReferenceException.class);
        return wait;
    }
}
