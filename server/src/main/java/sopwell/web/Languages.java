package sopwell.web;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.handlers.Cookie;
import io.undertow.util.Headers;
import io.undertow.util.LocaleUtils;
import java.util.Deque;
import java.util.Locale;
import sopwell.menu.Lang;

/** Which language a request wants. Stateless. */
public final class Languages {
    /** The cookie by which a screen remembers its language. */
    public static final String COOKIE = "lang";

    private Languages() {}

    /**
     * The language asked for in the address, else the screen's own, else the browser's, else
     * English.
     */
    public static Lang of(HttpServerExchange exchange) {
        Deque<String> asked = exchange.getQueryParameters().get("lang");
        if (asked != null) {
            return named(asked.getFirst());
        }
        Cookie cookie = exchange.getRequestCookie(COOKIE);
        if (cookie != null) {
            return named(cookie.getValue());
        }
        String accepted = exchange.getRequestHeaders().getFirst(Headers.ACCEPT_LANGUAGE);
        if (accepted == null) {
            return Lang.EN;
        }
        for (Locale locale : LocaleUtils.getLocalesFromHeader(accepted)) {
            if (locale.getLanguage().equals("es")) {
                return Lang.ES;
            }
            if (locale.getLanguage().equals("en")) {
                return Lang.EN;
            }
        }
        return Lang.EN;
    }

    private static Lang named(String name) {
        return name.equalsIgnoreCase("es") ? Lang.ES : Lang.EN;
    }
}
