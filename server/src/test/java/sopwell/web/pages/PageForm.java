package sopwell.web.pages;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The fields of a page's first form to send, as a browser would send them untouched. */
final class PageForm {
    private static final Pattern FIELD =
            Pattern.compile(
                    "<(input|select|button)\\b([^>]*)>(.*?)(?=<(?:input|select|button)\\b|$)",
                    Pattern.DOTALL);
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-z-]+)(?:=\"([^\"]*)\")?");
    private static final Pattern CHOSEN = Pattern.compile("<option value=\"([^\"]*)\"\\s+selected");
    private static final Pattern FIRST = Pattern.compile("<option value=\"([^\"]*)\"");

    private PageForm() {}

    /** The fields of the form that is sent to a path. */
    static Map<String, String> of(String page, String path) {
        int from = page.indexOf("<form action=\"" + path + "\"");
        String form = page.substring(from, page.indexOf("</form>", from));
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher field = FIELD.matcher(form);
        while (field.find()) {
            Map<String, String> is = attributes(field.group(2));
            String name = is.getOrDefault("name", "");
            String type = is.getOrDefault("type", "");
            boolean offered = type.equals("checkbox") || type.equals("radio");
            if (name.isEmpty() || field.group(1).equals("button")) {
                continue;
            }
            if (field.group(1).equals("select")) {
                fields.put(name, chosen(field.group(3)));
            } else if (!offered || is.containsKey("checked")) {
                fields.put(name, is.getOrDefault("value", ""));
            }
        }
        return fields;
    }

    private static String chosen(String options) {
        Matcher chosen = CHOSEN.matcher(options);
        Matcher first = FIRST.matcher(options);
        return chosen.find() ? chosen.group(1) : first.find() ? first.group(1) : "";
    }

    private static Map<String, String> attributes(String text) {
        Map<String, String> attributes = new LinkedHashMap<>();
        Matcher one = ATTRIBUTE.matcher(text);
        while (one.find()) {
            attributes.put(one.group(1), one.group(2) == null ? "" : plain(one.group(2)));
        }
        return attributes;
    }

    private static String plain(String escaped) {
        return escaped.replace("&#39;", "'")
                .replace("&#34;", "\"")
                .replace("&lt;", "<")
                .replace("&amp;", "&");
    }
}
