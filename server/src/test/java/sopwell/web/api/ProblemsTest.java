package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree;
import sopwell.call.CallRefusal;
import sopwell.menu.Lang;
import sopwell.menu.WishFault;
import sopwell.orders.Reason;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.StandServer;
import sopwell.web.Texts;

/** The list of problems is complete, and true, in every place that has it. */
class ProblemsTest {
    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| `([a-z-]+)` \\| ([^|]+) \\| ([^|]+) \\|$");
    private static final Pattern PART = Pattern.compile("(?m)^## (\\d+):");
    private static final Pattern MADE = Pattern.compile("new Problem\\(");

    /** A problem of the list: its status, what it means, what to do. */
    private record Entry(int status, String meaning, String advice) {}

    @Test
    void listsEveryCodeThatCanBeSentAndNoOther() {
        Map<String, Integer> listed = new TreeMap<>();
        described().forEach((code, entry) -> listed.put(code, entry.status()));
        assertEquals(sendable(), listed);
    }

    @Test
    void saysTheSameInTheDocument() {
        assertEquals(described(), documented());
    }

    @Test
    void saysWhatEachMeansAndWhatToDo() {
        described()
                .forEach(
                        (code, entry) -> {
                            assertTrue(entry.meaning().matches("\\S.{10,}\\."), code);
                            assertTrue(entry.advice().matches("\\S.{6,}\\."), code);
                        });
    }

    @Test
    void makesProblemsOfNothingButTheLists() {
        assertEquals(
                "LinesReader.java Problem.java",
                SourceTree.mainJava().stream()
                        .filter(source -> MADE.matcher(source.code()).find())
                        .map(SourceTree.Source::name)
                        .sorted()
                        .reduce((one, other) -> one + " " + other)
                        .orElse(""));
    }

    @Test
    void leadsEveryTypeToItsPlaceOnThePage() {
        try (StandServer stand = StandServer.fresh()) {
            String page = stand.get("/docs/problems").text();
            for (String code : sendable().keySet()) {
                assertTrue(page.contains("<dt id=\"" + code + "\">"), code);
            }
            String type = stand.get("/api/nothing").json().path("type").textValue();
            assertEquals(200, stand.get(type.replaceAll("#.*", "")).status());
        }
    }

    @Test
    void hasASentenceForEveryProblemOfARequest() {
        for (Lang lang : Lang.values()) {
            for (ProblemKind kind : ProblemKind.values()) {
                if (kind != ProblemKind.BAD_JSON && kind != ProblemKind.BAD_FIELD) {
                    String said = Problem.of(kind, Texts.load().in(lang), "a", "b").detail();
                    assertTrue(said.length() > 15, said);
                }
            }
        }
    }

    @Test
    void saysWhenToComeBackWhereThatHelps() {
        for (ProblemKind kind : ProblemKind.values()) {
            Problem problem = Problem.of(kind.status(), kind, "A sentence.");
            assertEquals(
                    kind.status() == 503,
                    Reply.problem(problem).headers().containsKey("Retry-After"));
        }
    }

    /** Every code that the program can send, with its status. */
    private static Map<String, Integer> sendable() {
        Map<String, Integer> codes = new TreeMap<>();
        for (ProblemKind kind : ProblemKind.values()) {
            codes.put(kind.code(), kind.status());
        }
        for (Reason reason : Reason.values()) {
            codes.put(ProblemKind.code(reason), RefusalProblems.status(reason));
        }
        for (CallRefusal.Why why : CallRefusal.Why.values()) {
            codes.merge(ProblemKind.code(why), 422, ProblemsTest::same);
        }
        for (WishFault.Why why : WishFault.Why.values()) {
            codes.merge(ProblemKind.code(why), 422, ProblemsTest::same);
        }
        return codes;
    }

    private static int same(int one, int other) {
        assertEquals(one, other, "one code has one status");
        return one;
    }

    private static Map<String, Entry> described() {
        Map<String, Entry> entries = new TreeMap<>();
        for (Map.Entry<String, JsonNode> problem :
                OpenApi.DOCUMENT.path("x-problems").properties()) {
            JsonNode said = problem.getValue();
            entries.put(
                    problem.getKey(),
                    new Entry(
                            said.path("status").intValue(),
                            said.path("meaning").textValue(),
                            said.path("advice").textValue()));
        }
        return entries;
    }

    private static Map<String, Entry> documented() {
        String text = SourceTree.read("docs", name -> name.equals("problems.md")).get(0).text();
        Map<String, Entry> entries = new TreeMap<>();
        Matcher row = ROW.matcher(text);
        while (row.find()) {
            Matcher part = PART.matcher(text.substring(0, row.start()));
            int status = 0;
            while (part.find()) {
                status = Integer.parseInt(part.group(1));
            }
            entries.put(row.group(1), new Entry(status, row.group(2), row.group(3)));
        }
        return entries;
    }
}
