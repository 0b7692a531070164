package sopwell.web.pages;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** What pages were seen to be made of, and which texts were seen on them. Not thread-safe. */
final class Looked {
    private static final String POLICY =
            "default-src 'self'; object-src 'none'; base-uri 'none'; frame-ancestors 'none';"
                    + " form-action 'self'";

    final Set<String> made = new TreeSet<>();
    final Set<String> shown = new TreeSet<>();
    final List<String> faults = new ArrayList<>();
    int pages;

    /** Takes down a page with its policy. */
    void page(HttpResponse<String> got, List<String> texts, String path) {
        String policy = got.headers().firstValue("content-security-policy").orElse("none");
        if (!policy.equals(POLICY)) {
            faults.add(path + " has the policy " + policy);
        }
        Document page = Jsoup.parse(got.body());
        Element config = page.selectFirst("meta[name=htmx-config]");
        String settings = config == null ? "" : config.attr("content");
        boolean isStill = page.select("script").isEmpty();
        if (!isStill
                && (!settings.contains("\"allowEval\":false")
                        || !settings.contains("\"includeIndicatorStyles\":false"))) {
            faults.add(path + " lets htmx do more than it may: " + settings);
        }
        note(page, texts, path);
        pages++;
    }

    /** Takes down what a page or a part of one is made of. */
    void note(Document page, List<String> texts, String path) {
        for (Element element : page.getAllElements()) {
            made.add(element.normalName());
            for (Attribute attribute : element.attributes()) {
                made.add(element.normalName() + " " + attribute.getKey());
                String value = attribute.getValue().strip().toLowerCase(Locale.ROOT);
                boolean leads = Set.of("href", "src", "action").contains(attribute.getKey());
                if (leads && (value.startsWith("//") || value.matches("[a-z]+:.*"))) {
                    faults.add(path + " leads to " + value);
                }
                if (texts.contains(attribute.getValue())) {
                    shown.add(attribute.getValue());
                }
            }
            String own = element.wholeOwnText().strip();
            if (texts.contains(own)) {
                shown.add(own);
            }
        }
    }
}
