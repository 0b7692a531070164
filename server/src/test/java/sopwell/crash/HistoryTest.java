package sopwell.crash;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sopwell.crash.History.Named;
import sopwell.crash.History.Sent;
import sopwell.crash.History.Sight;

/** What a history says of stands that lose, double, invent or forget. */
class HistoryTest {
    private static final Named FIRST = new Named("o1", 1);
    private static final Named SECOND = new Named("o2", 2);

    private final History history = new History();

    /** Two orders: the first was sent twice because no answer came, a third thing was refused. */
    HistoryTest() {
        history.add(new Sent(10, 20, "a", 0, null));
        history.add(new Sent(30, 40, "a", 201, FIRST));
        history.add(new Sent(50, 60, "b", 201, SECOND));
        history.add(new Sent(70, 80, "c", 422, null));
        history.saw(new Sight(15, FIRST));
    }

    @Test
    void aStandThatKeptEverythingOnceIsRight() {
        assertWrong(Map.of("o1", 1, "o2", 2));
        assertEquals(4, history.sendings());
        assertEquals(1, history.refused());
    }

    @Test
    void whatIsMissingIsFoundAlsoOnTheScreens() {
        assertWrong(
                Map.of("o2", 2),
                "answered and lost: " + FIRST,
                "a screen saw what is not there: " + FIRST);
    }

    @Test
    void whatNobodyAskedForIsFound() {
        Named ghost = new Named("o9", 9);
        assertWrong(Map.of("o1", 1, "o2", 2, "o9", 9), "there, and nobody got it: " + ghost);
    }

    @Test
    void whatWasRefusedAndIsThereIsFound() {
        Named third = new Named("o3", 3);
        history.add(new Sent(90, 95, "c", 201, third));
        assertWrong(Map.of("o1", 1, "o2", 2, "o3", 3), "refused and kept: " + third);
    }

    @Test
    void anotherAnswerToTheSameKeyIsFound() {
        Named again = new Named("o1", 7);
        history.add(new Sent(90, 95, "a", 201, again));
        assertWrong(Map.of("o1", 1, "o2", 2), "one key got " + FIRST + " and then " + again);
    }

    @Test
    void oneNumberOrOneOrderForTwoKeysIsFound() {
        history.add(new Sent(31, 95, "d", 201, new Named("o4", 1)));
        assertEquals(
                List.of("two keys got the number of"),
                history.wrong(Map.of("o1", 1, "o2", 2, "o4", 1)).stream()
                        .map(found -> found.substring(0, found.indexOf(" Named")))
                        .toList());
        history.add(new Sent(31, 95, "e", 201, SECOND));
        assertEquals(
                List.of("two keys got", "two keys got the number of"),
                history.wrong(Map.of("o1", 1, "o2", 2, "o4", 1)).stream()
                        .map(found -> found.substring(0, found.indexOf(" Named")))
                        .distinct()
                        .sorted()
                        .toList());
    }

    @Test
    void aScreenThatKnewTooMuchIsFound() {
        history.saw(new Sight(45, SECOND));
        assertWrong(Map.of("o1", 1, "o2", 2), "a screen saw it before it was asked for: " + SECOND);
    }

    @Test
    void aNumberThatWentBackIsFound() {
        Named late = new Named("o5", 0);
        history.add(new Sent(90, 95, "f", 201, late));
        assertWrong(Map.of("o1", 1, "o2", 2, "o5", 0), "asked for after 2 was answered: " + late);
    }

    private void assertWrong(Map<String, Integer> left, String... sentences) {
        assertEquals(List.of(sentences), history.wrong(left));
    }
}
