package sopwell.records;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an owner's records come to. */
class HistoryFilesTest {
    @TempDir Path folder;

    @Test
    void whatIsTakenBackIsTakenFromWhatWasSoldBefore() throws Exception {
        assertEquals(
                List.of("48 beef 3"),
                sold("12:00,beef,4", "12:40,beef,2", "12:50,beef,-2", "12:41,beef,-1"));
        assertEquals(List.of("48 beef 2"), sold("12:00,beef,2", "11:00,beef,-1"));
        assertEquals(List.of("48 dog 1"), sold("12:00,dog,1", "12:30,beef,-1"));
    }

    private List<String> sold(String... lines) throws HistoryFault, IOException {
        StringBuilder file = new StringBuilder("business_date,local_time,item,quantity\n");
        for (String line : lines) {
            file.append("2026-03-05,").append(line).append('\n');
        }
        Files.writeString(folder.resolve("lines.csv"), file);
        return HistoryFiles.read(folder).history().days().get(0).sold().stream()
                .map(sold -> sold.bin() + " " + sold.item() + " " + sold.pieces())
                .toList();
    }
}
