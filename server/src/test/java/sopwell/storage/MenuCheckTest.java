package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import sopwell.menu.MenuFault;

/** What a menu may not mean; each case spoils the demo's menu in one place. */
class MenuCheckTest {
    @ParameterizedTest(name = "{0} = {1}")
    @CsvFileSource(resources = "/tables/menu-faults.table", delimiter = '|')
    void findsTheFault(String where, String value, String place) {
        List<MenuFault> faults =
                MenuReader.read(MenuEdit.demo().set(where, value).bytes()).faults();
        List<String> places = faults.stream().map(MenuFault::place).toList();
        assertTrue(places.contains(place), faults.toString());
        for (MenuFault fault : faults) {
            assertTrue(fault.wrong().endsWith("."), fault.wrong());
            assertTrue(fault.right().endsWith("."), fault.right());
        }
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvFileSource(resources = "/tables/menu-clashes.table", delimiter = '|')
    void namesBothPlacesOfAClash(String where, String value, String second, String first) {
        List<MenuFault> faults =
                MenuReader.read(MenuEdit.demo().set(where, value).bytes()).faults();
        boolean both =
                faults.stream()
                        .anyMatch(
                                fault ->
                                        fault.place().equals(second)
                                                && fault.wrong().contains(" at " + first + "."));
        assertTrue(both, faults.toString());
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvFileSource(resources = "/tables/menu-fall-apart.table", delimiter = '|')
    void findsPhrasesThatFallApartIntoAnotherMeaning(String where, String value) {
        List<MenuFault> faults =
                MenuReader.read(MenuEdit.demo().set(where, value).bytes()).faults();
        boolean found =
                faults.stream()
                        .anyMatch(
                                fault ->
                                        fault.place().equals(where)
                                                && fault.wrong().contains("word by word"));
        assertTrue(found, faults.toString());
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvFileSource(resources = "/tables/menu-clear-words.table", delimiter = '|')
    void leavesWordsAloneThatMeanOneThingWhereTheyAreSaid(String where, String value) {
        assertEquals(
                List.of(), MenuReader.read(MenuEdit.demo().set(where, value).bytes()).faults());
    }

    @Test
    void noneMustBeSayableWhereItMayBeChosen() {
        byte[] json =
                MenuEdit.demo()
                        .set("/groups/1/default", "['hot']")
                        .remove("/groups/1/bundles/1")
                        .bytes();
        List<MenuFault> faults = MenuReader.read(json).faults();
        assertEquals(1, faults.size(), faults.toString());
        assertEquals("/groups/1/bundles", faults.get(0).place());
    }

    @Test
    void aStationIsNotCalledLikeAScreen() {
        for (String screen : List.of("counter", "pass", "ready")) {
            byte[] json = MenuEdit.demo().set("/stations/3/id", "'" + screen + "'").bytes();
            List<MenuFault> faults = MenuReader.read(json).faults();
            assertTrue(
                    faults.stream().anyMatch(fault -> fault.place().equals("/stations/3/id")),
                    screen + ": " + faults);
        }
    }

    @Test
    void findsFaultsOfMeaningAllAtOnce() {
        byte[] json =
                MenuEdit.demo()
                        .set("/stations/0/hands", "0")
                        .set("/steps/4/station", "'nowhere'")
                        .set("/groups/0/default/0", "'damp'")
                        .set("/items/1/words/0", "'combo'")
                        .set("/items/0/allergens/0", "'wheet'")
                        .bytes();
        List<String> places =
                MenuReader.read(json).faults().stream().map(MenuFault::place).toList();
        for (String place :
                List.of(
                        "/stations/0/hands",
                        "/steps/4/station",
                        "/groups/0/default/0",
                        "/items/2/words/0",
                        "/items/0/allergens/0")) {
            assertTrue(places.contains(place), place + " in " + places);
        }
    }
}
