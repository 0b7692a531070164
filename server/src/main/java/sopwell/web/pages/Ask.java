package sopwell.web.pages;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.handlers.Cookie;
import io.undertow.util.PathTemplateMatch;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import sopwell.Limits;
import sopwell.audit.Who;
import sopwell.desk.StandCommand;
import sopwell.money.CardNumber;
import sopwell.web.Actors;
import sopwell.web.Fingerprint;

/**
 * One request of a screen, read. Local to its request.
 *
 * @param screen the screen's settings
 * @param named what the address names, in its path or query
 * @param fields the form's fields; a field that was sent twice has its first value
 * @param key the idempotency key from the header, or from the form's field {@code key}, or empty
 * @param fingerprint condenses method, path and body
 * @param cashier whose till the screen takes money for, from its cookie, or empty
 * @param who who asks
 * @param partial whether a fragment is wanted rather than a page
 * @param tooLarge whether the body was larger than any form of ours, and not read to its end
 */
record Ask(
        Screen screen,
        Map<String, String> named,
        Map<String, String> fields,
        String key,
        String fingerprint,
        String cashier,
        Who who,
        boolean partial,
        boolean tooLarge) {
    /** The cookie by which a screen remembers its cashier. */
    static final String CASHIER = "cashier";

    /** What forms and addresses carry that nobody types; a time in ms may look like a card's. */
    private static final Set<String> NOT_TYPED =
            Set.of(
                    "key",
                    "order",
                    "part",
                    "taken-at",
                    "told-cents",
                    "told-menu",
                    "version",
                    "with");

    /** A form of the counter: its call in percent escapes, a name, a reason, and small fields. */
    static final int BODY_BYTES_MAX = (int) Limits.BODY_BYTES_MAX;

    static Ask read(HttpServerExchange exchange, Screen screen) throws IOException {
        byte[] body = body(exchange);
        Map<String, String> fields = fields(body);
        String header = exchange.getRequestHeaders().getFirst("Idempotency-Key");
        String key = header == null ? fields.getOrDefault("key", "") : header;
        String print = Fingerprint.of(exchange, body);
        return new Ask(
                screen,
                named(exchange),
                fields,
                key,
                print,
                cashier(exchange),
                Actors.of(exchange),
                exchange.getRequestHeaders().contains("HX-Request"),
                body.length > BODY_BYTES_MAX);
    }

    /** A command as asked for by whoever asks. */
    StandCommand by(StandCommand command) {
        return new StandCommand.By(who, command);
    }

    String in(String name) {
        return named.getOrDefault(name, "");
    }

    String field(String name) {
        return fields.getOrDefault(name, "").strip();
    }

    /** Why something is done: what was written, else what was tapped. */
    String reason() {
        String written = field("written");
        return written.isEmpty() ? field("reason") : written;
    }

    /**
     * Whether anything that a person typed looks like the number of a payment card; nothing takes
     * one. Every tenth time of day in milliseconds would, so what scripts fill in is not asked.
     */
    boolean holdsCard() {
        return holdsCard(fields) || holdsCard(named) || CardNumber.isIn(cashier);
    }

    private static boolean holdsCard(Map<String, String> texts) {
        return texts.entrySet().stream()
                .filter(text -> !NOT_TYPED.contains(text.getKey()))
                .anyMatch(
                        text -> CardNumber.isIn(text.getKey()) || CardNumber.isIn(text.getValue()));
    }

    /** What was typed, to be shown again: all but what looks like the number of a card. */
    Map<String, String> shown() {
        Map<String, String> shown = new HashMap<>(fields);
        shown.values().removeIf(CardNumber::isIn);
        return shown;
    }

    boolean hasKey() {
        return !key.isBlank() && key.length() <= Limits.KEY_CHARS_MAX;
    }

    private static byte[] body(HttpServerExchange exchange) throws IOException {
        if (!exchange.isBlocking()) {
            exchange.startBlocking();
        }
        InputStream in = exchange.getInputStream();
        return in.readNBytes(BODY_BYTES_MAX + 1);
    }

    private static String cashier(HttpServerExchange exchange) {
        Cookie cookie = exchange.getRequestCookie(CASHIER);
        String cashier = cookie == null ? "" : decoded(cookie.getValue());
        return cashier.length() > Limits.NAME_CHARS_MAX ? "" : cashier.strip();
    }

    /** The address's query, and over it what its path names. */
    private static Map<String, String> named(HttpServerExchange exchange) {
        Map<String, String> named = new HashMap<>();
        exchange.getQueryParameters().forEach((name, all) -> named.put(name, all.getFirst()));
        PathTemplateMatch match = exchange.getAttachment(PathTemplateMatch.ATTACHMENT_KEY);
        if (match != null) {
            named.putAll(match.getParameters());
        }
        return named;
    }

    private static Map<String, String> fields(byte[] body) {
        Map<String, String> fields = new HashMap<>();
        for (String pair : new String(body, StandardCharsets.UTF_8).split("&", -1)) {
            int is = pair.indexOf('=');
            if (is > 0) {
                fields.putIfAbsent(decoded(pair.substring(0, is)), decoded(pair.substring(is + 1)));
            }
        }
        return fields;
    }

    /** A broken escape is taken as it stands: the call parser will say what it can't read. */
    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            return text;
        }
    }
}
