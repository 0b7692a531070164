package sopwell.web;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a template as a guest would: the words in it that stand for themselves, and don't come from
 * a bundle. Knows as much of the template language as that needs.
 */
final class TemplateText {
    private static final Pattern COMMENT = Pattern.compile("(?s)<!--.*?-->");
    private static final Pattern SCRIPT = Pattern.compile("(?s)<script\\b.*?</script>");
    private static final Pattern TAG = Pattern.compile("(?s)<[/!a-zA-Z][^>]*>");
    private static final Pattern SPOKEN =
            Pattern.compile(
                    "(?<![\\w-])(title|placeholder|alt|aria-label|aria-description)"
                            + "\\s*=\\s*(\"[^\"]*\"|'[^']*')");
    private static final Pattern ENTITY = Pattern.compile("&#?\\w+;");
    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{M}'’]+");
    private static final Pattern CALL =
            Pattern.compile("@(if|elseif|for|template(\\.\\w+)+)\\s*\\(");
    private static final Pattern MARK = Pattern.compile("@(else|endif|endfor|raw|endraw)\\b");
    private static final Pattern HEAD = Pattern.compile("@(import|param)\\b");
    private static final Pattern VALUE = Pattern.compile("(\\$|\\$unsafe|!)\\{");

    /** The product's name is the same in every language. */
    private static final String NAME = "Sopwell";

    private final String text;
    private final StringBuilder html = new StringBuilder();
    private int at;

    private TemplateText(String text) {
        this.text = text;
    }

    /** Words written into the template: in element text, and in attributes that are read out. */
    static List<String> hardCoded(String template) {
        TemplateText reader = new TemplateText(template);
        while (reader.at < template.length()) {
            reader.markup(false);
            reader.at++;
        }
        String html = SCRIPT.matcher(reader.html).replaceAll(" ");
        html = COMMENT.matcher(html).replaceAll(" ");
        Stream<String> spoken = SPOKEN.matcher(html).results().map(hit -> hit.group(2));
        Stream<String> shown = Stream.of(TAG.matcher(html).replaceAll(" "));
        return Stream.concat(shown, spoken).flatMap(TemplateText::words).toList();
    }

    private static Stream<String> words(String shown) {
        String plain = ENTITY.matcher(shown).replaceAll(" ");
        return WORD.matcher(plain).results().map(hit -> hit.group()).filter(w -> !w.equals(NAME));
    }

    /** Copies markup up to the end, or up to the backtick that ends a block of content. */
    private void markup(boolean block) {
        while (at < text.length() && !(block && text.charAt(at) == '`')) {
            if (text.startsWith("<%--", at)) {
                int end = text.indexOf("--%>", at);
                at = end < 0 ? text.length() : end + 4;
            } else if (skipped(MARK)) {
                html.append(' ');
            } else if (skipped(CALL)) {
                java(')');
            } else if (skipped(VALUE)) {
                java('}');
            } else if (skipped(HEAD)) {
                java('\n');
            } else {
                html.append(text.charAt(at));
                at++;
            }
        }
    }

    private boolean skipped(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(at, text.length());
        boolean here = matcher.lookingAt();
        if (here) {
            at = matcher.end();
        }
        return here;
    }

    /** Skips Java up to its closing character; blocks of content inside are markup again. */
    private void java(char end) {
        List<Character> open = new ArrayList<>();
        html.append(' ');
        while (at < text.length()) {
            char c = text.charAt(at);
            if (open.isEmpty() && c == end) {
                at++;
                return;
            }
            if (c == '"' || c == '\'') {
                literal(c);
            } else if (text.startsWith("@`", at)) {
                at += 2;
                html.append("<block>");
                markup(true);
                html.append("</block>");
            } else if ("({[".indexOf(c) >= 0) {
                open.add(c);
            } else if (")}]".indexOf(c) >= 0 && !open.isEmpty()) {
                open.remove(open.size() - 1);
            }
            at++;
        }
    }

    /** Leaves {@code at} on the closing quote. */
    private void literal(char quote) {
        at++;
        while (at < text.length() && text.charAt(at) != quote) {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
    }
}
