package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.crash.StandProcess;

/** A cook with wet hands counts a shelf and watches a batch, by the pad alone. */
class CountPathTest {
    @TempDir Path folder;

    @Test
    void thePadCountsAShelfAndMeasuresABatch() throws IOException {
        try (StandProcess stand =
                        StandProcess.start(
                                folder.resolve("stand"),
                                StandProcess.quick(),
                                List.of("--start-with", "menu"));
                Browser screen = Browser.start(folder)) {
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
        }
    }

    private static void press(Browser screen, String... keys) {
        for (String key : keys) {
            screen.click("[data-pad='" + key + "']");
        }
    }
}
