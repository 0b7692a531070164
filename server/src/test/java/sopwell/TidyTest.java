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
    private static final List<Source> SCRIPTS = SourceTree.scriptsAndStyles();
    private static final List<Source> PROSE = SourceTree.prose();

    @Test
    void importsRunOneWay() {
        holds(ImportRules::arrows, MAIN, TEMPLATES);
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
        holds(TextRules::wideLines, MAIN, TEST, TEMPLATES, SCRIPTS);
    }

    @Test
    void filesHaveAtMostFourHundredLines() {
        holds(TextRules::longFile, MAIN, TEST, TEMPLATES, SCRIPTS);
    }

    @Test
    void methodsHaveAtMostSixtyLines() {
        none(ShapeRules.longMethods(both(MAIN, TEST)));
    }

    @Test
    void methodsHaveAtMostFiveParameters() {
        none(ShapeRules.manyParameters(both(MAIN, TEST)));
    }

    @Test
    void publicTypesHaveJavadoc() {
        none(ShapeRules.undocumented(both(MAIN, TEST)));
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
        holds(TextRules::bannedWords, MAIN, TEST, TEMPLATES, SCRIPTS, PROSE);
    }

    @Test
    void decisionsSayTheirStatus() {
        holds(
                TextRules::noStatus,
                SourceTree.read("docs/decisions", name -> name.endsWith(".md")));
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

    @SafeVarargs
    private static void holds(Function<Source, List<String>> rule, List<Source>... sources) {
        none(Stream.of(sources).flatMap(List::stream).map(rule).flatMap(List::stream).toList());
    }

    private static void none(List<String> findings) {
        assertEquals("", String.join("\n", findings), "every line is one finding");
    }

    private static List<Source> both(List<Source> some, List<Source> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }
}
