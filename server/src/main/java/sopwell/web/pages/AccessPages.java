package sopwell.web.pages;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.access.Refused;
import sopwell.audit.AuditEvent.Change;
import sopwell.money.CardNumber;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;

/** The page of who may do what, and what it says to each press. Thread-safe. */
final class AccessPages {
    /** Where it is. */
    static final String PATH = "/settings/access";

    private final PageContext context;
    private final WhoWords words;

    AccessPages(PageContext context) {
        this.context = context;
        this.words = new WhoWords(context.access()::state);
    }

    /** The page, which says what was done just now. */
    Reply show(Ask ask) {
        return page(200, ask, done(ask));
    }

    /** Goes back to the page, which says what was done. */
    Reply done(Change change, String id) {
        String code = ProblemKind.code(change);
        return PageHandling.redirect(PATH + "?done=" + code + "&whom=" + id);
    }

    /** The page, which says why something was not done. */
    Reply refused(Ask ask, Refused refused) {
        String sentence = DoorWords.of(refused, ask.screen().t());
        return page(DoorWords.status(refused), ask, sentence);
    }

    /** What is wrong with a form that chooses something. */
    Optional<Reply> unchosen(Ask ask, Optional<?> chosen) {
        return chosen.isPresent()
                ? Optional.empty()
                : Optional.of(page(422, ask, ask.screen().t().get("access.choose")));
    }

    /** What is wrong with a form that names something: the number of a card is no name. */
    Optional<Reply> misnamed(Ask ask) {
        return CardNumber.isIn(ask.field("name"))
                ? Optional.of(page(422, ask, PageHandling.cardSentence(ask.screen().t())))
                : Optional.empty();
    }

    /** What was done just now, in the log's words. */
    private String done(Ask ask) {
        T t = ask.screen().t();
        String whom = ask.in("whom");
        return Arrays.stream(Change.values())
                .map(ProblemKind::code)
                .filter(ask.in("done")::equals)
                .findFirst()
                .map(code -> t.of("audit.access." + code, name(whom, t)))
                .orElse("");
    }

    private String name(String id, T t) {
        if (id.startsWith("s")) {
            return words.person(id, t);
        }
        return id.startsWith("d") ? words.device(id, t) : words.token(id, t);
    }

    private Reply page(int status, Ask ask, String sentence) {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen().at(PATH, ""));
        params.put("sentence", sentence);
        params.put("v", new AccessView(context.access().state()));
        params.put("whom", ask.in("person").isEmpty() ? ask.in("whom") : ask.in("person"));
        return PageHandling.html(status, context.pages().render("access/page", params));
    }
}
