package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import sopwell.TestStand;

/** From the basket to the guest by keys alone: a load, its bags, the call, the hand-over. */
@ExtendWith(Browsers.class)
class PassPathTest {
    private static final String PLACE =
            """
            const done = arguments[arguments.length - 1];
            const [call] = arguments;
            const headers = {'Content-Type': 'application/json',
                'Idempotency-Key': 'p' + call.length};
            fetch('/api/orders', {method: 'POST', body: JSON.stringify({call}), headers})
                .then(got => done(got.status));
            """;

    @Test
    void aLoadOfTwoOrdersGoesFromTheFryerToItsGuestsByKeys(Browser screen, @TempDir Path folder) {
        try (TestStand stand = TestStand.start(folder.resolve("stand"))) {
            screen.open(stand.address() + "/boards/fryer");
            screen.waitText("#live", "live");
            assertEquals(201L, screen.scriptLater(PLACE, "2 fries"));
            assertEquals(201L, screen.scriptLater(PLACE, "fries"));
            screen.waitText(".to-start .load.due .load-what", "3 fries");
            screen.keys(Keys.ENTER);
            screen.waitText(".under-way .load-what", "3 fries");
            screen.waitText(".to-start", "Nothing to start");
            screen.keys("/");
            screen.waitGone(".load");

            String fryer = screen.window();
            String guests = screen.openWindow(stand.address() + "/ready");
            screen.waitFor("[data-row='2'].fresh");
            assertEquals(2, screen.count(".up.fresh"));
            screen.look(fryer);
            screen.open(stand.address() + "/pass");
            screen.waitText("#live", "live");
            String first = screen.texts("[data-digit='1'] .number").get(0);
            screen.keys("*");
            screen.keys("1");
            screen.keys("2");
            screen.waitText("[data-digit='1'] .hand .with", "2 bags");
            screen.keys(".");
            screen.keys("1");
            screen.waitText("[data-digit='1'] .called", "called");
            screen.look(guests);
            screen.waitText(".up:first-child b", first);
            String pass = fryer;
            screen.look(pass);
            screen.keys("1");
            screen.waitText("[data-zone='handed'] .packed", "2 bags");
            assertEquals(List.of(first), screen.texts("[data-zone='handed'] .number"));
            screen.look(guests);
            screen.waitGone("[data-row='" + first + "']");
            assertEquals(1, screen.count(".up"));
            screen.look(pass);
            screen.keys("0");
            screen.waitFor("[data-zone='whole'][data-digit='1']");
            assertEquals(List.of(), screen.consoleErrors());
        }
    }
}
