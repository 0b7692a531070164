package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.menu.MenuFault;
import sopwell.orders.StandSettings;

class StandFileTest {
    private static final byte[] DEMO = Samples.resource("/demo/stand.json");

    @Test
    void readsTheDemosStand() {
        StandSettings settings = StandFile.read(DEMO).settings().orElseThrow();
        assertEquals("millrace", settings.stand());
        assertEquals("America/Chicago", settings.zone().getId());
        assertEquals(8_250, settings.tax().rateMilliPercent());
        assertEquals(999, settings.numberMax());
    }

    @Test
    void readsWhatItWrote() {
        StandSettings settings = StandFile.read(DEMO).settings().orElseThrow();
        assertEquals(settings, StandFile.read(StandFile.write(settings)).settings().orElseThrow());
    }

    @Test
    void numbersGoTo999UnlessTheStandSaysOtherwise() {
        byte[] json = new MenuEdit(DEMO).remove("/orderNumberMax").bytes();
        assertEquals(999, StandFile.read(json).settings().orElseThrow().numberMax());
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            textBlock =
                    """
            /stand           | 'Mill Race'       | is no id
            /name            | ''                | is empty
            /zone            | 'America/Chicgo'  | no time zone
            /zone            | '+05:00'          | no time zone
            /cutHour         | 24                | out of range
            /cutHour         | 'four'            | a text
            /taxMilliPercent | 8.25              | broken number
            /taxMilliPercent | 100001            | out of range
            /targetSeconds   | 0                 | out of range
            /orderNumberMax  | 98                | out of range
            /orderNumberMax  | 10000000          | out of range
            /ordernumbermax  | 99                | no field
            """)
    void findsTheFault(String where, String value, String wrong) {
        List<MenuFault> faults =
                StandFile.read(new MenuEdit(DEMO).set(where, value).bytes()).faults();
        assertEquals(1, faults.size(), faults.toString());
        assertEquals(where, faults.get(0).place());
        assertTrue(faults.get(0).wrong().contains(wrong), faults.get(0).wrong());
    }

    @Test
    void findsEveryFaultAtOnce() {
        byte[] json =
                new MenuEdit(DEMO)
                        .set("/cutHour", "-1")
                        .set("/zone", "'Mars'")
                        .remove("/name")
                        .bytes();
        List<String> places = StandFile.read(json).faults().stream().map(MenuFault::place).toList();
        assertEquals(List.of("/name", "/zone", "/cutHour"), places);
    }

    @Test
    void namesTheNearestTimeZone() {
        byte[] json = new MenuEdit(DEMO).set("/zone", "'America/Chicgo'").bytes();
        MenuFault fault = StandFile.read(json).faults().get(0);
        assertEquals("Perhaps \"America/Chicago\" is meant.", fault.right());
    }
}
