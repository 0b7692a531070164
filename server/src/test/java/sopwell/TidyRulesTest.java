package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sopwell.SourceTree.Source;

/** Shows of every tidy rule that it can fail, and that it leaves good source alone. */
class TidyRulesTest {
    private static Source in(String slice, String text) {
        return new Source("server/src/main/java/sopwell/" + slice + "/A.java", text);
    }

    private static Source template(String text) {
        return new Source("web/templates/a.jte", text);
    }

    private static void finds(String part, List<String> findings) {
        assertEquals(1, findings.size(), findings::toString);
        assertTrue(findings.get(0).contains(part), findings::toString);
    }

    private static void clean(List<String> findings) {
        assertEquals(List.of(), findings);
    }

    @Test
    void findsAnImportAgainstTheTable() {
        finds("menu", ImportRules.arrows(in("menu", "import sopwell.orders.Order;")));
        finds("storage", ImportRules.arrows(in("web", "Object o = sopwell.storage.S.open();")));
        finds("storage", ImportRules.arrows(template("@import sopwell.storage.S\n<p></p>")));
        finds("Main", ImportRules.arrows(in("web", "import sopwell.Main;")));
        finds("Config", ImportRules.arrows(in("web.pages", "import sopwell.Config;")));
        finds("table", ImportRules.arrows(in("cellar", "")));
        clean(ImportRules.arrows(in("orders", "package sopwell.orders;\nimport sopwell.Check;")));
        clean(ImportRules.arrows(in("orders", "// see sopwell.web.Pages\nimport sopwell.menu.M;")));
    }

    @Test
    void findsAnImportInTheHelpersOfTheRoot() {
        Source check = new Source("server/src/main/java/sopwell/Check.java", "sopwell.menu.M m;");
        Source main = new Source("server/src/main/java/sopwell/Main.java", "sopwell.menu.M m;");
        finds("menu", ImportRules.arrows(check));
        clean(ImportRules.arrows(main));
    }

    @Test
    void allowsNoCycleInTheTableItself() {
        List<Source> table =
                ImportRules.ALLOWED.entrySet().stream()
                        .flatMap(row -> row.getValue().stream().map(to -> arrow(row.getKey(), to)))
                        .toList();
        clean(ImportRules.cycles(table));
    }

    @Test
    void findsACycleOverThreePackages() {
        List<Source> ring =
                List.of(arrow("web.a", "web.b"), arrow("web.b", "web.c"), arrow("web.c", "web.a"));
        finds("[web.a, web.b, web.c], back to web.a", ImportRules.cycles(ring));
    }

    private static Source arrow(String from, String to) {
        return in(from.replace('.', '/'), "import sopwell." + to + ".Thing;");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "import java.io.File;",
                "import java.nio.file.Path;",
                "import java.net.URI;",
                "import java.sql.Connection;",
                "import java.util.logging.Logger;",
                "import javax.tools.Tool;",
                "import jakarta.websocket.Session;",
                "import com.fasterxml.jackson.databind.ObjectMapper;",
                "import io.undertow.Undertow;",
                "import gg.jte.TemplateEngine;",
                "import org.xnio.Option;",
                "void a() throws java.io.IOException {}"
            })
    void findsTheOutsideWorldInAPureSlice(String text) {
        assertEquals(false, ImportRules.impure(in("kitchen", text)).isEmpty());
        clean(ImportRules.impure(in("web", text)));
    }

    @Test
    void leavesPureImportsAlone() {
        String text =
                "import java.util.List;\nimport static java.util.Map.of;\nimport java.time.Year;";
        clean(ImportRules.impure(in("kitchen", text)));
    }

    @Test
    void findsALineOfAHundredAndOneColumns() {
        finds(":2: 101", TextRules.wideLines(in("web", "\n" + "é".repeat(101) + "\n")));
        clean(TextRules.wideLines(in("web", "é".repeat(100))));
    }

    @Test
    void findsAFileOfFourHundredAndOneLines() {
        finds("401", TextRules.longFile(in("web", "\n".repeat(401))));
        clean(TextRules.longFile(in("web", "\n".repeat(400))));
    }

    @Test
    void findsAMethodOfSixtyOneLines() {
        String text = "class A {\n void a() {" + "\n".repeat(60) + "}\n}";
        finds("A.java:2: a has 61", ShapeRules.longMethods(List.of(in("web", text))));
        clean(ShapeRules.longMethods(List.of(in("web", text.replaceFirst("\n\n", "\n")))));
    }

    @Test
    void findsSixParametersButNotInARecord() {
        String six = "(int a, int b, int c, int d, int e, int f)";
        finds(
                "6",
                ShapeRules.manyParameters(List.of(in("web", "class A { void m" + six + " {} }"))));
        finds("6", ShapeRules.manyParameters(List.of(in("web", "class A { A" + six + " {} }"))));
        String header = "record R" + six + " { R" + six + " { this.a = a; } static int z; }";
        clean(ShapeRules.manyParameters(List.of(in("web", header))));
        clean(ShapeRules.manyParameters(List.of(in("web", "record R" + six + " { R { go(); } }"))));
        String wider = "record R(int a) { R" + six + " { this(a); } }";
        finds("6", ShapeRules.manyParameters(List.of(in("web", wider))));
    }

    @Test
    void findsAPublicTypeWithoutJavadoc() {
        finds("A needs", ShapeRules.undocumented(List.of(in("web", "public class A {}"))));
        finds(
                "B needs",
                ShapeRules.undocumented(List.of(in("web", "class A { public enum B {} }"))));
        clean(ShapeRules.undocumented(List.of(in("web", "/** Is. */ public class A {}"))));
    }

    @Test
    void findsAPackageWithoutItsInfo() {
        finds("web", ShapeRules.unexplainedPackages(List.of(in("web", ""))));
        Source info = new Source("server/src/main/java/sopwell/web/package-info.java", "");
        clean(ShapeRules.unexplainedPackages(List.of(in("web", ""), info)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Instant.now()",
                "LocalDate.now(zone)",
                "Clock.systemUTC()",
                "InstantSource.system()",
                "System.currentTimeMillis()",
                "System.nanoTime()",
                "ZoneId.systemDefault()",
                "new Random(7)",
                "new SplittableRandom()",
                "ThreadLocalRandom.current()",
                "Math.random()",
                "Thread.sleep(1)",
                "System.out.println()",
                "System.err.println()",
                "System.exit(1)",
                "e.printStackTrace()",
                "String.format(\"%d\", 1)",
                "\"%d\".formatted(1)",
                "name.toLowerCase()"
            })
    void findsABannedCall(String call) {
        finds(" -> ", TextRules.bannedCalls(in("web", "class A { void a() { " + call + "; } }")));
        clean(TextRules.bannedCalls(in("web", "/* " + call + " */ // " + call)));
    }

    @Test
    void leavesTheClockToMain() {
        String text = "Instant.now(); new SplittableRandom(7); String.format(Locale.ROOT, \"\");";
        clean(TextRules.bannedCalls(new Source("server/src/main/java/sopwell/Main.java", text)));
        clean(TextRules.bannedCalls(in("web", "String s = \"Instant.now() \\\" Math.random()\";")));
    }

    @Test
    void findsFloatingPointWhereMoneyIs() {
        finds("double", TextRules.floatingMoney(in("money", "double share;")));
        finds("Float", TextRules.floatingMoney(in("orders", "Float share;")));
        clean(TextRules.floatingMoney(in("mix", "double share;")));
        clean(TextRules.floatingMoney(in("money", "/* a double dip */ int doubleDips;")));
    }

    @Test
    void findsABannedWord() {
        for (String word : List.of("TO" + "DO", "FIX" + "ME", "bu" + "mped", "K" + "DS")) {
            finds("glossary", TextRules.bannedWords(in("web", "a " + word + " here")));
        }
        finds("glossary", TextRules.bannedWords(in("web", "all" + "-day")));
        finds("glossary", TextRules.bannedWords(in("web", "the ex" + "po.")));
        clean(TextRules.bannedWords(in("web", "export todos exponent con todo")));
    }

    @Test
    void findsADecisionWithoutStatus() {
        finds(
                "Status",
                TextRules.noStatus(new Source("docs/decisions/0001.md", "# One\nState: x")));
        clean(
                TextRules.noStatus(
                        new Source("docs/decisions/0001.md", "# One\n\nStatus: accepted")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p hx-on:click=\"go()\">",
                "<p hx-trigger=\"click[ctrlKey]\">",
                "<p hx-vals='js:{a: 1}'>",
                "<p style=\"color: red\">",
                "<style>p {}</style>",
                "<script>go()</script>",
                "<button onclick=\"go()\">",
                "<a href=\"javascript:go()\">",
                "<p>$unsafe{text}</p>"
            })
    void findsLooseMarkup(String text) {
        finds(" -> ", TemplateRules.looseMarkup(template(text)));
    }

    @Test
    void leavesStrictMarkupAlone() {
        String text =
                """
                <script src="/a.js" defer></script><link rel="stylesheet" href="/a.css">
                <p hx-trigger="click delay:1s" class="style" data-style="x">${t.get("a")}</p>
                """;
        clean(TemplateRules.looseMarkup(template(text)));
    }

    @Test
    void findsAStrayFileAtTheTop() {
        finds("notes.txt", TemplateRules.strayTop(List.of("pom.xml", ".git", "notes.txt", "web")));
    }
}
