package sopwell.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * The page that the {@code type} of every problem document leads to, made of the list in the
 * interface's description so that there is one list. Stateless.
 */
final class ProblemsPage {
    private ProblemsPage() {}

    /** The page, from the description's {@code x-problems}. */
    static String html(byte[] openApi) {
        StringBuilder page = new StringBuilder(16_384);
        page.append("<!doctype html><html lang=\"en\"><meta charset=\"utf-8\">")
                .append("<meta name=\"viewport\" content=\"width=device-width\">")
                .append("<title>Sopwell: problems</title><h1>Problems</h1><p>Every problem")
                .append(" document names one of these in its <code>code</code>.</p><dl>");
        problems(openApi).properties().forEach(p -> entry(page, p.getKey(), p.getValue()));
        return page.append("</dl></html>").toString();
    }

    private static void entry(StringBuilder page, String code, JsonNode problem) {
        page.append("<dt id=\"").append(code).append("\"><code>").append(code);
        page.append("</code>, status ").append(problem.path("status").intValue());
        page.append("</dt><dd>").append(escaped(problem.path("meaning").asText())).append("<br>");
        page.append(escaped(problem.path("advice").asText())).append("</dd>");
    }

    private static JsonNode problems(byte[] openApi) {
        try {
            return new JsonMapper().readTree(openApi).path("x-problems");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
