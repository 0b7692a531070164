package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.menu.MenuFault;
import sopwell.money.CashRounding;
import sopwell.money.CashRule;
import sopwell.money.Rounding;
import sopwell.money.TaxRule;
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
            /tax/milliPercent | 8.25             | broken number
            /tax/milliPercent | 100001           | out of range
            /tax/milliPercent | -1               | out of range
            /tax/basis       | 'item'            | no word here
            /tax/rounding    | 'up'              | no word here
            /tax/included    | 'no'              | a text
            /tax/inclusive   | true              | no field
            /taxMilliPercent | 8250              | no field
            /cash/roundToCents | 0               | out of range
            /cash/roundToCents | 1001            | out of range
            /cash/tie        | 'even'            | no word here
            /cash/notesCents/1 | 10000           | there twice
            /cash/notesCents/1 | 0               | out of range
            /cash/notesCents | 5                 | a whole number
            /cash/coinsCents/0 | 'penny'         | a text
            /cash/coins      | 5                 | no field
            /targetSeconds   | 0                 | out of range
            /safety/reheatF  | 99                | out of range
            /safety/reheatF  | 213               | out of range
            /safety/holdF    | 'hot'             | a text
            /safety/slicerYears | 13             | out of range
            /safety/reheatHours | 0              | out of range
            /safety/source   | ''                | is empty
            /safety/edition  | 2022              | no field
            /safety/food/coldF | 51              | out of range
            /safety/food/cooling/middleF | 140   | not between
            /safety/food/cooling/totalMinutes | 0 | out of range
            /safety/food/cooling/totalMinutes | 120 | too few
            /safety/food/oilDays | 0             | out of range
            /safety/food/oilSource | ''          | is empty
            /safety/food/roastTable | '8-log'    | no roast table
            /safety/food/ovens/0/kind | 'gas'    | no word here
            /safety/food/temperatures | 'K'      | no word here
            /safety/food/warm | 135              | no field
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
    void aStandMayHaveARoastTableOfItsOwn() {
        MenuEdit edit = new MenuEdit(DEMO).remove("/safety/food/roastTable");
        String rows = "[{'f': 140, 'seconds': 900}, {'f': 150, 'seconds': 60}]";
        byte[] right =
                edit.set("/safety/food/roast", "{'source': 'Tarn County', 'rows': " + rows + "}")
                        .bytes();
        StandSettings settings = StandFile.read(right).settings().orElseThrow();
        assertEquals(900, settings.safety().food().roast().rows().get(0).seconds());
        assertEquals(settings, StandFile.read(StandFile.write(settings)).settings().orElseThrow());
        String turned = "[{'f': 150, 'seconds': 60}, {'f': 140, 'seconds': 900}]";
        byte[] wrong =
                edit.set("/safety/food/roast", "{'source': 'Tarn County', 'rows': " + turned + "}")
                        .bytes();
        assertEquals("/safety/food/roast/rows/1", StandFile.read(wrong).faults().get(0).place());
    }

    @Test
    void readsATaxRateAloneAsItWasWrittenBefore() {
        byte[] json = new MenuEdit(DEMO).remove("/tax").set("/taxMilliPercent", "6350").bytes();
        StandSettings settings = StandFile.read(json).settings().orElseThrow();
        assertEquals(new TaxRule(6_350), settings.tax());
        assertEquals(settings, StandFile.read(StandFile.write(settings)).settings().orElseThrow());
    }

    @Test
    void readsEveryWayOfTaxAndCash() {
        byte[] json =
                new MenuEdit(DEMO)
                        .set(
                                "/tax",
                                "{'milliPercent': 15000, 'basis': 'line', 'rounding': 'half-even',"
                                        + " 'included': true}")
                        .set(
                                "/cash",
                                "{'roundToCents': 10, 'tie': 'up', 'notesCents': [500, 1000],"
                                        + " 'coinsCents': [10, 20, 50, 100, 200]}")
                        .bytes();
        StandSettings settings = StandFile.read(json).settings().orElseThrow();
        TaxRule tax = new TaxRule(15_000, TaxRule.Basis.LINE, Rounding.HALF_EVEN, true);
        assertEquals(tax, settings.tax());
        assertEquals(new CashRounding(10, CashRounding.Tie.UP), settings.cash().rounding());
        assertEquals(10, settings.cash().units().leastCents());
        assertEquals(settings, StandFile.read(StandFile.write(settings)).settings().orElseThrow());
    }

    @Test
    void paysEveryCentInTheUsualCoinsUnlessTheStandSaysOtherwise() {
        byte[] json = new MenuEdit(DEMO).remove("/cash").bytes();
        assertEquals(CashRule.USUAL, StandFile.read(json).settings().orElseThrow().cash());
    }

    @Test
    void refusesCashThatCannotBeGiven() {
        assertEquals("/cash/roundToCents", cashFault("{'notesCents': [500], 'coinsCents': [5]}"));
        assertEquals(
                "/cash/roundToCents",
                cashFault("{'roundToCents': 25, 'notesCents': [500], 'coinsCents': [10]}"));
        assertEquals(
                "/cash/notesCents",
                cashFault("{'roundToCents': 10, 'notesCents': [505], 'coinsCents': [10]}"));
        assertEquals("/cash/coinsCents", cashFault("{'roundToCents': 5}"));
    }

    private static String cashFault(String cash) {
        List<MenuFault> faults =
                StandFile.read(new MenuEdit(DEMO).set("/cash", cash).bytes()).faults();
        assertEquals(1, faults.size(), faults.toString());
        return faults.get(0).place();
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
