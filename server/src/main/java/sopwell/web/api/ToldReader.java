package sopwell.web.api;

import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.orders.Told;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.T;

/** Reads what a guest was told before the stand could be asked. Stateless. */
final class ToldReader {
    private ToldReader() {}

    /** The field {@code told} of an order, if it is there. */
    static Optional<Told> read(Fields order, ApiContext context, T text) throws BadJson, Refused {
        Optional<Fields> told = order.inner("told");
        if (told.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = told.get();
        String revision = fields.text("menuRevision");
        long totalCents = fields.cents("totalCents");
        long atMs = fields.time("takenAt").toEpochMilli();
        fields.nothingElse();
        Menu menu = menu(context, revision, text);
        return Optional.of(new Told(menu, totalCents, atMs));
    }

    private static Menu menu(ApiContext context, String revision, T text) throws Refused {
        Menu now = context.follower().menu();
        if (now.revision().equals(revision)) {
            return now;
        }
        return context.menus()
                .menu(revision)
                .orElseThrow(
                        () -> new Refused(Problem.of(ProblemKind.TOLD_UNKNOWN, text, revision)));
    }
}
