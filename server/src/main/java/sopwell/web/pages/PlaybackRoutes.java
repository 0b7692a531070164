package sopwell.web.pages;

import gg.jte.Content;
import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.live.BoardHub;
import sopwell.web.past.PastDay;
import sopwell.web.past.Picture;

/** A day's boards again, to be looked at. Thread-safe. */
final class PlaybackRoutes {
    private static final int DIGITS_MAX = 9;

    private final PageContext context;
    private final PageHandling handling;

    PlaybackRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/playback", handling.handler(ask -> PageHandling.redirect("/playback/today")));
        routes.get("/playback/{date}", handling.handler(this::page));
        routes.get("/playback/{date}/boards/{station}", handling.handler(this::board));
    }

    /** What was asked for, or why it can't be shown. */
    private record Asked(int status, String sentence, PastDay day, Picture picture, int at) {
        static Asked not(int status, String sentence) {
            return new Asked(status, sentence, null, null, 0);
        }
    }

    private Reply page(Ask ask) throws PageHandling.Interrupted {
        Asked asked = asked(ask, ask.in("board"));
        if (!asked.sentence().isEmpty()) {
            return handling.sentence(asked.status(), asked.sentence(), ask);
        }
        Screen s = ask.screen();
        Picture picture = asked.picture();
        String board = context.pages().still(picture, s.t());
        Map<String, Object> params = new HashMap<>();
        params.put("s", s);
        params.put(
                "v",
                new PlaybackView(
                        s.t(),
                        context.settings().zone(),
                        asked.day(),
                        picture.frame().name(),
                        asked.at()));
        params.put("head", FrameHead.of(picture.frame()));
        params.put("targetSeconds", context.settings().targetSeconds());
        params.put("board", (Content) output -> output.writeContent(board));
        return PageHandling.html(200, context.pages().render("playback/page", params));
    }

    /** The board alone, for a page that plays. */
    private Reply board(Ask ask) throws PageHandling.Interrupted {
        Asked asked = asked(ask, ask.in("station"));
        return asked.sentence().isEmpty()
                ? PageHandling.html(200, context.pages().still(asked.picture(), ask.screen().t()))
                : handling.sentence(asked.status(), asked.sentence(), ask);
    }

    private LocalDate today() {
        return context.clock().instant().atZone(context.settings().zone()).toLocalDate();
    }

    private Asked asked(Ask ask, String name) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String at = ask.in("at");
        if (!at.isEmpty() && !at.matches("[0-9]{1," + DIGITS_MAX + "}")) {
            return Asked.not(422, t.of("playback.at-wrong", at));
        }
        AskedDay<LocalDate> date = PastDate.of(ask, context);
        Optional<PastDay> found =
                date.found().isEmpty()
                        ? Optional.empty()
                        : PageHandling.await(context.past().day(date.found().get()));
        if (found.isEmpty()) {
            int status = date.sentence().isEmpty() ? 404 : date.status();
            return Asked.not(status, PastDate.sentence(date, t, "playback", today()));
        }
        PastDay day = found.get();
        String board = name;
        if (board.isEmpty()) {
            board = day.stations().isEmpty() ? BoardHub.PASS : day.stations().get(0).id();
        }
        boolean known =
                board.equals(BoardHub.PASS)
                        || day.stations().stream().map(s -> s.id()).anyMatch(board::equals);
        if (!known) {
            return Asked.not(404, t.of("page.no-station", board));
        }
        int second = at.isEmpty() ? 0 : Math.min(Integer.parseInt(at), day.seconds());
        Optional<Picture> picture =
                PageHandling.await(context.past().board(day.date(), board, second));
        return picture.isEmpty()
                ? Asked.not(404, t.of("playback.no-board", board))
                : new Asked(200, "", day, picture.get(), second);
    }
}
