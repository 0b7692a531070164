package sopwell.web.api;

import java.util.List;
import java.util.Map;

/**
 * A request that must be refused, and how. Immutable.
 *
 * @param name what is wrong with it
 * @param path where it is sent; {@code {order}} and {@code {part}} stand for ones that exist
 * @param headers in place of, or beside, the usual ones; an empty value leaves one out
 * @param status the answer's
 * @param code the problem's
 */
record BadInput(
        String name,
        String method,
        String path,
        Map<String, String> headers,
        String body,
        int status,
        String code) {
    private static final String ORDERS = "/api/orders";

    @Override
    public String toString() {
        return name;
    }

    /** Every one of them. */
    static List<BadInput> all() {
        return List.of(BODIES, FIELDS, CALLS, LINES, HEADERS, PATHS, MOVES).stream()
                .flatMap(List::stream)
                .toList();
    }

    private static final List<BadInput> BODIES =
            List.of(
                    order("no body", "", 422, "call-or-lines"),
                    order("half an object", "{\"call\": \"beef\"", 400, "bad-json"),
                    order("no JSON", "call=beef", 400, "bad-json"),
                    order("a list", "[{\"call\": \"beef\"}]", 400, "bad-json"),
                    order("a text", "\"beef\"", 400, "bad-json"),
                    order("two objects", "{\"call\": \"beef\"}{}", 400, "bad-json"),
                    order("a field twice", "{\"call\":\"beef\",\"call\":\"dog\"}", 400, "bad-json"),
                    order("a comment", "{/* now */\"call\":\"beef\"}", 400, "bad-json"),
                    order("1,000 levels", "{\"lines\":" + "[".repeat(1_000), 400, "bad-json"),
                    order("60,000 digits", "{\"call\":" + "7".repeat(60_000), 400, "bad-json"),
                    order("100,000 digits", "{\"call\":" + "7".repeat(100_000), 413, "too-large"),
                    order("a long name", "{\"" + "x".repeat(60_000) + "\":1}", 400, "bad-json"),
                    order("a NUL", "{\"call\":\"beef\0\"}", 400, "bad-json"),
                    order("not a number", "{\"call\":NaN}", 400, "bad-json"),
                    order("70,000 blanks", " ".repeat(70_000) + "{}", 413, "too-large"));

    private static final List<BadInput> FIELDS =
            List.of(
                    order(
                            "an unknown field",
                            "{\"call\":\"beef\",\"nam\":\"x\"}",
                            400,
                            "bad-field"),
                    order("a number for a call", "{\"call\":7}", 400, "bad-field"),
                    order("a text for lines", "{\"lines\":\"beef\"}", 400, "bad-field"),
                    order("texts for lines", "{\"lines\":[\"beef\"]}", 400, "bad-field"),
                    order(
                            "a text for a flag",
                            "{\"call\":\"beef\",\"toGo\":\"yes\"}",
                            400,
                            "bad-field"),
                    order(
                            "a number for a name",
                            "{\"call\":\"beef\",\"name\":1}",
                            400,
                            "bad-field"),
                    line("no item", "{\"quantity\":1}", 400, "bad-field"),
                    line(
                            "half a sandwich",
                            "{\"item\":\"beef\",\"quantity\":0.5}",
                            400,
                            "bad-field"),
                    line("a float", "{\"item\":\"beef\",\"quantity\":1e2}", 400, "bad-field"),
                    line(
                            "12 digits",
                            "{\"item\":\"beef\",\"quantity\":999999999999}",
                            400,
                            "bad-field"),
                    line(
                            "a text for modifiers",
                            "{\"item\":\"beef\",\"modifiers\":\"hot\"}",
                            400,
                            "bad-field"),
                    line(
                            "numbers for modifiers",
                            "{\"item\":\"beef\",\"modifiers\":[1]}",
                            400,
                            "bad-field"),
                    line("a field of its own", "{\"item\":\"beef\",\"price\":1}", 400, "bad-field"),
                    order(
                            "call and lines",
                            "{\"call\":\"beef\",\"lines\":[]}",
                            422,
                            "call-or-lines"),
                    order("neither", "{\"name\":\"Ines\"}", 422, "call-or-lines"),
                    order("a null call", "{\"call\":null}", 422, "call-or-lines"),
                    order("no lines", "{\"lines\":[]}", 422, "no-lines"),
                    order(
                            "a tab in a name",
                            "{\"call\":\"beef\",\"name\":\"I\\tnes\"}",
                            422,
                            "text-unclear"),
                    order(
                            "a NUL in a name",
                            "{\"call\":\"beef\",\"name\":\"I\\u0000\"}",
                            422,
                            "text-unclear"),
                    order(
                            "a turned name",
                            "{\"call\":\"beef\",\"name\":\"\\u202eI\"}",
                            422,
                            "text-unclear"),
                    order(
                            "half a character",
                            "{\"call\":\"beef\",\"name\":\"\\ud83e\"}",
                            422,
                            "text-unclear"),
                    order("a long guest", name("I".repeat(41)), 422, "text-too-long"));

    private static final List<BadInput> CALLS =
            List.of(
                    call("an unknown word", "beef with gravel", "unknown-word"),
                    call("markup", "<img src=x onerror=alert(1)>", "unknown-word"),
                    call("a clash", "beef dry dipped", "clash"),
                    call("none of them", "0 beef", "quantity-range"),
                    call("a hundred", "100 beef", "quantity-range"),
                    call("10,000 characters", "beef, ".repeat(1_700), "too-long"),
                    call("nothing", "", "empty"),
                    call("blanks", "   ", "empty"),
                    call("commas", ",,,", "empty"),
                    call("41 lines", "dog, ".repeat(40) + "dog", "too-many-lines"),
                    call("no item", "dipped hot", "no-item"),
                    call("two items", "beef fries", "two-items"),
                    call("wanted and not", "beef hot no hot", "wanted-and-refused"),
                    call("three cheeses", "beef prov mozz cheddar", "too-many"));

    private static final List<BadInput> LINES =
            List.of(
                    line("no such item", "{\"item\":\"gravel\"}", 422, "unknown-item"),
                    line(
                            "no such size",
                            "{\"item\":\"beef\",\"size\":\"huge\"}",
                            422,
                            "unknown-size"),
                    line("no such modifier", modifiers("\"gravel\""), 422, "unknown-option"),
                    line("a clash", modifiers("\"dry\",\"dipped\""), 422, "clash"),
                    line(
                            "25 modifiers",
                            modifiers("\"hot\",".repeat(24) + "\"hot\""),
                            422,
                            "too-many-modifiers"),
                    line("none", "{\"item\":\"beef\",\"quantity\":0}", 422, "quantity"),
                    line("a hundred", "{\"item\":\"beef\",\"quantity\":100}", 422, "quantity"),
                    line("below none", "{\"item\":\"beef\",\"quantity\":-1}", 422, "quantity"),
                    order(
                            "41 lines",
                            "{\"lines\":["
                                    + "{\"item\":\"fries\"},".repeat(40)
                                    + "{\"item\":\"fries\"}]}",
                            422,
                            "too-many-lines"));

    private static final List<BadInput> HEADERS =
            List.of(
                    with("no key", Map.of("Idempotency-Key", ""), 400, "key-missing"),
                    with("a blank key", Map.of("Idempotency-Key", "  "), 400, "key-missing"),
                    with("an empty key", Map.of("Idempotency-Key", "\"\""), 400, "key-wrong"),
                    with("a long key", Map.of("Idempotency-Key", "k".repeat(81)), 400, "key-wrong"),
                    with("a key of words", Map.of("Idempotency-Key", "a b"), 400, "key-wrong"),
                    with("plain text", Map.of("Content-Type", "text/plain"), 415, "not-json"),
                    with(
                            "a form",
                            Map.of("Content-Type", "application/x-www-form-urlencoded"),
                            415,
                            "not-json"),
                    with(
                            "nearly JSON",
                            Map.of("Content-Type", "application/jsonx"),
                            415,
                            "not-json"),
                    with("no type", Map.of("Content-Type", ""), 415, "not-json"),
                    with(
                            "a foreign page",
                            Map.of("Origin", "http://evil.example"),
                            403,
                            "foreign-origin"),
                    with("no page", Map.of("Origin", "null"), 403, "foreign-origin"),
                    with("no address", Map.of("Origin", "http://["), 403, "foreign-origin"),
                    with(
                            "another port",
                            Map.of("Origin", "http://127.0.0.1:1"),
                            403,
                            "foreign-origin"),
                    with(
                            "across sites",
                            Map.of("Sec-Fetch-Site", "cross-site"),
                            403,
                            "foreign-origin"),
                    with(
                            "a sister site",
                            Map.of("Sec-Fetch-Site", "same-site"),
                            403,
                            "foreign-origin"));

    private static final List<BadInput> PATHS =
            List.of(
                    sent("PUT", "/api/orders", 405, "method-wrong"),
                    sent("DELETE", "/api/orders/{order}", 405, "method-wrong"),
                    sent("POST", "/healthz", 405, "method-wrong"),
                    sent("GET", "/api/calls", 405, "method-wrong"),
                    sent("TRACE", "/api/orders", 405, "method-wrong"),
                    sent("GET", "/api/nothing", 404, "not-found"),
                    sent("GET", "/api/orders/", 404, "unknown-order"),
                    sent("GET", "/api/..%2f..%2fetc/passwd", 404, "not-found"),
                    sent("GET", "/api/orders/1", 404, "unknown-order"),
                    sent("GET", "/api/orders/%3Cscript%3E", 404, "unknown-order"),
                    sent("GET", "/api/orders?open=maybe", 422, "open-wrong"),
                    sent("GET", "/api/prep/plan?days=0", 422, "plan-dates-wrong"),
                    sent("GET", "/api/prep/plan?from=soon", 422, "plan-dates-wrong"),
                    sent("GET", "/api/boards/roof", 404, "no-such-board"),
                    sent("GET", "/api/days/2026-13-01/mix", 422, "date-wrong"),
                    sent("GET", "/api/days/yesterday/waits", 422, "date-wrong"),
                    sent("GET", "/api/days/1999-12-31/mix", 404, "no-such-day"));

    private static final List<BadInput> MOVES =
            List.of(
                    move("/api/parts/nothing/up", "", 404, "unknown-part"),
                    move("/api/parts/20260101-0001.1.line/up", "", 404, "unknown-part"),
                    move("/api/parts/{part}/brought-back", "", 409, "not-up"),
                    move("/api/parts/{part}/seen", "", 409, "nothing-to-see"),
                    move("/api/parts/{part}/up", "{\"now\":true}", 400, "bad-field"),
                    move("/api/orders/{order}/handed", "", 409, "not-whole"),
                    move("/api/orders/{order}/brought-back", "", 409, "order-not-handed"),
                    move("/api/orders/nothing/handed", "", 404, "unknown-order"),
                    move("/api/orders/{order}/voids", "", 422, "reason-missing"),
                    move(
                            "/api/orders/{order}/voids",
                            "{\"reason\":\"x\",\"version\":9}",
                            409,
                            "stale-version"),
                    move(
                            "/api/orders/{order}/voids",
                            "{\"reason\":\"" + "x".repeat(201) + "\"}",
                            422,
                            "text-too-long"),
                    move("/api/orders/{order}/changes", "{\"call\":\"beef\"}", 400, "bad-field"),
                    move(
                            "/api/orders/{order}/changes",
                            "{\"version\":2,\"call\":\"beef\"}",
                            409,
                            "stale-version"),
                    move(
                            "/api/orders/{order}/changes",
                            "{\"version\":1,\"call\":\"beef\"}",
                            409,
                            "nothing-changed"),
                    move(
                            "/api/orders/{order}/changes",
                            "{\"version\":1,\"call\":\"gravel\"}",
                            422,
                            "unknown-word"),
                    move("/api/days/closed", "", 409, "orders-open"));

    private static BadInput order(String name, String body, int status, String code) {
        return new BadInput(name, "POST", ORDERS, Map.of(), body, status, code);
    }

    private static BadInput call(String name, String call, String code) {
        return order("a call of " + name, "{\"call\":\"" + call + "\"}", 422, code);
    }

    private static BadInput line(String name, String line, int status, String code) {
        return order("a line with " + name, "{\"lines\":[" + line + "]}", status, code);
    }

    private static BadInput with(
            String name, Map<String, String> headers, int status, String code) {
        String body = "{\"call\":\"beef\"}";
        return new BadInput(name, "POST", ORDERS, headers, body, status, code);
    }

    private static BadInput sent(String method, String path, int status, String code) {
        return new BadInput(method + " " + path, method, path, Map.of(), "", status, code);
    }

    private static BadInput move(String path, String body, int status, String code) {
        String name = path + " " + code;
        return new BadInput(name, "POST", path, Map.of(), body, status, code);
    }

    private static String modifiers(String listed) {
        return "{\"item\":\"beef\",\"modifiers\":[" + listed + "]}";
    }

    private static String name(String name) {
        return "{\"call\":\"beef\",\"name\":\"" + name + "\"}";
    }
}
