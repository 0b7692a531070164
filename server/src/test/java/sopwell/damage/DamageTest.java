package sopwell.damage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a damage changes is found; whatever it does not change is not called damage. */
class DamageTest {
    private static final int CASES = 60;

    @TempDir Path work;

    @Test
    void everyDamageThatChangesSomethingIsFoundAndNothingElse() throws IOException, SQLException {
        long seed = System.nanoTime();
        DamageRun.Result result = new DamageRun(work, seed).run(CASES);
        System.out.println("damages, seed " + seed + ": " + result);
        assertEquals(List.of(), result.silent(), "seed " + seed);
        assertEquals(List.of(), result.falseAlarms(), "seed " + seed);
        assertTrue(result.changing() > CASES / 3, () -> "seed " + seed + ": " + result);
    }
}
