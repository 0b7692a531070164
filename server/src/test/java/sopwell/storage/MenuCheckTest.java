package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.menu.MenuFault;

/** What a menu may not mean; each case spoils the demo's menu in one place. */
class MenuCheckTest {
    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            textBlock =
                    """
            /stations/1/id                 | 'line'        | /stations/1/id
            /steps/1/id                    | 'char'        | /steps/1/id
            /groups/1/options/0/id         | 'dry'         | /groups/1/options/0/id
            /groups/1/bundles/0/id         | 'hot'         | /groups/1/bundles/0/id
            /items/1/id                    | 'beef'        | /items/1/id
            /items/0/sizes/2/id            | 'small'       | /items/0/sizes/2/id
            /items/4/id                    | 'Hot Dog'     | /items/4/id
            /stations/0/hands              | 0             | /stations/0/hands
            /stations/0/hands              | 21            | /stations/0/hands
            /steps/4/station               | 'lnie'        | /steps/4/station
            /steps/4/seconds               | -1            | /steps/4/seconds
            /steps/4/shows                 | []            | /steps/4/shows
            /steps/5/shows/0               | 'group:chese' | /steps/5/shows/0
            /steps/5/shows/1               | 'group:toppings' | /steps/5/shows/1
            /groups/0/choose/min           | 5             | /groups/0/choose/min
            /groups/0/choose/max           | 0             | /groups/0/choose/max
            /groups/4/choose/max           | 7             | /groups/4/choose/max
            /groups/0/default              | []            | /groups/0/default
            /groups/0/default/1            | 'dry'         | /groups/0/default
            /groups/0/default/0            | 'wett'        | /groups/0/default/0
            /groups/0/options/1/priceCents | -5            | /groups/0/options/1/priceCents
            /groups/0/options/1/priceCents | 100000001     | /groups/0/options/1/priceCents
            /groups/0/options/1/allergens/0| 'cellery'     | /groups/0/options/1/allergens/0
            /groups/1/options/1/insteadOf  | 'sweet'       | /groups/1/options/1/insteadOf
            /groups/1/options/1/insteadOf  | 'wet'         | /groups/1/options/1/insteadOf
            /groups/1/choose/max           | 1             | /groups/1/bundles/0/options
            /groups/1/bundles/0/options/1  | 'sweat'       | /groups/1/bundles/0/options/1
            /groups/1/bundles/0/options/1  | 'hot'         | /groups/1/bundles/0/options/1
            /items/0/groups/0              | 'dipp'        | /items/0/groups/0
            /items/0/groups/4              | 'dip'         | /items/0/groups/4
            /items/0/groups/4              | 'toppings'    | /items/0/groups/4
            /items/0/defaultSize           | 'huge'        | /items/0/defaultSize
            /items/0/priceCents            | 790           | /items/0/priceCents
            /items/0/sizes/1/priceCents    | -1            | /items/0/sizes/1/priceCents
            /items/0/allergens/0           | 'wheet'       | /items/0/allergens/0
            /items/0/steps/0               | 'rol'         | /items/0/steps/0
            /items/0/steps/0               | 'cheese'      | /items/0/steps/1
            /items/0/steps/5               | 'char'        | /items/0/steps/5
            /items/6/steps                 | []            | /items/6/steps
            /items/6/steps                 | ['bag']       | /items/6/steps
            /items/8/steps                 | ['bag']       | /items/8/sizes
            /items/4/steps                 | ['dog']       | /items/4/groups/0
            /items/3/days/1                | 'friday'      | /items/3/days/1
            /items                         | []            | /items
            /groups/0/options/0/words      | []            | /groups/0/options/0/words
            /items/0/words/1               | 'beef 2'      | /items/0/words/1
            /items/0/words/1               | 'beef,beef'   | /items/0/words/1
            /items/0/words/1               | '--'          | /items/0/words/1
            /items/0/short/0               | '+'           | /items/0/short/0
            /speech/no                     | []            | /speech/no
            /speech/numbers/two            | 100           | /speech/numbers/two
            """)
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
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            textBlock =
                    """
            /items/1/words/1              | 'Beefs'      | /items/1/words/1  | /items/0/words/1
            /items/6/short/0              | 'BF'         | /items/6/short/0  | /items/0/short/1
            /groups/4/options/0/words/0   | 'combo'      | /groups/4/options/0/words/0 | /items/2/words/0
            /items/8/sizes/1/words/0      | 'res'        | /items/8/sizes/1/words/0 | /items/0/words/6
            /groups/1/options/0/words/0   | 'dry'        | /groups/1/options/0/words/0 | /groups/0/options/0/words/0
            /groups/1/bundles/0/words/0   | 'spicy'      | /groups/1/bundles/0/words/0 | /groups/1/options/0/words/1
            /items/0/sizes/0/words/0      | 'easy'       | /groups/3/options/0/words/0 | /items/0/sizes/0/words/0
            /items/0/sizes/0/words/0      | 'GRANDE'     | /items/0/sizes/2/words/2 | /items/0/sizes/0/words/0
            /speech/skip/0                | 'two'        | /speech/numbers/two | /speech/skip/0
            /speech/skip/0                | 'sin'        | /speech/skip/0    | /speech/no/3
            /speech/skip/0                | 'dry'        | /groups/0/options/0/words/0 | /speech/skip/0
            /speech/and/0                 | 'fries'      | /items/6/words/0  | /speech/and/0
            """)
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
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            textBlock =
                    """
            /groups/1/bundles/0/words/1 | 'hot dry'
            /groups/1/bundles/1/words/1 | 'no hot'
            /groups/2/bundles/0/words/1 | 'with provolone'
            /groups/3/options/1/words/1 | 'two easy'
            /items/0/words/2            | 'large beef'
            /items/4/words/0            | 'hot beef'
            /items/0/sizes/0/words/0    | 'dry sweet hot'
            """)
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
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            textBlock =
                    """
            /groups/1/bundles/0/words/1 | 'sweet and hot'
            /groups/1/bundles/0/words/1 | 'hot with sweet'
            /groups/0/options/3/words/1 | 'dry twice'
            /groups/4/options/0/words/1 | 'spicy'
            /items/9/sizes/0/words/0    | 'hot'
            """)
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
