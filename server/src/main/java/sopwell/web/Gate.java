package sopwell.web;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.handlers.Cookie;
import io.undertow.util.AttachmentKey;
import io.undertow.util.HeaderMap;
import io.undertow.util.Headers;
import io.undertow.util.HttpString;
import io.undertow.util.Methods;
import io.undertow.util.PathTemplateMatch;
import io.undertow.util.SameThreadExecutor;
import jakarta.websocket.server.HandshakeRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import sopwell.access.Access;
import sopwell.access.AccessRules;
import sopwell.access.Actor;
import sopwell.access.Right;
import sopwell.access.Secrets;
import sopwell.access.Shown;
import sopwell.audit.Who;

/**
 * Stands before every route and socket: finds out who asks, and whether they may. Thread-safe; it
 * never waits.
 *
 * <p>A change by somebody who is known by a cookie must come from our own page, since browsers send
 * cookies along for any page: it names our origin, or it holds the session's token.
 */
public final class Gate {
    /** The header by which a page without an origin shows that it is of the session. */
    public static final HttpString CSRF = new HttpString("X-CSRF");

    private static final AttachmentKey<Actor> ACTOR = AttachmentKey.create(Actor.class);
    private static final HttpString FETCH_MODE = new HttpString("Sec-Fetch-Mode");
    private static final HttpString HX_REQUEST = new HttpString("HX-Request");

    /** Carries what a handshake showed, hashed, to its socket; what others send here is dropped. */
    private static final String SHOWN = "Sopwell-Shown";

    private static final String BEARER = "Bearer ";
    private static final String SIGN_IN = "/sign-in?back=";

    private final Access access;
    private final InstantSource clock;
    private final Function<String, CompletableFuture<Boolean>> isPaid;
    private final Texts texts = Texts.load();

    /**
     * A gate.
     *
     * @param isPaid whether something was paid of an order that has this id
     */
    public Gate(
            Access access,
            InstantSource clock,
            Function<String, CompletableFuture<Boolean>> isPaid) {
        this.access = access;
        this.clock = clock;
        this.isPaid = isPaid;
    }

    /** Who asks, as the gate found out; at a stand without one, whoever is at its machine. */
    public static Actor actor(HttpServerExchange exchange) {
        return Optional.ofNullable(exchange.getAttachment(ACTOR))
                .orElse(Actors.isGated(exchange) ? Actor.NOBODY : Actor.ANYBODY);
    }

    /** What a request shows to be known by. */
    public static Shown shown(HttpServerExchange exchange) {
        return Shown.of(
                cookie(exchange, AccessCookies.session(exchange)),
                cookie(exchange, AccessCookies.device(exchange)),
                bearer(exchange));
    }

    /** Whether who asked for this socket may still look, however much later. */
    BooleanSupplier stays(HandshakeRequest request) {
        String[] noted = request.getHeaders().get(SHOWN).get(0).split("/", -1);
        Shown shown = new Shown(noted[0], noted[1], noted[2]);
        Right right = Right.valueOf(noted[3]);
        return () -> access.stillWho(shown).may(right);
    }

    /** A route behind the gate. One that has no rule is refused to everybody. */
    HttpHandler guard(HttpString method, String template, HttpHandler route) {
        String verb = method.toString();
        Optional<Right> plain = AccessRules.right(verb, template);
        if (!template.endsWith("/{board}")) {
            return exchange -> pass(exchange, plain, route);
        }
        String stem = template.substring(0, template.lastIndexOf('/') + 1);
        return exchange -> {
            PathTemplateMatch match = exchange.getAttachment(PathTemplateMatch.ATTACHMENT_KEY);
            String board = match.getParameters().get("board");
            pass(exchange, AccessRules.right(verb, stem + board).or(() -> plain), route);
        };
    }

    /** The handshake of a board's socket. */
    void socket(HttpServerExchange exchange, String path, HttpHandler sockets) throws Exception {
        String board = path.substring(path.lastIndexOf('/') + 1);
        Optional<Right> right =
                AccessRules.right("GET", "/ws/boards/" + board)
                        .or(() -> AccessRules.right("GET", "/ws/boards/{board}"));
        Shown shown = shown(exchange);
        String rest = "/" + shown.device() + "/" + shown.bearer() + "/";
        String noted = shown.session() + rest + right.map(Right::name).orElse("");
        exchange.getRequestHeaders().put(new HttpString(SHOWN), noted);
        pass(exchange, right, sockets);
    }

    private void pass(HttpServerExchange exchange, Optional<Right> right, HttpHandler route)
            throws Exception {
        Shown shown = shown(exchange);
        Actor actor = access.who(shown);
        exchange.putAttachment(ACTOR, actor);
        Actors.put(exchange, whoOf(actor));
        Optional<ProblemKind> problem =
                right.isEmpty() ? Optional.of(ProblemKind.NOT_ALLOWED) : may(actor, right.get());
        if (problem.isEmpty() && isChange(exchange) && !isOurs(exchange, actor)) {
            problem = Optional.of(ProblemKind.ORIGIN_MISSING);
        }
        if (problem.isPresent()) {
            refuse(exchange, problem.get());
        } else if (right.get() == Right.VOID && may(actor, Right.VOID_PAID).isPresent()) {
            unlessPaid(exchange, actor, route);
        } else {
            route.handleRequest(exchange);
        }
    }

    /** By ids alone, for the log. */
    private static Who whoOf(Actor actor) {
        String role = actor.role() == null ? "" : actor.role().name().toLowerCase(Locale.ROOT);
        return new Who(actor.personId(), actor.deviceId(), actor.tokenId(), role);
    }

    private Optional<ProblemKind> may(Actor actor, Right right) {
        if (!actor.may(right)) {
            boolean known = actor.role() != null;
            return Optional.of(known ? ProblemKind.NOT_ALLOWED : ProblemKind.SIGN_IN_NEEDED);
        }
        return actor.mustProve(right, clock.millis())
                ? Optional.of(ProblemKind.PASSWORD_NEEDED)
                : Optional.empty();
    }

    /** Whoever may void, but no paid orders, voids this one if nothing was paid of it. */
    private void unlessPaid(HttpServerExchange exchange, Actor actor, HttpHandler route) {
        String order =
                exchange.getAttachment(PathTemplateMatch.ATTACHMENT_KEY)
                        .getParameters()
                        .get("order");
        HttpHandler refusal = same -> refuse(same, may(actor, Right.VOID_PAID).get());
        exchange.dispatch(
                SameThreadExecutor.INSTANCE,
                () -> {
                    CompletableFuture<HttpServerExchange> unused =
                            isPaid.apply(order)
                                    .exceptionally(fault -> true)
                                    .thenApply(paid -> exchange.dispatch(paid ? refusal : route));
                });
    }

    /** Changes, and sockets, which a browser opens for any page. */
    private static boolean isChange(HttpServerExchange exchange) {
        return !exchange.getRequestMethod().equals(Methods.GET)
                || exchange.getRequestHeaders().contains(Headers.UPGRADE);
    }

    /**
     * An origin that is there was found to be ours at the doors. Whoever is nobody yet shows one
     * too: else another page could sign somebody in behind their back.
     */
    private static boolean isOurs(HttpServerExchange exchange, Actor actor) {
        if (actor.kind() == Actor.Kind.OPEN || actor.kind() == Actor.Kind.PROGRAM) {
            return true;
        }
        HeaderMap headers = exchange.getRequestHeaders();
        if (headers.contains(Headers.ORIGIN)) {
            return true;
        }
        String session = cookie(exchange, AccessCookies.session(exchange));
        String token = headers.getFirst(CSRF);
        return session != null && token != null && Secrets.same(token, Secrets.csrf(session));
    }

    /**
     * A person who goes to a page is led to sign in; what a script sent is told why. Where the
     * counter's service worker hands a person's way on, no browser says that it is one, but the
     * page is still what they accept.
     */
    private void refuse(HttpServerExchange exchange, ProblemKind kind) {
        Problem problem = Problem.of(kind, texts.in(Languages.of(exchange)));
        HeaderMap headers = exchange.getRequestHeaders();
        String mode = headers.getFirst(FETCH_MODE);
        String accepts = headers.getFirst(Headers.ACCEPT);
        boolean isPage =
                !exchange.getRequestPath().startsWith("/api/")
                        && !headers.contains(Headers.UPGRADE);
        boolean goes =
                "navigate".equals(mode) || (accepts != null && accepts.contains("text/html"));
        boolean isGet = exchange.getRequestMethod().equals(Methods.GET);
        if (isPage && headers.contains(HX_REQUEST)) {
            String from =
                    isGet ? back(exchange) : headers.getFirst(new HttpString("HX-Current-URL"));
            Reply.problem(problem).with("HX-Redirect", signIn(path(from), kind)).send(exchange);
        } else if (isPage && goes && kind != ProblemKind.ORIGIN_MISSING) {
            String from = isGet ? back(exchange) : path(headers.getFirst(Headers.REFERER));
            new Reply(
                            303,
                            "text/html; charset=utf-8",
                            java.nio.ByteBuffer.allocate(0),
                            Map.of("Location", signIn(from, kind)))
                    .send(exchange);
        } else if (kind == ProblemKind.SIGN_IN_NEEDED) {
            Reply.problem(problem).with("WWW-Authenticate", "Bearer").send(exchange);
        } else {
            Reply.problem(problem).send(exchange);
        }
    }

    private static String signIn(String back, ProblemKind kind) {
        return SIGN_IN
                + URLEncoder.encode(back, StandardCharsets.UTF_8)
                + (kind == ProblemKind.SIGN_IN_NEEDED ? "" : "&why=" + kind.code());
    }

    private static String back(HttpServerExchange exchange) {
        String query = exchange.getQueryString();
        return exchange.getRequestPath() + (query.isEmpty() ? "" : "?" + query);
    }

    /** The path of an address that a browser says it is at; never another site. */
    private static String path(String address) {
        if (address == null) {
            return "/";
        }
        int host = address.indexOf("//");
        int path = host < 0 ? 0 : address.indexOf('/', host + 2);
        return path < 0 ? "/" : address.substring(path);
    }

    private static String cookie(HttpServerExchange exchange, String name) {
        Cookie cookie = exchange.getRequestCookie(name);
        return cookie == null ? null : cookie.getValue();
    }

    private static String bearer(HttpServerExchange exchange) {
        String said = exchange.getRequestHeaders().getFirst(Headers.AUTHORIZATION);
        return said != null && said.regionMatches(true, 0, BEARER, 0, BEARER.length())
                ? said.substring(BEARER.length()).strip()
                : null;
    }
}
