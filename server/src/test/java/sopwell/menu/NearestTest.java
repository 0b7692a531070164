package sopwell.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {
    @Test
    void countsLettersPutInLeftOutAlteredAndSwapped() {
        assertEquals(0, Nearest.distance("roll", "roll"));
        assertEquals(1, Nearest.distance("roll", "rol"));
        assertEquals(1, Nearest.distance("rol", "roll"));
        assertEquals(1, Nearest.distance("roll", "rull"));
        assertEquals(1, Nearest.distance("roll", "rlol"));
        assertEquals(3, Nearest.distance("kitten", "sitting"));
        assertEquals(4, Nearest.distance("", "roll"));
    }

    @Test
    void findsWhatWasProbablyMeant() {
        List<String> known = List.of("provolone", "mozzarella", "cheddar-sauce", "hot");
        assertEquals(Optional.of("provolone"), Nearest.of("provalone", known));
        assertEquals(Optional.of("mozzarella"), Nearest.of("mozarela", known));
        assertEquals(Optional.of("hot"), Nearest.of("hto", known));
        assertEquals(Optional.empty(), Nearest.of("cat", known));
        assertEquals(Optional.empty(), Nearest.of("swiss", known));
        assertEquals(Optional.empty(), Nearest.of("h".repeat(5_000), known));
    }
}
