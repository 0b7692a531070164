package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;
import sopwell.menu.Step;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;

/** Every sellable line expands to each of its steps exactly once, in order. */
class RouterLawsTest {
    private static final int CASES = 5_000;
    private final Menu menu = Script.demoMenu();

    @Test
    void everySelectionExpandsToEachOfItsStepsExactlyOnceInAssemblyOrder() {
        SplittableRandom random = new SplittableRandom(11);
        int seen = 0;
        for (int i = 0; i < CASES; i++) {
            Selection selection = anySelection(random);
            List<String> routed = new ArrayList<>();
            for (String station : Router.stations(menu, selection)) {
                Router.steps(menu, selection, station).forEach(step -> routed.add(step.id()));
            }
            assertEquals(naiveSteps(selection), sortedAsAssembled(routed), () -> "" + selection);
            assertEquals(routed.stream().distinct().count(), routed.size());
            assertFalse(routed.isEmpty());
            seen++;
        }
        assertEquals(CASES, seen);
    }

    @Test
    void cheeseComesBeforeTheFillingAndTheDipLastButForTheWrap() {
        // Common practice, no source: cheese goes on before the beef so that it melts.
        Item beef = menu.item("beef");
        Selection selection =
                Wishes.select(
                        menu,
                        new Wish(
                                "beef",
                                "",
                                List.of("twice", "provolone", "hot", "extra"),
                                List.of(),
                                List.of()));
        List<String> steps = Router.steps(menu, selection, "line").stream().map(Step::id).toList();
        assertEquals(List.of("roll", "cheese", "filling", "peppers", "dip", "wrap"), steps);
        assertEquals(beef.steps(), steps);
    }

    @Test
    void aStepThatOnlyShowsModifiersFallsAwayWhenNoneIsMeant() {
        Selection plain =
                Wishes.select(menu, new Wish("beef", "", List.of(), List.of(), List.of()));
        List<String> steps = Router.steps(menu, plain, "line").stream().map(Step::id).toList();
        assertEquals(List.of("roll", "filling", "dip", "wrap"), steps);
        Selection noHot =
                Wishes.select(menu, new Wish("beef", "", List.of(), List.of(), List.of("hot")));
        assertTrue(
                Router.steps(menu, noHot, "line").stream().anyMatch(s -> s.id().equals("peppers")),
                "a refusal is work for the eyes");
    }

    @Test
    void whatGoesIntoASandwichIsWaitedForAndNothingElseIs() {
        Selection combo = house("combo");
        assertEquals(List.of("grill"), Router.waitsFor(menu, combo, "line"));
        assertEquals(List.of(), Router.waitsFor(menu, combo, "grill"));
        assertTrue(Router.feedsAnother(menu, combo, "grill"));
        assertFalse(Router.feedsAnother(menu, combo, "line"));
        for (String item : List.of("beef", "fries", "hot-dog", "cola")) {
            Selection selection = house(item);
            for (String station : Router.stations(menu, selection)) {
                assertEquals(List.of(), Router.waitsFor(menu, selection, station), item);
                assertFalse(Router.feedsAnother(menu, selection, station), item);
            }
        }
    }

    @Test
    void noTwoStationsWaitForEachOther() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < CASES; i++) {
            Selection selection = anySelection(random);
            for (String one : Router.stations(menu, selection)) {
                for (String other : Router.waitsFor(menu, selection, one)) {
                    assertFalse(
                            Router.waitsFor(menu, selection, other).contains(one), "" + selection);
                }
            }
        }
    }

    private Selection house(String item) {
        return Wishes.select(menu, new Wish(item, "", List.of(), List.of(), List.of()));
    }

    /** The slow, obvious twin: walk the item's steps and ask whether anything is meant by each. */
    private List<String> naiveSteps(Selection selection) {
        List<String> steps = new ArrayList<>();
        for (String id : menu.item(selection.item()).steps()) {
            Step step = menu.step(id);
            boolean needed = false;
            for (Step.Show show : step.shows()) {
                if (show.what() != Step.What.GROUP) {
                    needed = true;
                } else {
                    for (Option option : menu.group(show.group()).options()) {
                        needed |=
                                selection.options().contains(option.id())
                                        || selection.refused().contains(option.id());
                    }
                }
            }
            if (needed) {
                steps.add(id);
            }
        }
        return steps;
    }

    private List<String> sortedAsAssembled(List<String> steps) {
        List<String> order = menu.steps().stream().map(Step::id).toList();
        return steps.stream()
                .sorted((a, b) -> Integer.compare(order.indexOf(a), order.indexOf(b)))
                .toList();
    }

    private Selection anySelection(SplittableRandom random) {
        while (true) {
            Item item = menu.items().get(random.nextInt(menu.items().size()));
            List<String> options = new ArrayList<>();
            List<String> refused = new ArrayList<>();
            for (Group group : menu.groupsOf(item)) {
                for (Option option : group.options()) {
                    int dice = random.nextInt(6);
                    if (dice == 0) {
                        options.add(option.id());
                    } else if (dice == 1) {
                        refused.add(option.id());
                    }
                }
            }
            Wish wish = new Wish(item.id(), "", options, List.of(), refused);
            if (Wishes.fault(menu, wish).isEmpty()) {
                return Wishes.select(menu, wish);
            }
        }
    }
}
