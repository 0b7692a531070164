package sopwell.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import io.undertow.server.HttpServerExchange;
import io.undertow.util.PathTemplateMatch;
import sopwell.web.Fields;
import sopwell.web.T;

/**
 * One request for a change, read and checked so far as every such request must be. Immutable.
 *
 * @param key the idempotency key
 * @param fingerprint what is asked, condensed
 * @param body the JSON object; empty when nothing was sent
 * @param text sentences in the language asked for
 */
record Ask(HttpServerExchange exchange, String key, String fingerprint, JsonNode body, T text) {
    /** A parameter of the path. */
    String path(String name) {
        return path(exchange, name);
    }

    /** A parameter of the path; one of the query that has the same name is not meant. */
    static String path(HttpServerExchange exchange, String name) {
        return exchange.getAttachment(PathTemplateMatch.ATTACHMENT_KEY).getParameters().get(name);
    }

    Fields fields() {
        return new Fields(body, "");
    }
}
