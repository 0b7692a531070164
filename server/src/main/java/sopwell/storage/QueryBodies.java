package sopwell.storage;

import java.io.IOException;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;

/** The written form of queries and their answers, version 1. Stateless. */
final class QueryBodies {
    private QueryBodies() {}

    static void write(BodyWriter body, QueryEvent event) throws IOException {
        body.text("query", event.query().toString());
        switch (event.kind()) {
            case ASKED -> {
                Question question = ((QueryEvent.QueryAsked) event).question();
                body.texts("options", question.options());
                body.textIfAny("text", question.text());
            }
            case ANSWERED -> {
                QueryEvent.QueryAnswered answered = (QueryEvent.QueryAnswered) event;
                body.flag("changed", answered.changed());
                body.textIfAny("text", answered.text());
            }
        }
    }

    static QueryEvent read(BodyReader body, QueryEvent.Kind kind) throws IOException {
        String written = body.text("query");
        QueryId query =
                QueryId.read(written)
                        .orElseThrow(() -> new BodyReader.Unreadable(written + " names no query"));
        return switch (kind) {
            case ASKED ->
                    new QueryEvent.QueryAsked(
                            query, new Question(body.texts("options"), body.textOr("text")));
            case ANSWERED ->
                    new QueryEvent.QueryAnswered(query, body.flag("changed"), body.textOr("text"));
        };
    }
}
