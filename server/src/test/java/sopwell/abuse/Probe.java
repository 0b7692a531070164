package sopwell.abuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A request that must be refused. Immutable.
 *
 * @param request what goes over the wire, which asks for the connection to be closed
 * @param statuses what it may be answered
 */
record Probe(String name, String request, Set<Integer> statuses) {
    private static final int TRAVERSALS = 200;

    /** Every one, for a target. */
    static List<Probe> all(Target target) {
        List<Probe> all = new ArrayList<>();
        sizes(target, all);
        json(target, all);
        smuggling(target, all);
        hosts(target, all);
        protocols(target, all);
        for (String path : traversals()) {
            all.add(new Probe("traversal " + path, get(target, path, ""), Set.of(0, 400, 404)));
        }
        return all;
    }

    private static void sizes(Target target, List<Probe> all) {
        String fat = "{\"call\":\"" + "x".repeat(65_537 - 11) + "\"}";
        all.add(json(target, "a body of 64 KiB and 1", fat, 413));
        all.add(
                new Probe(
                        "a body said to have 1 GB",
                        "POST /api/orders HTTP/1.1\r\nHost: "
                                + target.name()
                                + "\r\nContent-Type: application/json\r\n"
                                + "Idempotency-Key: g\r\nConnection: close\r\n"
                                + "Content-Length: 1073741824\r\n\r\n{",
                        Set.of(413)));
        Set<Integer> heads = Set.of(400, 431);
        String header = "X-Long: " + "x".repeat(16_385) + "\r\n";
        all.add(new Probe("a header of 16 KiB and 1", get(target, "/healthz", header), heads));
        String many = "X-A: 1\r\n".repeat(51);
        all.add(new Probe("more than 50 headers", get(target, "/healthz", many), heads));
        String query = "/healthz?" + "a=1&".repeat(101);
        all.add(new Probe("101 parameters", get(target, query, ""), Set.of(400, 414)));
    }

    private static void json(Target target, List<Probe> all) {
        all.add(json(target, "10,000 levels", "{\"lines\":" + "[".repeat(10_000), 400));
        String digits = "{\"lines\":[{\"quantity\":" + "9".repeat(60_000) + "}]}";
        all.add(json(target, "a number of 60,000 digits", digits, 400));
        String longer = "{\"lines\":[{\"quantity\":" + "9".repeat(100_000) + "}]}";
        all.add(json(target, "a number of 100,000 digits", longer, 413));
        all.add(json(target, "a text of 1 MB", "{\"call\":\"" + "x".repeat(1_000_000), 413));
        all.add(json(target, "a text of 60,000", "{\"call\":\"" + "x".repeat(60_000) + "\"}", 400));
        all.add(json(target, "a field twice", "{\"call\":\"a\",\"call\":\"b\"}", 400));
        all.add(json(target, "an unknown field", "{\"call\":\"beef\",\"x\":1}", 400));
        String tokens = "{\"lines\":[" + "1,".repeat(30_000) + "1]}";
        all.add(json(target, "30,000 values", tokens, 400));
        String zip =
                target.post(
                        "/api/orders",
                        "Idempotency-Key: z\r\nConnection: close\r\nContent-Encoding: gzip\r\n",
                        "\u001f\u008b\b\0\0\0\0\0\0\u0003\u00ab\u00ae\u0005\0C\u00bf\u00a6\u00a3");
        all.add(new Probe("a body in gzip", zip, Set.of(400, 415)));
        String form =
                target.post("/api/orders", "Idempotency-Key: m\r\nConnection: close\r\n", "--b--")
                        .replace("application/json", "multipart/form-data; boundary=b");
        all.add(new Probe("a form in parts", form, Set.of(415)));
    }

    private static void smuggling(Target target, List<Probe> all) {
        String end = "Connection: close\r\n";
        String host = "Host: " + target.name() + "\r\n";
        String post = "POST /api/calls HTTP/1.1\r\n" + host + end;
        Set<Integer> bad = Set.of(400);
        String chunks = "Transfer-Encoding: chunked\r\n";
        String none = "\r\n0\r\n\r\n";
        all.add(new Probe("CL and TE", post + "Content-Length: 4\r\n" + chunks + none, bad));
        all.add(new Probe("TE and CL", post + chunks + "Content-Length: 4\r\n" + none, bad));
        String two = post + "Content-Length: 4\r\nContent-Length: 9\r\n\r\n{}{}{}{}{}";
        all.add(new Probe("two lengths", two, bad));
        String blank = get(target, "/healthz", "X-A : b\r\n");
        all.add(new Probe("a blank before the colon", blank, bad));
        String lead = "GET /healthz HTTP/1.1\r\n X-A: b\r\n" + host + end + "\r\n";
        all.add(new Probe("a first header that begins with a blank", lead, bad));
        String bare = ("GET /healthz HTTP/1.1\r\n" + host + end + "\r\n").replace("\r", "");
        all.add(new Probe("bare line feeds", bare, bad));
        String folded = get(target, "/healthz", "X-A: b\r\n c\r\n");
        // RFC 9112, 5.2: refused, or each fold read as a blank.
        all.add(new Probe("a folded header", folded, Set.of(200, 400)));
        String signed = post + "Content-Length: +4\r\n\r\n{}{}";
        all.add(new Probe("a length with a sign", signed, bad));
    }

    private static void hosts(Target target, List<Probe> all) {
        List<String> foreign =
                List.of(
                        "evil.example",
                        "evil.example:" + target.port(),
                        target.host().getHostAddress() + ".evil.example",
                        "user@" + target.name(),
                        target.host().getHostAddress() + "@evil.example",
                        "",
                        "127.1",
                        "[::2]",
                        "0.0.0.0",
                        "localhost.",
                        "localhost.evil.example");
        for (String host : foreign) {
            String request =
                    "GET /healthz HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
            all.add(new Probe("host " + host, request, Set.of(400, 421)));
        }
        String two = get(target, "/healthz", "Host: evil.example\r\n");
        all.add(new Probe("two hosts", two, Set.of(400, 421)));
    }

    private static void protocols(Target target, List<Probe> all) {
        all.add(new Probe("HTTP/2", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n", Set.of(0, 400)));
        String method = get(target, "/healthz", "").replace("GET ", "TRACE ");
        all.add(new Probe("TRACE", method, Set.of(403, 405)));
        String tunnel = get(target, "evil.example:80", "").replace("GET ", "CONNECT ");
        all.add(new Probe("CONNECT", tunnel, Set.of(400, 403, 404, 405)));
    }

    /** Ways to say "one folder up", before names that many machines have. */
    static List<String> traversals() {
        List<String> ups =
                List.of(
                        "../",
                        "%2e%2e/",
                        "%2e%2e%2f",
                        "..%2f",
                        "..%5c",
                        "..\\",
                        "..;/",
                        "%2e./",
                        ".%2e/",
                        "....//",
                        "%252e%252e%252f",
                        "%c0%ae%c0%ae/",
                        "..%00/",
                        "..%c0%af",
                        "%uff0e%uff0e/",
                        "..%0d/",
                        "/..//",
                        "./../",
                        "%2f..%2f",
                        ".%00./");
        List<String> names = List.of("etc/passwd", "stand.json", "log.sqlite", "web/Server.class");
        List<String> starts = List.of("/static/", "/", "/docs/", "/static/js/");
        List<String> all = new ArrayList<>();
        for (String up : ups) {
            for (int i = 0; i < names.size(); i++) {
                for (int deep : new int[] {2, 3, 9}) {
                    all.add(
                            starts.get((i + deep) % starts.size())
                                    + up.repeat(deep)
                                    + names.get(i));
                }
            }
        }
        return all.subList(0, TRAVERSALS);
    }

    private static Probe json(Target target, String name, String body, int status) {
        String headers = "Idempotency-Key: j\r\nConnection: close\r\n";
        return new Probe(name, target.post("/api/orders", headers, body), Set.of(status));
    }

    private static String get(Target target, String path, String headers) {
        return "GET "
                + path
                + " HTTP/1.1\r\nHost: "
                + target.name()
                + "\r\nConnection: close\r\n"
                + headers
                + "\r\n";
    }
}
