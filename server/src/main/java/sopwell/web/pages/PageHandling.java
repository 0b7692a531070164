package sopwell.web.pages;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.handlers.BlockingHandler;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Logger;
import sopwell.Limits;
import sopwell.desk.Answer;
import sopwell.desk.DeskBusy;
import sopwell.desk.StandCommand;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.LogFault;
import sopwell.log.Recorded;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Reply;
import sopwell.web.T;

/**
 * Turns functions into handlers that may wait, on worker threads. What takes too long, or fails,
 * becomes a sentence. Thread-safe.
 */
final class PageHandling {
    private static final Logger LOGGER = Logger.getLogger(PageHandling.class.getName());
    private static final String HTML = "text/html; charset=utf-8";

    /** Says whose answer it is, and which version's: not every answer on a network is ours. */
    private static final String VERSION = "Sopwell-Version";

    private final PageContext context;
    private final Screens screens;

    PageHandling(PageContext context) {
        this.context = context;
        this.screens =
                new Screens(
                        context.texts(),
                        context.settings(),
                        context.assets().version(),
                        context.access());
    }

    /** Answers one request. */
    @FunctionalInterface
    interface Page {
        Reply answer(Ask ask) throws Interrupted;
    }

    /** The answer did not come in time, or the thread was told to stop. */
    static final class Interrupted extends Exception {
        private static final long serialVersionUID = 1L;

        Interrupted(Throwable cause) {
            super(cause);
        }
    }

    HttpHandler handler(Page page) {
        return new BlockingHandler(
                exchange ->
                        handle(exchange, ask -> ask.holdsCard() ? card(ask) : page.answer(ask)));
    }

    /** A handler that minds card numbers itself, because a sentence alone would be no answer. */
    HttpHandler mindful(Page page) {
        return new BlockingHandler(exchange -> handle(exchange, page));
    }

    /** Answers one request that shows who it comes from, or is told who it comes from now on. */
    @FunctionalInterface
    interface Visit {
        Reply answer(HttpServerExchange exchange, Ask ask) throws Interrupted;
    }

    /** A handler for secrets: they may look like any number, and are shown to nobody again. */
    HttpHandler visiting(Visit visit) {
        return new BlockingHandler(
                exchange -> handle(exchange, ask -> visit.answer(exchange, ask)));
    }

    private Reply card(Ask ask) {
        return sentence(422, cardSentence(ask.screen().t()), ask);
    }

    /** What is said to a text with a card's number in it. */
    static String cardSentence(T t) {
        return t.sentence(Refusal.of(Reason.CARD_NUMBER, "text"));
    }

    /** What a future comes to, unless that takes too long. */
    static <A> A await(CompletableFuture<A> future) throws Interrupted {
        try {
            return future.get(Limits.ANSWER_MILLIS_MAX, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new Interrupted(stopped);
        } catch (TimeoutException late) {
            throw new Interrupted(late);
        } catch (ExecutionException failed) {
            Throwable cause = failed.getCause();
            if (cause instanceof LogFault
                    || cause instanceof DeskBusy
                    || cause instanceof AccessNotes.NotNoted) {
                throw new Interrupted(cause);
            }
            throw new IllegalStateException(cause);
        }
    }

    /** What a future comes to within some milliseconds; empty when it takes longer. */
    static <A> Optional<A> within(long millis, CompletableFuture<A> future) throws Interrupted {
        try {
            future.copy().orTimeout(millis, TimeUnit.MILLISECONDS).get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new Interrupted(stopped);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof TimeoutException) {
                return Optional.empty();
            }
        }
        return Optional.of(await(future));
    }

    static Reply html(int status, String html) {
        byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
        return new Reply(status, HTML, ByteBuffer.wrap(bytes), Map.of());
    }

    static Reply redirect(String path) {
        return html(303, "").with("Location", path);
    }

    /** A sentence: a fragment for a press, a whole page for somebody who went there. */
    Reply sentence(int status, String text, Ask ask) {
        return html(
                status,
                ask.partial()
                        ? context.pages().render("message", Map.of("text", text))
                        : context.pages()
                                .render("problem", Map.of("s", ask.screen(), "text", text)));
    }

    /** What a screen says when a press was done. */
    @FunctionalInterface
    interface Done {
        Reply say(List<Recorded> events) throws Interrupted;
    }

    /** What a screen says when a press was not done: why not. */
    @FunctionalInterface
    interface NotDone {
        Reply say(int status, String sentence) throws Interrupted;
    }

    /** Has the desk do what was pressed; why not, if it does not, is a sentence. */
    Reply press(Ask ask, StandCommand command, Done done) throws Interrupted {
        return press(ask, command, done, (status, why) -> sentence(status, why, ask));
    }

    /** The same for a page that shows beside the sentence what was typed. */
    Reply press(Ask ask, StandCommand command, Done done, NotDone notDone) throws Interrupted {
        T t = ask.screen().t();
        if (!ask.hasKey()) {
            return notDone.say(400, t.get("api.key-missing"));
        }
        Answer answer = await(context.desk().submit(ask.key(), ask.fingerprint(), ask.by(command)));
        return switch (answer.outcome()) {
            case DONE, REPEATED -> done.say(answer.events());
            case REFUSED -> {
                Refusal refusal = answer.refusal().orElseThrow();
                String why = t.sentence(refusal, context.follower().menu());
                yield notDone.say(PageRoutes.status(refusal.reason()), why);
            }
            case KEY_REUSED -> {
                boolean money = command instanceof StandCommand.ForTill;
                yield notDone.say(422, t.get(money ? "pay.key" : "send.key"));
            }
        };
    }

    /** Why the stand's rules don't allow it. */
    Reply refused(Refusal refusal, Ask ask) {
        String text = ask.screen().t().sentence(refusal, context.follower().menu());
        return sentence(PageRoutes.status(refusal.reason()), text, ask);
    }

    private void handle(HttpServerExchange exchange, Page page) throws java.io.IOException {
        Screen screen = screens.of(exchange);
        Ask ask = Ask.read(exchange, screen);
        T t = screen.t();
        Reply reply;
        try {
            reply =
                    ask.tooLarge()
                            ? sentence(413, t.of("api.too-large", Ask.BODY_BYTES_MAX), ask)
                            : page.answer(ask);
        } catch (Interrupted | DeskBusy | AccessNotes.NotNoted busy) {
            Told.of(Happening.PRESS_AGAIN).fault(busy).to(LOGGER);
            reply = sentence(503, t.get("send.busy"), ask);
        } catch (RuntimeException bug) {
            Told.of(Happening.REQUEST_BROKE).fault(bug).to(LOGGER);
            reply = sentence(500, t.get("api.broken"), ask);
        }
        if (reply.status() == 503) {
            reply = reply.with("Retry-After", "1");
        }
        reply.with(VERSION, context.assets().version()).send(exchange);
    }
}
