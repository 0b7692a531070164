package sopwell;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import sopwell.SourceTree.Source;

/** Rules over templates and over what lies at the top of the repository. */
final class TemplateRules {
    private TemplateRules() {}

    /** A thing that the content security policy, or htmx without eval, makes dead or dangerous. */
    private record Ban(String what, String instead) {}

    private static final List<Ban> BANS =
            List.of(
                    new Ban("\\bhx-on\\b[:\\w-]*", "a small script and addEventListener"),
                    new Ban(
                            "\\bhx-trigger\\s*=\\s*[\"'][^\"'\\[]*\\[",
                            "no filter: without eval it fires on every event"),
                    new Ban(
                            "\\bhx-(vals|headers|vars|request)\\s*=\\s*[\"']\\s*js(avascript)?:",
                            "plain JSON: eval is off"),
                    new Ban("(?<![\\w-])style\\s*=\\s*[\"']", "a class"),
                    new Ban("<style\\b", "a style sheet in web/static/css"),
                    new Ban("<script\\b(?![^>]*\\bsrc\\s*=)", "a file in web/static/js"),
                    new Ban(
                            "(?<=[\\s\"'])on[a-z]+\\s*=\\s*[\"']",
                            "a small script and addEventListener"),
                    new Ban("\\bjavascript:", "a small script"),
                    new Ban("\\$unsafe\\{", "${…}, which escapes"));

    private static final Set<String> TOP =
            Set.of("README.md", "DEVELOPERS.md", "pom.xml", "server", "web", "docs", "target");

    /** What a strict page must not hold. */
    static List<String> looseMarkup(Source template) {
        List<String> found = new ArrayList<>();
        for (Ban ban : BANS) {
            Pattern pattern = Pattern.compile(ban.what(), Pattern.CASE_INSENSITIVE);
            found.addAll(TextRules.hits(template, template.text(), pattern, ban.instead()));
        }
        return found;
    }

    /** Entries beside the ones that everybody expects; names that start with a dot are free. */
    static List<String> strayTop(List<String> names) {
        return new TreeSet<>(names)
                .stream()
                        .filter(name -> !name.startsWith(".") && !TOP.contains(name))
                        .map(name -> name + ": does not belong at the top of the repository")
                        .toList();
    }
}
