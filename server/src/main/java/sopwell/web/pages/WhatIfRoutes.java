package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.past.PastDays;
import sopwell.whatif.Changes;
import sopwell.whatif.DayWork;
import sopwell.whatif.Trial;
import sopwell.whatif.Tried;
import sopwell.whatif.WhatIfLimits;

/** A day tried again with other hands, another basket, or other numbers of guests. Thread-safe. */
final class WhatIfRoutes {
    /** The same question has the same answer, on every screen. */
    private static final long SEED = 1;

    /** A station's field in the form is its id behind this. */
    static final String HANDS = "hands-";

    private final PageContext context;
    private final PageHandling handling;

    WhatIfRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/what-if", handling.handler(ask -> PageHandling.redirect("/what-if/today")));
        routes.get("/what-if/{date}", handling.handler(this::page));
    }

    /** What the form asks for, or why it can't be. */
    private record Asked(String sentence, Changes changes) {}

    /**
     * A day that was tried.
     *
     * @param tried empty when what was asked can't be, or nobody came
     */
    private record Answer(
            List<Station> stations, int orders, DayWork work, Asked asked, Optional<Tried> tried) {}

    private Reply page(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        AskedDay<LocalDate> date = PastDate.of(ask, context);
        Optional<Answer> found =
                date.found().isEmpty()
                        ? Optional.empty()
                        : PageHandling.await(
                                context.past().ask(date.found().get(), over -> tried(over, ask)));
        if (found.isEmpty()) {
            LocalDate today =
                    context.clock().instant().atZone(context.settings().zone()).toLocalDate();
            int status = date.sentence().isEmpty() ? 404 : date.status();
            return handling.sentence(status, PastDate.sentence(date, t, "whatif", today), ask);
        }
        Answer answer = found.get();
        Map<String, Object> params = new HashMap<>();
        params.put("s", ask.screen());
        params.put("date", date.found().get());
        params.put("named", ask.named());
        params.put("stations", answer.stations());
        params.put("sentence", sentence(answer, t));
        params.put(
                "v",
                answer.tried()
                        .map(
                                tried ->
                                        new WhatIfView(
                                                t,
                                                tried,
                                                answer.work(),
                                                context.settings().targetSeconds()))
                        .orElse(null));
        int status = answer.asked().sentence().isEmpty() ? 200 : 422;
        return PageHandling.html(status, context.pages().render("whatif/page", params));
    }

    private String sentence(Answer answer, T t) {
        if (!answer.asked().sentence().isEmpty()) {
            return answer.asked().sentence();
        }
        if (answer.orders() > WhatIfLimits.WHAT_IF_ORDERS_MAX) {
            return t.of("whatif.too-many", answer.orders(), WhatIfLimits.WHAT_IF_ORDERS_MAX);
        }
        return answer.tried().isEmpty() ? t.get("whatif.nobody") : "";
    }

    /** On the thread of past days, one after the other. */
    private Answer tried(PastDays.Over over, Ask ask) {
        Stand stand = over.stand();
        Optional<Menu> menu = over.menu();
        List<Station> stations = menu.map(Menu::stations).orElse(List.of());
        int orders = stand.orders().all().size();
        Asked asked = asked(ask, stations);
        DayWork work = new DayWork(List.of(), List.of());
        if (menu.isPresent() && orders <= WhatIfLimits.WHAT_IF_ORDERS_MAX) {
            work =
                    DayWork.of(
                            new DayWork.Sources(
                                    stand.orders(),
                                    stand.kitchen(),
                                    menu.get(),
                                    stand::menuOf,
                                    stand.settings().zone(),
                                    over.hands()));
        }
        boolean can = asked.sentence().isEmpty() && !work.guests().isEmpty();
        Optional<Tried> tried =
                can
                        ? Optional.of(
                                Trial.of(
                                        work,
                                        asked.changes(),
                                        stand.settings().targetSeconds(),
                                        WhatIfLimits.WHAT_IF_RUNS,
                                        SEED))
                        : Optional.empty();
        return new Answer(stations, orders, work, asked, tried);
    }

    private static Asked asked(Ask ask, List<Station> stations) {
        T t = ask.screen().t();
        for (String name : ask.named().keySet()) {
            boolean known = stations.stream().anyMatch(s -> name.equals(HANDS + s.id()));
            if (name.startsWith(HANDS) && !known) {
                String station = name.substring(HANDS.length());
                return new Asked(t.of("page.no-station", station), Changes.NONE);
            }
        }
        Map<String, Integer> hands = new LinkedHashMap<>();
        int most = WhatIfLimits.WHAT_IF_HANDS_MAX;
        for (Station station : stations) {
            String written = ask.in(HANDS + station.id());
            Optional<Integer> more = number(written, -most, most);
            if (more.isEmpty()) {
                String name = t.local(station.name());
                return new Asked(
                        t.of("whatif.hands-wrong", name, written, -most, most), Changes.NONE);
            }
            hands.put(station.id(), more.get());
        }
        int fewest = WhatIfLimits.WHAT_IF_GUESTS_PERCENT_MIN;
        int mostGuests = WhatIfLimits.WHAT_IF_GUESTS_PERCENT_MAX;
        String written = ask.in("guests");
        Optional<Integer> guests = number(written, fewest, mostGuests);
        return guests.isEmpty()
                ? new Asked(t.of("whatif.guests-wrong", written, fewest, mostGuests), Changes.NONE)
                : new Asked("", new Changes(hands, guests.get()));
    }

    /** A whole number between two, both included; nothing written is 0. */
    private static Optional<Integer> number(String written, int least, int most) {
        String plain = written.strip();
        if (plain.isEmpty()) {
            return Optional.of(0);
        }
        if (!plain.matches("[+-]?[0-9]{1,4}")) {
            return Optional.empty();
        }
        int number = Integer.parseInt(plain);
        return number < least || number > most ? Optional.empty() : Optional.of(number);
    }
}
