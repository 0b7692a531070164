package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sopwell.TestStand;

/** A cook with wet hands counts a shelf and watches a batch by the pad, then adds a recipe. */
@ExtendWith(Browsers.class)
class CountPathTest {
    private static final String HIDDEN =
            "return getComputedStyle(document.querySelector('.group-supply')).display === 'none'";
    private static final String FITS =
            "return document.documentElement.scrollWidth <= window.innerWidth";

    @Test
    void thePadCountsAShelfAndMeasuresABatch(Browser screen, @TempDir Path folder) {
        try (TestStand stand = TestStand.start(folder.resolve("stand"))) {
            screen.size(390, 844);
            screen.open(stand.address() + "/prep/counts?at=beef-sliced");
            press(screen, "1", "2", ".", ".", "7", "back", "5");
            screen.click("label:has(input[value='kg'])");
            screen.click("button[value='count']");
            screen.waitText(".said", "12.5 kg counted");
            press(screen, "3");
            screen.click("button[value='count']");
            screen.waitText(".said", "3 ");

            screen.open(stand.address() + "/prep/batches");
            screen.click(".start button");
            screen.waitText("#clock", "Trim and season");
            screen.click("button[value='move']");
            screen.waitText("#clock .advice", "Roast on");
            press(screen, "1", "5", "8");
            screen.click("button[value='measure']");
            screen.waitText("#clock .left", "reached");
            screen.waitText("#clock .last", "158 °F");
            assertEquals(List.of(), screen.consoleErrors());
            addARecipe(screen, stand.address());
            List<String> errors = screen.consoleErrors();
            assertTrue(errors.stream().allMatch(one -> one.contains("422")), errors::toString);
        }
    }

    /**
     * A new recipe on the phone: rows are added, a refusal keeps what was typed, and it is saved.
     */
    private static void addARecipe(Browser screen, String address) {
        screen.open(address + "/recipes/new");
        screen.click("[id='how.made']");
        assertEquals(true, screen.script(HIDDEN), "who makes it is not asked who brings it");
        type(screen, "name.en", "Pulled beef", "name.es", "Res deshebrada");
        screen.click("[id='unit'] option[value='LB']");
        screen.click("button[value='rows.step']");
        screen.waitFor("[id='step.3.minutes']");
        screen.click("[id='in.0.what'] option[value='beef-raw']");
        type(screen, "in.0.amount", "12 lb", "gives", "7 lb", "lot.en", "pan", "lot.es", "charola");
        type(screen, "step.0.en", "Roast", "step.0.es", "Asar", "step.0.minutes", "a while");
        screen.click("form > button[type='submit']");
        screen.waitText("[id='step.0.minutes-fault']", "“a while” is no length of time");
        assertEquals("Pulled beef", screen.waitFor("[id='name.en']").getAttribute("value"));
        assertEquals(true, screen.script(FITS), "nothing stands beside the phone");
        screen.waitFor("[id='step.0.minutes']").clear();
        type(screen, "step.0.minutes", "5 h");
        screen.click("form > button[type='submit']");
        screen.waitText(".said", "Nothing takes Pulled beef.");
    }

    private static void type(Browser screen, String... fieldsAndTexts) {
        for (int n = 0; n < fieldsAndTexts.length; n += 2) {
            screen.type("[id='" + fieldsAndTexts[n] + "']", fieldsAndTexts[n + 1]);
        }
    }

    private static void press(Browser screen, String... keys) {
        for (String key : keys) {
            screen.click("[data-pad='" + key + "']");
        }
    }
}
