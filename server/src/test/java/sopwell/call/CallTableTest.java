package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sopwell.call.CallRefusal.Why;
import sopwell.menu.Menu;

/** Runs the tables of calls: calls.table on the demo's menu, flowers.table on a flower stall's. */
class CallTableTest {
    private static final int CASES_MIN = 150;

    @TestFactory
    Stream<DynamicTest> readsTheDemosCallsAsTheTableSays() throws IOException {
        return tests("calls.table", DemoMenu.read());
    }

    @TestFactory
    Stream<DynamicTest> readsTheFlowerStallsCallsAsTheTableSays() throws IOException {
        return tests("flowers.table", Menus.flowers());
    }

    @Test
    void theTablesCoverEveryKindOfRefusal() throws IOException {
        List<TableCase> cases = new ArrayList<>(cases("calls.table"));
        assertTrue(cases.size() >= CASES_MIN, cases.size() + " cases");
        cases.addAll(cases("flowers.table"));
        for (Why why : Why.values()) {
            boolean covered =
                    cases.stream().anyMatch(c -> c.expected().startsWith(why.name() + " @"));
            assertTrue(covered, why + " is in no table");
        }
    }

    @Test
    void theTablesHaveNoCallTwice() throws IOException {
        for (String name : List.of("calls.table", "flowers.table")) {
            List<String> texts = cases(name).stream().map(TableCase::text).toList();
            List<String> twice = new ArrayList<>(texts);
            texts.stream().distinct().forEach(twice::remove);
            assertEquals(List.of(), twice, name);
        }
    }

    private static Stream<DynamicTest> tests(String table, Menu menu) throws IOException {
        CallParser parser = new CallParser(menu);
        CallPrinter printer = new CallPrinter(parser);
        return cases(table).stream()
                .map(
                        one ->
                                DynamicTest.dynamicTest(
                                        table + ":" + one.line(),
                                        () -> check(parser, printer, one)));
    }

    private static void check(CallParser parser, CallPrinter printer, TableCase one) {
        Reading reading = parser.read(one.text());
        assertEquals(one.expected(), TableCase.outcome(reading, printer), one.text());
    }

    private static List<TableCase> cases(String table) throws IOException {
        try (InputStream in = CallTableTest.class.getResourceAsStream("/tables/" + table)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return TableCase.all(text.lines().toList());
        }
    }
}
