package sopwell.web.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.boards.CounterBoard;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.live.Frame;

/** Draws the counter's page, and what a press changes on it. Thread-safe. */
final class CounterPages {
    private final PageContext context;
    private final PageHandling handling;
    private final CounterReading readings;

    CounterPages(PageContext context, PageHandling handling, CounterReading readings) {
        this.context = context;
        this.handling = handling;
        this.readings = readings;
    }

    /** The answer to a press: a fragment beside the call line, or the whole page. */
    Reply answer(int status, Ask ask, CounterForm form, CounterResult result)
            throws PageHandling.Interrupted {
        if (!ask.partial()) {
            return page(status, ask, form, result);
        }
        // A refused order was never kept, so its key may be used again; one in doubt keeps it too.
        CounterForm next = status == 422 ? withKey(form, context.keys().get()) : form;
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("t", ask.screen().t());
        params.put("form", next);
        params.put(
                "reading",
                readings.view(form.call(), form.order(), status != 200, ask.screen().t()));
        put(result, params);
        return PageHandling.html(status, context.pages().render("counter/answer", params));
    }

    private static void put(CounterResult result, Map<String, Object> params) {
        params.put("kind", result.kind());
        params.put("placed", result.placed());
        params.put("number", result.number());
        params.put("sentence", result.sentence());
        params.put("meanwhile", result.meanwhile());
    }

    private static CounterForm withKey(CounterForm form, String key) {
        return new CounterForm(
                key,
                form.call(),
                form.name(),
                form.toGo(),
                form.order(),
                form.number(),
                form.version());
    }

    Reply page(int status, Ask ask, CounterForm form, CounterResult result)
            throws PageHandling.Interrupted {
        if (context.parser().get() == null) {
            return handling.sentence(503, ask.screen().t().get("page.no-menu"), ask);
        }
        Frame open = PageHandling.await(context.boards().apply("counter")).orElseThrow();
        Open shown = new Open(FrameHead.of(open), Pages.openOrders(open));
        return PageHandling.html(status, whole(status, ask, form, result, shown));
    }

    /**
     * The page as a browser keeps it for when the server is away: the open orders, which it could
     * only show as they once were, are left out, and so is the key, which two orders would share.
     */
    Reply away(Ask ask) throws PageHandling.Interrupted {
        if (context.parser().get() == null) {
            return handling.sentence(503, ask.screen().t().get("page.no-menu"), ask);
        }
        long nowMs = context.clock().millis();
        FrameHead head = new FrameHead("counter", "", 0, 0, nowMs, "", "");
        Open none = new Open(head, new CounterBoard(List.of(), 0, List.of(), List.of()));
        CounterForm form = CounterForm.fresh("");
        return PageHandling.html(200, whole(200, ask, form, CounterResult.NONE, none));
    }

    /** The open orders as they are shown; no epoch means that nobody knows them. */
    private record Open(FrameHead head, CounterBoard board) {}

    private String whole(int status, Ask ask, CounterForm form, CounterResult result, Open open)
            throws PageHandling.Interrupted {
        T t = ask.screen().t();
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("form", form);
        params.put("reading", readings.view(form.call(), form.order(), status != 200, t));
        params.put("rows", Words.of(context.parser().get().menu(), t));
        params.put("head", open.head());
        params.put("board", open.board());
        params.put("v", context.pages().counter(t));
        put(result, params);
        return context.pages().render("counter/page", params);
    }
}
