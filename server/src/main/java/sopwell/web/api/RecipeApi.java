package sopwell.web.api;

import io.undertow.server.HttpServerExchange;
import io.undertow.util.Headers;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.log.Recorded;
import sopwell.menu.MenuFault;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;
import sopwell.stock.recipes.RecipeReading;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.RecipeFaults;
import sopwell.web.Reply;
import sopwell.web.T;

/** The book of recipes, for programs. Thread-safe. */
final class RecipeApi {
    private final ApiContext context;

    RecipeApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> get(HttpServerExchange exchange, T text) {
        return context.follower().ask(stand -> document(stand.recipes()));
    }

    private Reply document(RecipeBook book) {
        byte[] body = context.recipes().json().apply(book).getBytes(StandardCharsets.UTF_8);
        return new Reply(200, "application/json", ByteBuffer.wrap(body), Map.of())
                .with("ETag", tag(book.revision()));
    }

    /** Puts a book in the place of the one that it was made from. */
    CompletableFuture<Reply> put(Ask ask) throws Refused {
        String match = ask.exchange().getRequestHeaders().getFirst(Headers.IF_MATCH);
        if (match == null || match.isBlank()) {
            throw new Refused(Problem.of(ProblemKind.IF_MATCH_MISSING, ask.text()));
        }
        byte[] json = ask.body().toString().getBytes(StandardCharsets.UTF_8);
        RecipeReading reading = context.recipes().read().apply(json, context.follower().menu());
        List<MenuFault> faults = new ArrayList<>(reading.form());
        faults.addAll(RecipeFaults.told(reading.faults(), ask.text()));
        if (!faults.isEmpty()) {
            Problem problem = Problem.of(ProblemKind.RECIPES_FAULTY, ask.text(), faults);
            return Doing.doneBeforeOr(problem, context.desk(), ask, events -> done(events, ""));
        }
        RecipeBook book = reading.book().orElseThrow();
        Function<List<Recorded>, Reply> done = events -> done(events, book.revision());
        String expected = match.strip().replaceAll("^\"|\"$", "");
        return Doing.submit(
                context.desk(),
                ask,
                new StandCommand.AdoptRecipes(book, expected),
                done,
                refusal -> refused(refusal, book, ask.text()));
    }

    /** Who was late is told of what the books differ. */
    private CompletableFuture<Problem> refused(Refusal refusal, RecipeBook sent, T text) {
        Problem plain = RefusalProblems.of(refusal, text);
        if (refusal.reason() != Reason.RECIPES_CHANGED) {
            return CompletableFuture.completedFuture(plain);
        }
        return context.follower()
                .ask(Stand::recipes)
                .thenApply(inForce -> plain.with(RecipeChanges.between(inForce, sent, text)));
    }

    /** The revision that is in force now; a book that was in force already came to no event. */
    private static Reply done(List<Recorded> events, String otherwise) {
        String revision =
                events.isEmpty()
                        ? otherwise
                        : ((RecipesAdopted) events.get(0).event()).book().revision();
        return Reply.json(
                        200,
                        json -> {
                            json.writeStartObject();
                            json.writeStringField("revision", revision);
                            json.writeEndObject();
                        })
                .with("ETag", tag(revision));
    }

    private static String tag(String revision) {
        return "\"" + revision + "\"";
    }
}
