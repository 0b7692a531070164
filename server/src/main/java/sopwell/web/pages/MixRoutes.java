package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.web.Reply;
import sopwell.web.T;

/** The day mix of today and of closed days. Thread-safe. */
final class MixRoutes {
    private static final String TODAY = "today";

    private final PageContext context;
    private final PageHandling handling;

    MixRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/mix", handling.handler(ask -> PageHandling.redirect("/mix/today")));
        routes.get("/mix/{date}", handling.handler(this::day));
    }

    private Reply day(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        LocalDate now = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        if (ask.in("date").equals(TODAY)) {
            Optional<MixPageData> newest =
                    PageHandling.await(context.follower().ask(MixRoutes::newest));
            LocalDate date = newest.map(day -> day.mix().date()).orElse(now);
            return page(ask, date, newest, newest.isEmpty() ? t.get("mix.none") : "");
        }
        LocalDate date;
        try {
            date = LocalDate.parse(ask.in("date"));
        } catch (DateTimeParseException wrong) {
            String sentence = t.of("mix.not-date", ask.in("date"), now);
            return status(404, page(ask, now, Optional.empty(), sentence));
        }
        Optional<MixPageData> past = PageHandling.await(context.days().apply(date));
        if (past.isPresent()) {
            return page(ask, date, past, "");
        }
        String sentence = t.of(date.isAfter(now) ? "mix.future" : "mix.unknown", t.date(date));
        return status(404, page(ask, date, past, sentence));
    }

    private static Optional<MixPageData> newest(Stand stand) {
        return stand.orders().date().map(date -> MixPageData.of(stand));
    }

    private static Reply status(int status, Reply reply) {
        return new Reply(status, reply.type(), reply.body(), reply.headers());
    }

    private Reply page(Ask ask, LocalDate date, Optional<MixPageData> data, String sentence) {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("date", date);
        params.put("data", data.orElse(null));
        params.put("sentence", sentence);
        params.put("live", ask.in("date").equals(TODAY));
        String template = ask.partial() ? "mix/body" : "mix/page";
        if (ask.partial()) {
            params.remove("live");
            params.remove("date");
        }
        return PageHandling.html(200, context.pages().render(template, params));
    }
}
