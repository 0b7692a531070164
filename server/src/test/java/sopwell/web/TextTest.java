package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree;
import sopwell.SourceTree.Source;

/** The words on the screens: in both languages, complete, and nowhere else but in the bundles. */
class TextTest {
    private static final Path FOLDER = SourceTree.root().resolve("web/text");
    private static final Pattern USE = Pattern.compile("\\bt\\.(get|of)\\(\\s*\"([^\"]+)\"");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");
    private static final Pattern KEY = Pattern.compile("(?m)^([a-z0-9.-]+)\\s*[=:]");

    @Test
    void bothLanguagesSayTheSameThings() {
        none(differences(bundle("en"), bundle("es")));
    }

    @Test
    void noKeyStandsTwice() {
        none(twice(raw("en")));
        none(twice(raw("es")));
    }

    @Test
    void templatesUseOnlyKeysThatExist() {
        Set<String> known = bundle("en").keySet();
        none(SourceTree.templates().stream().flatMap(s -> unknown(s, known)).toList());
    }

    @Test
    void templatesHoldNoWordsOfTheirOwn() {
        none(SourceTree.templates().stream().flatMap(TextTest::hardCoded).toList());
    }

    @Test
    void findsAMissingKey() {
        assertEquals(List.of("a: only in one"), differences(Map.of("a", "x"), Map.of()));
        assertEquals(List.of("a: only in one"), differences(Map.of(), Map.of("a", "x")));
    }

    @Test
    void findsAnEmptyValueAndAMissingPlace() {
        assertEquals(List.of("a: empty"), differences(Map.of("a", "x"), Map.of("a", " ")));
        assertEquals(
                List.of("a: places [0] and []"),
                differences(Map.of("a", "order {0}"), Map.of("a", "pedido")));
    }

    @Test
    void findsAKeyThatStandsTwice() {
        assertEquals(List.of("a.b: twice"), twice("a.b = x\nc = y\na.b = z\n"));
    }

    @Test
    void findsAKeyThatDoesNotExist() {
        Source page = new Source("a.jte", "<p>${t.get(\"a\")} ${t.of(\"b\", 1)}</p>");
        assertEquals(List.of("a.jte: b is in no bundle"), unknown(page, Set.of("a")).toList());
    }

    @Test
    void findsWordsInATemplate() {
        assertEquals(List.of("Order"), TemplateText.hardCoded("<p>Order ${n}</p>"));
        assertEquals(List.of("Close"), TemplateText.hardCoded("<b title=\"Close ${n}\">${n}</b>"));
        assertEquals(
                List.of("línea"), TemplateText.hardCoded("@if(a > \"b\".length())línea@endif"));
        assertEquals(
                List.of("inside", "after"),
                TemplateText.hardCoded("@template.a.b(x = f(\")\"), y = @`<i>inside</i>`) after"));
    }

    @Test
    void leavesMarkupAndExpressionsAlone() {
        String page =
                """
                @import java.util.List
                @param List<String> rows = List.of("one")
                <%-- words --%><!-- words -->
                <h1 class="big">Sopwell &amp; ${t.get("a")}</h1>!{var word = "some";}
                @for(var r : rows)<a href="/x" alt="${r}">${r.isEmpty() ? "a word" : "}"} 5 m</a>
                @endfor<script src="/a.js">if (a) b()</script>
                """;
        assertEquals(List.of(), TemplateText.hardCoded(page));
    }

    private static List<String> differences(Map<String, String> one, Map<String, String> other) {
        Set<String> keys = new TreeSet<>(one.keySet());
        keys.addAll(other.keySet());
        List<String> found = new ArrayList<>();
        for (String key : keys) {
            if (!one.containsKey(key) || !other.containsKey(key)) {
                found.add(key + ": only in one");
            } else if (one.get(key).isBlank() || other.get(key).isBlank()) {
                found.add(key + ": empty");
            } else if (!places(one.get(key)).equals(places(other.get(key)))) {
                String places = places(one.get(key)) + " and " + places(other.get(key));
                found.add(key + ": places " + places);
            }
        }
        return found;
    }

    private static Set<String> places(String value) {
        Set<String> found = new TreeSet<>();
        PLACE.matcher(value).results().forEach(hit -> found.add(hit.group(1)));
        return found;
    }

    private static List<String> twice(String bundle) {
        Set<String> seen = new HashSet<>();
        return KEY.matcher(bundle)
                .results()
                .map(hit -> hit.group(1))
                .filter(key -> !seen.add(key))
                .map(key -> key + ": twice")
                .toList();
    }

    private static Stream<String> unknown(Source template, Set<String> known) {
        return USE.matcher(template.text())
                .results()
                .map(hit -> hit.group(2))
                .filter(key -> !known.contains(key))
                .map(key -> template.path() + ": " + key + " is in no bundle");
    }

    private static Stream<String> hardCoded(Source template) {
        return TemplateText.hardCoded(template.text()).stream()
                .map(word -> template.path() + ": \"" + word + "\" belongs into the bundles");
    }

    private static Map<String, String> bundle(String language) {
        Properties properties = new Properties();
        try {
            properties.load(new StringReader(raw(language)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> values = new TreeMap<>();
        properties.stringPropertyNames().forEach(k -> values.put(k, properties.getProperty(k)));
        return values;
    }

    private static String raw(String language) {
        try {
            return Files.readString(FOLDER.resolve(language + ".properties"));
        } catch (IOException e) {
            throw new UncheckedIOException("both bundles must be in web/text", e);
        }
    }

    private static void none(List<String> findings) {
        assertEquals("", String.join("\n", findings), "every line is one finding");
    }
}
