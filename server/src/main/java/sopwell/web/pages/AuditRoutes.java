package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.desk.AuditTrail;
import sopwell.web.Reply;
import sopwell.web.T;

/** Who did what, a date at a time. Thread-safe. */
final class AuditRoutes {
    private final PageContext context;
    private final PageHandling handling;
    private final WhoWords words;

    AuditRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
        this.words = new WhoWords(context.access()::state);
    }

    void add(RoutingHandler routes) {
        routes.get("/audit", handling.handler(ask -> page(200, ask, today(), "")));
        routes.get("/audit/{date}", handling.handler(this::dated));
    }

    private LocalDate today() {
        return context.clock().instant().atZone(context.settings().zone()).toLocalDate();
    }

    private Reply dated(Ask ask) {
        T t = ask.screen().t();
        LocalDate date;
        try {
            date = LocalDate.parse(ask.in("date"));
        } catch (DateTimeParseException wrong) {
            return page(404, ask, today(), t.of("mix.not-date", ask.in("date"), today()));
        }
        return date.isAfter(today())
                ? page(404, ask, today(), t.of("mix.future", t.date(date)))
                : page(200, ask, date, "");
    }

    private Reply page(int status, Ask ask, LocalDate date, String sentence) {
        T t = ask.screen().t();
        String asked = ask.in("kind");
        String kind = AuditView.KINDS.contains(asked) ? asked : AuditView.KINDS.get(0);
        AuditTrail.Day day = context.trail().day(date);
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("date", date);
        params.put("today", date.equals(today()));
        params.put("kind", kind);
        params.put("kinds", AuditView.KINDS);
        params.put("sentence", sentence);
        params.put("v", new AuditView(t, words, context.settings().zone(), day, kind));
        return PageHandling.html(status, context.pages().render("audit/page", params));
    }
}
