package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree.Source;

/** Holds the source tree to its rules. {@link TidyRulesTest} shows that each rule can fail. */
class TidyTest {
    private static final List<Source> MAIN = SourceTree.mainJava();
    private static final List<Source> TEST = SourceTree.testJava();
    private static final List<Source> TEMPLATES = SourceTree.templates();
    private static final List<Source> JAVA = both(MAIN, TEST);
    private static final List<Source> CODE =
            both(JAVA, both(TEMPLATES, SourceTree.scriptsAndStyles()));

    @Test
    void importsRunOneWay() {
        holds(ImportRules::arrows, both(MAIN, TEMPLATES));
    }

    @Test
    void pureSlicesReachNothingOutside() {
        holds(ImportRules::impure, MAIN);
    }

    @Test
    void packagesHaveNoCycles() {
        none(ImportRules.cycles(MAIN));
    }

    @Test
    void linesFitIntoAHundredColumns() {
        holds(TextRules::wideLines, CODE);
    }

    @Test
    void filesHaveAtMostFourHundredLines() {
        holds(TextRules::longFile, CODE);
    }

    @Test
    void methodsHaveAtMostSixtyLines() {
        none(ShapeRules.longMethods(JAVA));
    }

    @Test
    void methodsHaveAtMostFiveParameters() {
        none(ShapeRules.manyParameters(JAVA));
    }

    @Test
    void publicTypesHaveJavadoc() {
        none(ShapeRules.undocumented(JAVA));
    }

    @Test
    void packagesExplainThemselves() {
        none(ShapeRules.unexplainedPackages(MAIN));
    }

    @Test
    void mainCodeMakesNoBannedCall() {
        holds(TextRules::bannedCalls, MAIN);
    }

    @Test
    void moneyIsNeverFloatingPoint() {
        holds(TextRules::floatingMoney, MAIN);
    }

    @Test
    void bannedWordsStandNowhere() {
        holds(TextRules::bannedWords, both(CODE, SourceTree.prose()));
    }

    @Test
    void decisionsSayTheirStatus() {
        holds(TextRules::noStatus, SourceTree.read("docs/decisions", name -> name.endsWith(".md")));
    }

    @Test
    void templatesKeepToTheStrictPolicy() {
        holds(TemplateRules::looseMarkup, TEMPLATES);
    }

    @Test
    void topOfTheRepositoryIsShort() throws IOException {
        try (Stream<Path> entries = Files.list(SourceTree.root())) {
            none(TemplateRules.strayTop(entries.map(e -> e.getFileName().toString()).toList()));
        }
    }

    @Test
    void readsTheTreeThatItJudges() {
        assertEquals(true, MAIN.stream().anyMatch(s -> s.name().equals("Check.java")));
        assertEquals(true, TEST.stream().anyMatch(s -> s.name().equals("TidyTest.java")));
    }

    private static void holds(Function<Source, List<String>> rule, List<Source> sources) {
        none(sources.stream().map(rule).flatMap(List::stream).toList());
    }

    private static void none(List<String> findings) {
        assertEquals("", String.join("\n", findings), "every line is one finding");
    }

    private static List<Source> both(List<Source> some, List<Source> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }
}
