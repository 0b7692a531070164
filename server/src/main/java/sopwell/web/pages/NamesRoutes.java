package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import sopwell.desk.NameLimits;
import sopwell.desk.NamesKept;
import sopwell.log.LogFault;
import sopwell.orders.Order;
import sopwell.web.Reply;
import sopwell.web.T;

/** Where a guest's name is taken out of the log because the guest asks for it. Thread-safe. */
final class NamesRoutes {
    private static final String PATH = "/settings/names";

    private final PageContext context;
    private final PageHandling handling;

    NamesRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get(PATH, handling.handler(ask -> page(ask, 200, today(), "")));
        routes.post(PATH, handling.handler(this::erase));
    }

    private LocalDate today() {
        return context.clock().instant().atZone(context.settings().zone()).toLocalDate();
    }

    private Reply erase(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        LocalDate date;
        try {
            date = LocalDate.parse(ask.field("date"));
        } catch (DateTimeParseException wrong) {
            return page(ask, 400, today(), t.of("mix.not-date", ask.shown().get("date"), today()));
        }
        String number = ask.field("number");
        Optional<Order> order =
                PageHandling.await(
                                context.past()
                                        .ask(
                                                date,
                                                over ->
                                                        over.stand().orders().all().stream()
                                                                .filter(one -> is(one, number))
                                                                .reduce((older, newer) -> newer)))
                        .flatMap(found -> found);
        if (order.isEmpty()) {
            return page(ask, 404, date, t.of("names.no-order", t.date(date)));
        }
        int names;
        try {
            names = context.erasing().order(order.get().id(), date, Optional.of(ask.who()));
        } catch (LogFault | CompletionException unkept) {
            throw new PageHandling.Interrupted(unkept);
        }
        return page(ask, 200, date, t.get(names == 0 ? "names.none" : "names.erased"));
    }

    private static boolean is(Order order, String number) {
        return Integer.toString(order.number()).equals(number);
    }

    private Reply page(Ask ask, int status, LocalDate date, String sentence) {
        NamesKept kept = context.namesKept().get();
        return PageHandling.html(
                status,
                context.pages()
                        .render(
                                "names/page",
                                Map.of(
                                        "s",
                                        ask.screen(),
                                        "date",
                                        date,
                                        "number",
                                        ask.shown().getOrDefault("number", ""),
                                        "sentence",
                                        sentence,
                                        "kept",
                                        kept,
                                        "doubt",
                                        doubt(ask.screen().t(), kept))));
    }

    /** Why names stay that would be due by today's date, if they do. */
    private static String doubt(T t, NamesKept kept) {
        return kept.looked()
                .filter(date -> !date.isSure())
                .map(
                        date ->
                                t.of(
                                        "names.doubt",
                                        t.date(date.today()),
                                        t.date(date.sure()),
                                        NameLimits.SURE_AGAIN_DAYS))
                .orElse("");
    }
}
