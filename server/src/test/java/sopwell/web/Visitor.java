package sopwell.web;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import sopwell.GateStand;

/** A browser of its own at a closed stand: keeps cookies, and sends the origin with forms. */
final class Visitor {
    private final GateStand stand;
    private final Map<String, String> cookies = new TreeMap<>();

    Visitor(GateStand stand) {
        this.stand = stand;
    }

    /** Goes to a page. */
    HttpResponse<String> get(String path) {
        return send(stand.request(path).header("Accept", "text/html").GET());
    }

    /** Sends a form from the stand's own page; fields are name and value in turn. */
    HttpResponse<String> post(String path, String... fields) {
        return send(form(path, fields).header("Origin", stand.origin()));
    }

    /** Sends a form that does not say which page it is from. */
    HttpResponse<String> stray(String path, String... fields) {
        return send(form(path, fields));
    }

    /** What the browser keeps under a name, or null. */
    String cookie(String name) {
        return cookies.get(name);
    }

    /** Where an answer leads, or empty. */
    static String leads(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    private HttpRequest.Builder form(String path, String... fields) {
        Map<String, String> named = new TreeMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            named.put(fields[i], fields[i + 1]);
        }
        String body =
                named.entrySet().stream()
                        .map(field -> field.getKey() + "=" + encoded(field.getValue()))
                        .collect(Collectors.joining("&"));
        return stand.request(path)
                .header("Accept", "text/html")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        if (!cookies.isEmpty()) {
            request.header(
                    "Cookie",
                    cookies.entrySet().stream()
                            .map(cookie -> cookie.getKey() + "=" + cookie.getValue())
                            .collect(Collectors.joining("; ")));
        }
        HttpResponse<String> answer = stand.send(request.build());
        for (String set : answer.headers().allValues("Set-Cookie")) {
            String pair = set.substring(0, set.indexOf(';'));
            String name = pair.substring(0, pair.indexOf('='));
            if (set.contains("Max-Age=0")) {
                cookies.remove(name);
            } else {
                cookies.put(name, pair.substring(name.length() + 1));
            }
        }
        return answer;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
