package sopwell.web.pages;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.handlers.Cookie;
import io.undertow.server.handlers.CookieImpl;
import io.undertow.util.Methods;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sopwell.access.Access;
import sopwell.access.Actor;
import sopwell.access.Person;
import sopwell.money.CardNumber;
import sopwell.orders.StandSettings;
import sopwell.web.Gate;
import sopwell.web.Languages;
import sopwell.web.Texts;

/**
 * Reads a screen's settings: from the address, which also keeps them, else from its cookies, else
 * from what the browser asks for. Immutable, thread-safe.
 */
final class Screens {
    /** As long as browsers keep a cookie: 400 days (RFC 6265bis, section 5.5). */
    private static final int KEPT_SECONDS = 400 * 24 * 60 * 60;

    static final List<String> LANGS = List.of("en", "es");
    static final List<String> THEMES = List.of("auto", "light", "dark");
    static final List<String> DISTANCES = List.of("2", "1", "3");

    private static final List<String> PAPERS = List.of("80", "58");
    private static final Set<String> SETTINGS =
            Set.of(Languages.COOKIE, "theme", "distance", "paper");

    /** More than any address of ours says. */
    private static final int REST_CHARS_MAX = 2_000;

    private final Texts texts;
    private final String stand;
    private final String zone;
    private final String assets;
    private final Access access;

    Screens(Texts texts, StandSettings settings, String assets, Access access) {
        this.texts = texts;
        this.stand = settings.name();
        this.zone = settings.zone().getId();
        this.assets = assets;
        this.access = access;
    }

    Screen of(HttpServerExchange exchange) {
        setting(exchange, Languages.COOKIE, LANGS);
        String theme = setting(exchange, "theme", THEMES).orElse(THEMES.get(0));
        String distance = setting(exchange, "distance", DISTANCES).orElse(DISTANCES.get(0));
        Actor actor = Gate.actor(exchange);
        String paper = setting(exchange, "paper", PAPERS).orElse(PAPERS.get(0));
        return new Screen(
                texts.in(Languages.of(exchange)),
                theme,
                Integer.parseInt(distance),
                Integer.parseInt(paper),
                setup(exchange),
                stand,
                zone,
                exchange.getRequestPath(),
                rest(exchange),
                assets,
                actor.kind() == Actor.Kind.OPEN,
                access.state().person(actor.personId()).map(Person::name).orElse(""));
    }

    /**
     * What a page was asked for besides settings; what was sent in a form is no address, and what
     * looks like a card's number does not come back.
     */
    private static String rest(HttpServerExchange exchange) {
        if (!exchange.getRequestMethod().equals(Methods.GET)) {
            return "";
        }
        String rest =
                exchange.getQueryParameters().entrySet().stream()
                        .filter(asked -> !SETTINGS.contains(asked.getKey()))
                        .filter(asked -> !CardNumber.isIn(asked.getValue().getFirst()))
                        .map(asked -> named(asked.getKey(), asked.getValue().getFirst()))
                        .collect(Collectors.joining("&"));
        return rest.length() > REST_CHARS_MAX ? "" : rest;
    }

    /** A name and its value as they stand in an address. */
    static String named(String name, String value) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8)
                + "="
                + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    private static Setup setup(HttpServerExchange exchange) {
        Cookie cookie = exchange.getRequestCookie(Setup.COOKIE);
        return cookie == null ? Setup.NONE : Setup.read(cookie.getValue());
    }

    /** A cookie that is kept, as a header. */
    static String cookie(String name, String value) {
        return name
                + "="
                + value
                + "; Path=/; Max-Age="
                + KEPT_SECONDS
                + "; HttpOnly; SameSite=Lax";
    }

    private static Optional<String> setting(
            HttpServerExchange exchange, String name, List<String> known) {
        Deque<String> asked = exchange.getQueryParameters().get(name);
        if (asked != null && known.contains(asked.getFirst())) {
            keep(exchange, name, asked.getFirst());
            return Optional.of(asked.getFirst());
        }
        Cookie cookie = exchange.getRequestCookie(name);
        return Optional.ofNullable(cookie).map(Cookie::getValue).filter(known::contains);
    }

    private static void keep(HttpServerExchange exchange, String name, String value) {
        exchange.setResponseCookie(
                new CookieImpl(name, value)
                        .setPath("/")
                        .setMaxAge(KEPT_SECONDS)
                        .setHttpOnly(true)
                        .setSameSiteMode("Lax"));
    }
}
