package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.menu.Menu;
import sopwell.orders.StandSettings;
import sopwell.storage.MenuReader;
import sopwell.storage.MenuWriter;

/** Mix and waits of days that are no usual ones: of 23 and 25 hours, and with a tiny menu. */
class OddDayPagesTest {
    /** The demo's stand in New York. */
    private static StandSettings inNewYork() {
        StandSettings demo = PageStand.settings();
        return new StandSettings(
                demo.stand(),
                demo.name(),
                ZoneId.of("America/New_York"),
                demo.cutHour(),
                demo.tax(),
                demo.targetSeconds(),
                demo.numberMax(),
                demo.cash(),
                demo.safety());
    }

    /** Fries alone, which nobody has to choose anything about. */
    private static Menu friesAlone() {
        ObjectNode tree = MenuWriter.tree(PageStand.menu().parts());
        keep(tree.withArray("stations"), List.of("fryer"));
        keep(tree.withArray("steps"), List.of("fry", "bag"));
        keep(tree.withArray("groups"), List.of());
        keep(tree.withArray("items"), List.of("fries"));
        keep(tree.withArray("pans"), List.of());
        byte[] written = tree.toString().getBytes(StandardCharsets.UTF_8);
        return MenuReader.read(written).menu().orElseThrow();
    }

    private static void keep(ArrayNode all, List<String> ids) {
        for (int i = all.size() - 1; i >= 0; i--) {
            if (!ids.contains(all.get(i).path("id").textValue())) {
                all.remove(i);
            }
        }
    }

    /** One order of fries, whole after so many seconds that nobody was told of before. */
    private static void fries(PageStand stand, String at, int seconds) {
        stand.at(Instant.parse(at));
        String order = stand.place("fries", "");
        stand.later(seconds);
        stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(order, 1, "fryer"))));
    }

    @Test
    void aMenuWithNothingToChooseHasAMixAndWaits() throws Exception {
        try (PageStand stand = new PageStand(PageStand.settings(), friesAlone())) {
            fries(stand, "2026-11-28T18:00:00Z", 180);
            fries(stand, "2026-11-28T18:40:00Z", 240);
            String mix = flat(stand.get("/mix/2026-11-28").body());
            assertTrue(mix.contains("Most sold: fries, 2 of 2 pieces (100 %)"), mix);
            assertFalse(mix.contains("class=\"cross"), "there is nothing to cross: " + mix);
            String waits = flat(stand.get("/waits/2026-11-28").body());
            assertTrue(waits.contains("2 of 2 whole within 6 min (100 %)"), waits);
            assertTrue(waits.contains(whole("3:30", "4:00")), waits);
        }
    }

    @Test
    void anHourThatComesTwiceIsCountedTogetherAndItsWaitsAreTrue() throws Exception {
        // America/New_York, 7 November 2027: 01:59 EDT is followed by 01:00 EST, at 06:00 UTC
        // (IANA time zone database).
        try (PageStand stand = new PageStand(inNewYork(), PageStand.menu())) {
            fries(stand, "2027-11-07T05:55:00Z", 600);
            fries(stand, "2027-11-07T06:40:00Z", 300);
            String waits = flat(stand.get("/waits/2027-11-07").body());
            assertTrue(waits.contains(whole("7:30", "10:00")), waits);
            assertEquals(1, times(waits, "<th scope=\"row\">01:30</th><td>2</td>"), waits);
            assertEquals(0, times(waits, "<th scope=\"row\">01:00</th>"), waits);
            String mix = flat(stand.get("/mix/2027-11-07").body());
            assertTrue(mix.contains("The busiest half hour began at 01:30: 2 pieces"), mix);
            assertEquals(1, times(mix, ">01:30</th>"), mix);
        }
    }

    @Test
    void anHourThatNeverComesIsEmptyAndNoWaitIsLonger() throws Exception {
        // America/New_York, 14 March 2027: 01:59 EST is followed by 03:00 EDT, at 07:00 UTC
        // (IANA time zone database).
        try (PageStand stand = new PageStand(inNewYork(), PageStand.menu())) {
            fries(stand, "2027-03-14T06:50:00Z", 600);
            fries(stand, "2027-03-14T07:10:00Z", 300);
            String waits = flat(stand.get("/waits/2027-03-14").body());
            assertTrue(waits.contains(whole("7:30", "10:00")), waits);
            assertEquals(1, times(waits, "<th scope=\"row\">01:30</th><td>1</td>"), waits);
            assertEquals(1, times(waits, "<th scope=\"row\">03:00</th><td>1</td>"), waits);
            assertEquals(0, times(waits, "<th scope=\"row\">02:30</th><td>1</td>"), waits);
            String mix = flat(stand.get("/mix/2027-03-14").body());
            assertEquals(1, times(mix, ">03:00</th><td data-value=\"1\">"), mix);
            assertEquals(1, times(mix, ">02:30</th><td data-value=\"0\">"), mix);
        }
    }

    private static String whole(String median, String ninetieth) {
        return "placed to whole</th><td>" + median + "</td><td>" + ninetieth + "</td><td>2</td>";
    }

    private static int times(String page, String text) {
        return page.split(Pattern.quote(text), -1).length - 1;
    }

    private static String flat(String html) {
        return html.replaceAll("\\s+", " ").replace("> <", "><");
    }
}
