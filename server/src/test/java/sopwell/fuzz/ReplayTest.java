package sopwell.fuzz;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree;
import sopwell.call.CallBytesFuzz;
import sopwell.records.CsvFuzz;
import sopwell.storage.DocumentFuzz;
import sopwell.web.RequestFuzz;
import sopwell.web.api.OrderBodyFuzz;

/** What the fuzzer began with and what it once found, again. */
class ReplayTest {
    @Test
    void readsCalls() throws IOException {
        replay("call", CallBytesFuzz::fuzzerTestOneInput);
    }

    @Test
    void readsBodiesOfOrders() throws IOException {
        replay("body", OrderBodyFuzz::fuzzerTestOneInput);
    }

    @Test
    void readsMenusAndBooks() throws IOException {
        replay("document", DocumentFuzz::fuzzerTestOneInput);
    }

    @Test
    void writesCells() throws IOException {
        replay("csv", CsvFuzz::fuzzerTestOneInput);
    }

    @Test
    void answersRequests() throws IOException {
        replay("request", RequestFuzz::fuzzerTestOneInput);
    }

    private static void replay(String corpus, Consumer<byte[]> target) throws IOException {
        Path folder = SourceTree.root().resolve("server/src/test/resources/fuzz/" + corpus);
        List<Path> inputs;
        try (Stream<Path> files = Files.list(folder)) {
            inputs = files.sorted().toList();
        }
        assertFalse(inputs.isEmpty(), corpus);
        for (Path input : inputs) {
            byte[] data = Files.readAllBytes(input);
            assertDoesNotThrow(() -> target.accept(data), input.getFileName()::toString);
        }
    }
}
