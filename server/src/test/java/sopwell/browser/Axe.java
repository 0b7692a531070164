package sopwell.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.openqa.selenium.chrome.ChromeDriver;

/** Axe's look at the page that is open: its serious and critical findings, one a line. */
final class Axe {
    private static final String COLOURS = "color-contrast";

    /** The rules that can find nothing serious take half of the time, so that they are left out. */
    private static final String RUN =
            """
            const [only, without, done] = arguments;
            const told = ['serious', 'critical'];
            const rules = {'target-size': {enabled: true}};
            axe._audit.rules.filter(rule => !told.includes(rule.impact) || rule.id === without)
                .forEach(rule => rules[rule.id] = {enabled: false});
            axe.run(document, {
                resultTypes: ['violations'],
                ...(only ? {runOnly: [only]} : {rules})
            }).then(
                result => done(result.violations
                    .filter(v => told.includes(v.impact))
                    .flatMap(v => v.nodes.map(n => v.impact + ' ' + v.id + ': ' + v.help
                        + ' at ' + n.target.join(' ')))
                    .join('\\n')),
                fault => done('axe failed: ' + fault));
            """;

    private Axe() {}

    static String everything(ChromeDriver driver) {
        return run(driver, "", "");
    }

    static String colours(ChromeDriver driver) {
        return run(driver, COLOURS, "");
    }

    static String besidesColours(ChromeDriver driver) {
        return run(driver, "", COLOURS);
    }

    private static String run(ChromeDriver driver, String only, String without) {
        if (driver.executeScript("return typeof axe").equals("undefined")) {
            driver.executeScript(axeScript());
        }
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(30));
        return (String) driver.executeAsyncScript(RUN, only, without);
    }

    private static String axeScript() {
        try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
