package sopwell.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.undertow.io.Receiver;
import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.util.Headers;
import io.undertow.util.SameThreadExecutor;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import sopwell.Limits;
import sopwell.desk.DeskBusy;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.LogFault;
import sopwell.money.CardNumber;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Fingerprint;
import sopwell.web.Json;
import sopwell.web.Json.BadJson;
import sopwell.web.Languages;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.Texts;

/**
 * Turns functions into HTTP handlers that never wait: the answer is sent when it is there. Every
 * fault becomes a problem document. Thread-safe.
 */
final class Calls {
    private static final Logger LOGGER = Logger.getLogger(Calls.class.getName());
    private static final Pattern JSON_TYPE = Pattern.compile("(?i)\\s*application/json\\s*(;.*)?");

    private final Texts texts;

    Calls(Texts texts) {
        this.texts = texts;
    }

    /** Answers a request that changes something, or that sends a body. */
    @FunctionalInterface
    interface Write {
        CompletableFuture<Reply> answer(Ask ask) throws BadJson, Refused;
    }

    /** Answers a request that only looks. */
    @FunctionalInterface
    interface Read {
        CompletableFuture<Reply> answer(HttpServerExchange exchange, T text) throws Refused;
    }

    /** A handler for changes: needs a key. */
    HttpHandler write(Write write) {
        return exchange ->
                receiver(exchange)
                        .receiveFullBytes((e, body) -> begin(e, body, true, write), this::tooLarge);
    }

    /** A handler for questions with a body: needs no key. */
    HttpHandler question(Write write) {
        return exchange ->
                receiver(exchange)
                        .receiveFullBytes(
                                (e, body) -> begin(e, body, false, write), this::tooLarge);
    }

    /** A handler for questions without a body. */
    HttpHandler read(Read read) {
        return exchange -> {
            T text = texts.in(Languages.of(exchange));
            try {
                finish(exchange, text, read.answer(exchange, text));
            } catch (Refused refused) {
                Reply.problem(refused.problem()).send(exchange);
            } catch (RuntimeException bug) {
                Reply.problem(fault(bug, text)).send(exchange);
            }
        };
    }

    /** Minds bodies that don't announce their length; the others were minded at the door. */
    private static Receiver receiver(HttpServerExchange exchange) {
        Receiver receiver = exchange.getRequestReceiver();
        receiver.setMaxBufferSize((int) Limits.BODY_BYTES_MAX);
        return receiver;
    }

    private void begin(HttpServerExchange exchange, byte[] body, boolean keyed, Write write) {
        T text = texts.in(Languages.of(exchange));
        try {
            String key = keyed ? key(exchange, text) : "";
            JsonNode read = parse(exchange, body, text);
            noCard(read, "body", text);
            Ask ask = new Ask(exchange, key, Fingerprint.of(exchange, body), read, text);
            finish(exchange, text, write.answer(ask));
        } catch (BadJson bad) {
            Reply.problem(bad.problem(text)).send(exchange);
        } catch (Refused refused) {
            Reply.problem(refused.problem()).send(exchange);
        } catch (RuntimeException busyOrBug) {
            Reply.problem(fault(busyOrBug, text)).send(exchange);
        }
    }

    private void finish(HttpServerExchange exchange, T text, CompletableFuture<Reply> answer) {
        exchange.dispatch(SameThreadExecutor.INSTANCE, () -> sendWhenThere(exchange, text, answer));
    }

    private static void sendWhenThere(
            HttpServerExchange exchange, T text, CompletableFuture<Reply> answer) {
        CompletableFuture<Void> unused =
                answer.orTimeout(Limits.ANSWER_MILLIS_MAX, TimeUnit.MILLISECONDS)
                        .exceptionally(fault -> Reply.problem(fault(fault, text)))
                        .thenAcceptAsync(reply -> reply.send(exchange), exchange.getIoThread());
    }

    private void tooLarge(HttpServerExchange exchange, java.io.IOException fault) {
        T text = texts.in(Languages.of(exchange));
        Reply.problem(Problem.of(ProblemKind.TOO_LARGE, text, Limits.BODY_BYTES_MAX))
                .send(exchange);
    }

    private static Problem fault(Throwable wrapped, T text) {
        Throwable fault = wrapped instanceof CompletionException ? wrapped.getCause() : wrapped;
        if (fault instanceof DeskBusy) {
            return Problem.of(ProblemKind.BUSY, text);
        }
        if (fault instanceof TimeoutException || fault instanceof LogFault) {
            Told.of(Happening.OUTCOME_UNKNOWN).fault(fault).to(LOGGER);
            return Problem.of(ProblemKind.UNKNOWN_OUTCOME, text);
        }
        Told.of(Happening.REQUEST_BROKE).fault(fault).to(LOGGER);
        return Problem.of(ProblemKind.BROKEN, text);
    }

    private static String key(HttpServerExchange exchange, T text) throws Refused {
        String key = exchange.getRequestHeaders().getFirst("Idempotency-Key");
        if (key == null || key.isBlank()) {
            throw new Refused(Problem.of(ProblemKind.KEY_MISSING, text));
        }
        String bare = key.strip();
        if (bare.length() >= 2 && bare.startsWith("\"") && bare.endsWith("\"")) {
            bare = bare.substring(1, bare.length() - 1);
        }
        boolean printable = bare.chars().allMatch(c -> c > ' ' && c < 127);
        if (bare.isEmpty() || bare.length() > Limits.KEY_CHARS_MAX || !printable) {
            throw new Refused(Problem.of(ProblemKind.KEY_WRONG, text, Limits.KEY_CHARS_MAX));
        }
        return bare;
    }

    /**
     * No text of any request holds a card's number, whatever the text is for. A menu's revision is
     * no text: it is looked up, never kept or shown, and some of them would look like one.
     */
    private static void noCard(JsonNode node, String field, T text) throws Refused {
        boolean found =
                node.isTextual()
                        && !field.equals("menuRevision")
                        && CardNumber.isIn(node.textValue());
        for (Map.Entry<String, JsonNode> inner : node.properties()) {
            found |= CardNumber.isIn(inner.getKey());
            noCard(inner.getValue(), inner.getKey(), text);
        }
        if (node.isArray()) {
            for (JsonNode inner : node) {
                noCard(inner, field, text);
            }
        }
        if (found) {
            throw new Refused(RefusalProblems.of(Refusal.of(Reason.CARD_NUMBER, field), text));
        }
    }

    private static JsonNode parse(HttpServerExchange exchange, byte[] body, T text)
            throws BadJson, Refused {
        if (body.length == 0) {
            return JsonNodeFactory.instance.objectNode();
        }
        String type = exchange.getRequestHeaders().getFirst(Headers.CONTENT_TYPE);
        if (type == null || !JSON_TYPE.matcher(type).matches()) {
            throw new Refused(Problem.of(ProblemKind.NOT_JSON, text));
        }
        return Json.object(body);
    }
}
