package sopwell.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * Any bytes as a part of a request to a real stand: the body of an order, an idempotency key, a
 * path, or what a screen says, by the first byte. Never a broken answer, never a file of the box.
 */
public final class RequestFuzz {
    private static final StandServer STAND = StandServer.fresh();
    private static final Pattern INSIDES = Pattern.compile("(?i)exception|\\tat |undertow|java\\.");
    private static final Pattern UNFIT = Pattern.compile("[\\x00-\\x20\\x7f-\\xff]");

    private RequestFuzz() {}

    /** One request. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length < 2) {
            return;
        }
        String rest = new String(data, 1, data.length - 1, StandardCharsets.ISO_8859_1);
        try {
            switch (data[0] & 3) {
                case 0 -> check(post("fuzz-" + STAND.seq(), rest));
                case 1 -> check(post(rest.replaceAll("[\r\n]", ""), "{\"call\":\"nothing\"}"));
                case 2 -> check(request("GET /" + UNFIT.matcher(rest).replaceAll(""), "", ""));
                default -> say(rest);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static void check(String request) throws IOException {
        String got = RawConnection.exchange(STAND.port(), request);
        if (!got.startsWith("HTTP/1.1 ") || got.startsWith("HTTP/1.1 5")) {
            throw new AssertionError(got);
        }
        boolean shown =
                !got.startsWith("HTTP/1.1 200")
                        && INSIDES.matcher(got)
                                .results()
                                .anyMatch(inside -> !request.contains(inside.group()));
        if (shown || (got.contains("root:x:") && !request.contains("root:x:"))) {
            throw new AssertionError("insides: " + got);
        }
    }

    private static String post(String key, String body) {
        String headers = "Content-Type: application/json\r\nIdempotency-Key: " + key + "\r\n";
        return request(
                "POST /api/orders", headers + "Content-Length: " + body.length() + "\r\n", body);
    }

    private static String request(String line, String headers, String body) {
        return line
                + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n"
                + headers
                + "\r\n"
                + body;
    }

    private static void say(String text) throws IOException {
        try (RawScreen screen = RawScreen.at(STAND.port(), "pass")) {
            screen.say(text.length() > 2_000 ? text.substring(0, 2_000) : text);
            screen.say("whole");
            if (screen.nextFrame(10_000) == null) {
                throw new AssertionError("no board after: " + text);
            }
        }
    }
}
