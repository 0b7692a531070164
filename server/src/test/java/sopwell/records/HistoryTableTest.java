package sopwell.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables are read as people write them, and what is wrong is told with its line. */
class HistoryTableTest {
    @TempDir Path folder;

    @Test
    void quotesHoldDelimitersQuotesAndLineBreaks() throws Exception {
        HistoryTable table = read("item,note\r\n\"a,b\",\"say \"\"x\"\"\r\ntwice\"\r\nc,\r\n");
        assertEquals("a,b", table.rows().get(0).text("item"));
        assertEquals("say \"x\"\r\ntwice", table.rows().get(0).text("note"));
        assertEquals("c", table.rows().get(1).text("item"));
        assertEquals("", table.rows().get(1).text("note"));
    }

    @Test
    void semicolonsTabsMarksAndBlankRowsAreReadAsTheyAre() throws Exception {
        HistoryTable table = read("\uFEFF\n item ; note \n\n ;\n b ; 1,5 \n");
        assertEquals("1,5", table.rows().get(0).text("note"));
        assertEquals("b", read("note\titem\n\"x\" \t b").rows().get(0).text("item"));
        assertEquals("3\" roll", read("item\n3\" roll\n").rows().get(0).text("item"));
        assertEquals(2, read("item\r1\r2\r").rows().size());
        assertEquals(List.of(), read("item,note\n").rows());
    }

    @Test
    void anUnclosedQuoteIsRefusedWithTheLineOfItsRow() throws Exception {
        String sentence =
                "the quotes of this row don't match; a text that begins with a quote must end with"
                        + " one, and a quote within it stands twice.";
        assertEquals(
                "t.csv, line 5: " + sentence,
                refused("item,note\n\n\"a\nb\",c\n\"d,e\nf,g\nh,i\n"));
        assertEquals("t.csv, line 1: " + sentence, refused("\"item,note\na,b\n"));
        assertEquals("t.csv, line 2: " + sentence, refused("item,note\na,\"b"));
        assertEquals("t.csv, line 3: " + sentence, refused("item\na\n\"b\"c\"\nd\n"));
    }

    private HistoryTable read(String text) throws HistoryFault, IOException {
        return HistoryTable.read(Files.writeString(folder.resolve("t.csv"), text), List.of("item"));
    }

    private String refused(String text) {
        return assertThrows(HistoryFault.class, () -> read(text)).getMessage();
    }
}
