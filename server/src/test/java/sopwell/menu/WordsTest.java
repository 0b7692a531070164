package sopwell.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {
    @Test
    void comparesWithoutCaseAccentsOrWideSpaces() {
        assertEquals("banado doble", Words.normal("  Bañado\t\u00A0 DOBLE\n"));
        assertEquals("te frio", Words.normal("té FRÍO"));
        assertEquals("te", Words.normal("te\u0301"));
        assertEquals("jus", Words.normal("JUS"));
        assertEquals("i", Words.normal("\u0130"), "the dotted capital of Turkish");
    }

    @Test
    void aFormThatIsComparedIsItsOwnForm() {
        for (String text : List.of("Bañado  DOBLE", "\u0130", "Ǆ", "ﬁ", "a\u0301\u0302 b", "ß")) {
            String normal = Words.normal(text);
            assertEquals(normal, Words.normal(normal), text);
        }
    }

    @Test
    void nothingIsLeftOfMarksAndSpaces() {
        assertEquals("", Words.normal(" \u0301\u00A0 "));
        assertEquals(List.of(), Words.split(" \u0301 "));
        assertEquals(List.of("hot", "y", "dulce"), Words.split(" Hot  y\tdulce"));
    }
}
