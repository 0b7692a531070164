package sopwell.planted;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bugs can still be put in where the list says, and what runs them tells red from green. */
class PlantsTest {
    private static final Path PROJECT = Path.of(System.getProperty("sopwell.basedir", "."));

    @Test
    void everyBugHasItsPlaceAndItsTest() throws IOException {
        Set<String> names = new TreeSet<>();
        for (Plant plant : Plants.ALL) {
            assertTrue(names.add(plant.name()), plant.name() + " is there twice");
            for (Plant.Edit edit : plant.edits()) {
                assertEquals(1, edit.found(PROJECT), plant.name() + " in " + edit.file());
                assertTrue(!edit.find().equals(edit.put()), plant.name() + " changes nothing");
            }
            String file = plant.test().replace('.', '/') + ".java";
            Path test = PROJECT.resolve("server/src/test/java").resolve(file);
            assertTrue(Files.exists(test), plant.name() + ": no test " + plant.test());
        }
    }

    @Test
    void aBugTurnsItsTestRed(@TempDir Path folder) throws IOException, InterruptedException {
        Plant plant =
                Plants.ALL.stream()
                        .filter(one -> one.name().equals("tries-in-memory"))
                        .findFirst()
                        .orElseThrow();
        Path said = folder.resolve("said.txt");
        PlantBed sound = new PlantBed(PROJECT, Files.createDirectory(folder.resolve("sound")));
        assertEquals(RunTests.GREEN, sound.run(plant.test(), said), Files.readString(said));
        PlantBed sick = new PlantBed(PROJECT, Files.createDirectory(folder.resolve("sick")));
        sick.put(plant);
        assertEquals(RunTests.RED, sick.run(plant.test(), said), Files.readString(said));
    }
}
