package sopwell.web.pages;

import java.util.Map;

/**
 * What a page route answers. Immutable.
 *
 * @param status an HTTP status
 * @param html a page or a fragment; empty for a redirect
 * @param headers further headers
 */
record Reply(int status, String html, Map<String, String> headers) {
    Reply {
        headers = Map.copyOf(headers);
    }

    static Reply ok(String html) {
        return new Reply(200, html, Map.of());
    }

    static Reply of(int status, String html) {
        return new Reply(status, html, Map.of());
    }

    static Reply seeOther(String path) {
        return new Reply(303, "", Map.of("Location", path));
    }

    Reply with(String header, String value) {
        return new Reply(status, html, Map.of(header, value));
    }
}
