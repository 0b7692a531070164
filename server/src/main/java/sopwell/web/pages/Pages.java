package sopwell.web.pages;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import sopwell.boards.CounterBoard;
import sopwell.boards.PassBoard;
import sopwell.boards.ReadyBoard;
import sopwell.boards.StationBoard;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.web.T;
import sopwell.web.Texts;
import sopwell.web.live.Frame;
import sopwell.web.past.Picture;

/** Draws pages, fragments and frames from the templates. Thread-safe. */
public final class Pages {
    private final TemplateEngine engine;
    private final Supplier<Menu> menu;
    private final ZoneId zone;
    private final AtomicReference<Known> widest = new AtomicReference<>(new Known("", Map.of()));

    /** The widest texts of columns, remembered for one menu. */
    private record Known(
            String revision, Map<String, Map<String, List<StationView.Probe>>> byBoard) {}

    /**
     * Pages from templates that were compiled with the program.
     *
     * @param menu the menu in force, or null before the first
     * @param zone the stand's, for times of day
     */
    public Pages(Supplier<Menu> menu, ZoneId zone) {
        this(TemplateEngine.createPrecompiled(ContentType.Html), menu, zone);
    }

    /** Pages from an engine of one's own. */
    public Pages(TemplateEngine engine, Supplier<Menu> menu, ZoneId zone) {
        this.engine = engine;
        this.menu = menu;
        this.zone = zone;
    }

    String render(String template, Map<String, Object> params) {
        StringOutput output = new StringOutput(8_192);
        engine.render(template + ".jte", params, output);
        return output.toString();
    }

    Optional<Menu> menu() {
        return Optional.ofNullable(menu.get());
    }

    /** A frame's text: the rows that changed, and the small parts that are always sent. */
    String frame(Frame frame, T t) {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("head", FrameHead.of(frame));
        params.put("frame", frame);
        params.put("t", t);
        if (frame.board() instanceof StationBoard board) {
            params.put("v", station(board, t));
            params.put("pans", new PanView(t, zone, board));
            return render("boards/frame", params);
        }
        if (frame.board() instanceof PassBoard) {
            params.put("v", new PassView(t));
            return render("pass/frame", params);
        }
        if (frame.board() instanceof ReadyBoard) {
            return render("ready/frame", params);
        }
        params.put("v", counter(t));
        return render("counter/frame", params);
    }

    /**
     * A board's whole page.
     *
     * @param more what only this board's page shows, by the template's names
     */
    String board(Frame frame, Screen screen, int targetSeconds, Map<String, Object> more) {
        Map<String, Object> params = new LinkedHashMap<>(more);
        params.put("s", screen);
        params.put("head", FrameHead.of(frame));
        params.put("targetSeconds", targetSeconds);
        if (frame.board() instanceof StationBoard board) {
            params.put("v", station(board, screen.t()));
            params.put("pans", new PanView(screen.t(), zone, board));
            return render("boards/page", params);
        }
        params.put("v", new PassView(screen.t()));
        params.put("board", (PassBoard) frame.board());
        return render("pass/page", params);
    }

    /** The guests' page, which speaks both languages at once. */
    String ready(Frame frame, Screen screen, Texts texts) {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", screen);
        params.put("head", FrameHead.of(frame));
        params.put("board", (ReadyBoard) frame.board());
        params.put("en", texts.in(Lang.EN));
        params.put("es", texts.in(Lang.ES));
        return render("ready/page", params);
    }

    /** A board of the past, drawn as it was then, with nothing to press. */
    String still(Picture picture, T t) {
        Pages then = new Pages(engine, picture::menu, zone);
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("head", FrameHead.of(picture.frame()));
        if (picture.frame().board() instanceof StationBoard board) {
            params.put("v", then.station(board, t));
            params.put("pans", new PanView(t, zone, board));
            return Still.of(render("playback/station", params));
        }
        params.put("v", new PassView(t));
        params.put("board", (PassBoard) picture.frame().board());
        return Still.of(render("playback/pass", params));
    }

    CounterView counter(T t) {
        return new CounterView(t, menu.get(), zone);
    }

    /** The open orders of a frame of the counter's board. */
    static CounterBoard openOrders(Frame frame) {
        return (CounterBoard) frame.board();
    }

    private StationView station(StationBoard board, T t) {
        Menu now = menu.get();
        String key = board.station() + " " + t.code();
        Known known = widest.get();
        if (!known.revision().equals(now.revision())) {
            known = new Known(now.revision(), Map.of());
        }
        Map<String, List<StationView.Probe>> found = known.byBoard().get(key);
        if (found == null) {
            found = Probes.of(board, now, t);
            Map<String, Map<String, List<StationView.Probe>>> more =
                    new LinkedHashMap<>(known.byBoard());
            more.put(key, found);
            widest.set(new Known(now.revision(), more));
        }
        return new StationView(t, board, found);
    }
}
