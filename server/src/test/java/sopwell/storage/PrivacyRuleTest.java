package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.menu.MenuFault;

/** For how many days names are kept, as {@code stand.json} says it. */
class PrivacyRuleTest {
    private static final byte[] DEMO = Samples.resource("/demo/stand.json");

    private static StandReading read(String privacy) {
        String demo = new String(DEMO, java.nio.charset.StandardCharsets.UTF_8);
        int end = demo.lastIndexOf('}');
        String json = demo.substring(0, end) + ", \"privacy\": " + privacy + "}";
        return StandFile.read(json.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void withoutItGuestsAreKeptThirtyDaysAndStaffNinety() {
        assertEquals(new PrivacyRule(30, 90), StandFile.read(DEMO).privacy());
        assertEquals(new PrivacyRule(30, 90), read("{}").privacy());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"guestNamesDays\": 7} | 7 | 90",
                "{\"staffNamesDays\": 365} | 30 | 365",
                "{\"guestNamesDays\": 1, \"staffNamesDays\": 1} | 1 | 1",
                "{\"guestNamesDays\": 3650, \"staffNamesDays\": 3650} | 3650 | 3650"
            })
    void readsWhatItSays(String privacy, int guests, int staff) {
        StandReading reading = read(privacy);
        assertTrue(reading.settings().isPresent(), reading.faults().toString());
        assertEquals(new PrivacyRule(guests, staff), reading.privacy());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"guestNamesDays\": 0} | /privacy/guestNamesDays",
                "{\"guestNamesDays\": -30} | /privacy/guestNamesDays",
                "{\"guestNamesDays\": 3651} | /privacy/guestNamesDays",
                "{\"staffNamesDays\": 99999999999} | /privacy/staffNamesDays",
                "{\"staffNamesDays\": \"ninety\"} | /privacy/staffNamesDays",
                "{\"staffNamesDays\": 90.5} | /privacy/staffNamesDays",
                "{\"staffNamesDays\": null} | /privacy/staffNamesDays",
                "{\"guestDays\": 30} | /privacy/guestDays",
                "30 | /privacy",
                "[] | /privacy"
            })
    void aStandDoesNotStartOnWhatIsWrong(String privacy, String place) {
        StandReading reading = read(privacy);
        assertTrue(reading.settings().isEmpty(), "taken: " + privacy);
        List<String> places = reading.faults().stream().map(MenuFault::place).toList();
        assertTrue(places.contains(place), place + " in " + reading.faults());
    }
}
