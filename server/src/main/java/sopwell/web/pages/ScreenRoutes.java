package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;
import sopwell.desk.StandCommand.ForStations;
import sopwell.kitchen.StationCommand;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.web.Reply;
import sopwell.web.T;

/** Where a screen is named and set, once. Thread-safe. */
final class ScreenRoutes {
    private static final String STATIONS = "/boards/";

    private final PageContext context;
    private final PageHandling handling;

    ScreenRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/screens", handling.handler(ask -> page(200, ask, "")));
        routes.post("/screens", handling.handler(this::set));
    }

    private Reply page(int status, Ask ask, String sentence) throws PageHandling.Interrupted {
        Map<String, Integer> hands =
                PageHandling.await(
                        context.follower()
                                .ask(
                                        stand -> {
                                            Map<String, Integer> on = new LinkedHashMap<>();
                                            for (Station one : stations()) {
                                                on.put(one.id(), stand.kitchen().hands(one));
                                            }
                                            return on;
                                        }));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("stations", stations());
        params.put("hands", hands);
        params.put("key", context.keys().get());
        params.put("sentence", sentence);
        return PageHandling.html(status, context.pages().render("screens/page", params));
    }

    private List<Station> stations() {
        return Optional.ofNullable(context.follower().menu()).map(Menu::stations).orElse(List.of());
    }

    private Reply set(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        Setup setup =
                new Setup(
                        ask.field("name"),
                        ask.field("board"),
                        Setup.inchTenths(ask.field("inches")),
                        Setup.number(ask.field("pixels-per-metre"), Integer.MAX_VALUE),
                        !ask.field("sound").equals("off"));
        if (setup.name().isEmpty() || setup.name().length() > Limits.NAME_CHARS_MAX) {
            return page(422, ask, t.of("screens.name.wrong", Limits.NAME_CHARS_MAX));
        }
        if (!isBoard(setup.board())) {
            return page(422, ask, t.get("screens.board.wrong"));
        }
        Optional<StationCommand.SetHands> hands = hands(ask, setup.board());
        String to = setup.board() + "?" + settings(ask);
        Reply done =
                hands.isEmpty()
                        ? PageHandling.redirect(to)
                        : handling.press(
                                ask,
                                new ForStations(hands.get()),
                                events -> PageHandling.redirect(to));
        return done.status() == 303
                ? done.with("Set-Cookie", Screens.cookie(Setup.COOKIE, setup.written()))
                : done;
    }

    /** Language, colours and distance are kept by whichever page is opened with them. */
    private static String settings(Ask ask) {
        return "lang="
                + choice(ask, "lang", Screens.LANGS)
                + "&theme="
                + choice(ask, "theme", Screens.THEMES)
                + "&distance="
                + choice(ask, "distance", Screens.DISTANCES);
    }

    private static String choice(Ask ask, String field, List<String> known) {
        return known.contains(ask.field(field)) ? ask.field(field) : known.get(0);
    }

    private boolean isBoard(String path) {
        return List.of("/counter", "/pass", "/ready").contains(path)
                || stations().stream().anyMatch(one -> path.equals(STATIONS + one.id()));
    }

    /** Hands are said again only when they are others than before. */
    private Optional<StationCommand.SetHands> hands(Ask ask, String board)
            throws PageHandling.Interrupted {
        Optional<Station> station =
                stations().stream().filter(one -> board.equals(STATIONS + one.id())).findFirst();
        if (station.isEmpty() || ask.field("hands").isEmpty()) {
            return Optional.empty();
        }
        int wanted = Setup.number(ask.field("hands"), Integer.MAX_VALUE);
        int now = PageHandling.await(context.follower().ask(s -> s.kitchen().hands(station.get())));
        return wanted == now
                ? Optional.empty()
                : Optional.of(new StationCommand.SetHands(station.get().id(), wanted));
    }
}
