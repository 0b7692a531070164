package sopwell.web.pages;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.access.AccessRules;
import sopwell.access.Device;
import sopwell.access.Noting;
import sopwell.access.Outcome;
import sopwell.access.Paired;
import sopwell.access.Refused;
import sopwell.access.Right;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.Who;
import sopwell.web.AccessCookies;
import sopwell.web.RateLimit;
import sopwell.web.Reply;

/** Where a new screen is let in with a code. Thread-safe. */
final class PairRoutes {
    private static final String SCREENS = "/screens";

    private final PageContext context;
    private final PageHandling handling;
    private final PairedBy pairedBy;
    private final AccessNotes notes;
    private final RateLimit limit;

    PairRoutes(PageContext context, PageHandling handling, PairedBy pairedBy) {
        this.context = context;
        this.handling = handling;
        this.pairedBy = pairedBy;
        this.notes = new AccessNotes(context);
        this.limit = RateLimit.forSignIn(context.nanos());
    }

    void add(RoutingHandler routes) {
        routes.get("/pair", handling.visiting((e, ask) -> page(200, ask, "")));
        routes.post("/pair", handling.visiting(this::pair));
    }

    private Reply pair(HttpServerExchange exchange, Ask ask) {
        String address = RateLimit.address(exchange);
        long waitMillis = limit.take(address);
        if (waitMillis > 0) {
            String seconds = RateLimit.seconds(waitMillis);
            String sentence = DoorWords.waiting(Long.parseLong(seconds), ask.screen().t());
            return page(429, ask, sentence).with("Retry-After", seconds);
        }
        String code = ask.field("code");
        Outcome<Paired> outcome =
                context.access().roster().noted(letsIn(code)).pairByCode(code, address);
        if (!outcome.isDone()) {
            Refused refused = outcome.refused().orElseThrow();
            return page(DoorWords.status(refused), ask, DoorWords.of(refused, ask.screen().t()));
        }
        Paired paired = outcome.value().orElseThrow();
        Device device = paired.device();
        boolean enters = AccessRules.rights(device.use()).contains(Right.ENTER);
        Reply on = PageHandling.redirect(enters ? SCREENS : BackPath.signIn(SCREENS));
        return AccessCookies.paired(exchange, on, paired);
    }

    /** Whoever offered the code lets the device in. */
    private Noting letsIn(String code) {
        return device ->
                notes.device(
                                pairedBy.of(code).orElse(new Who("", device, "", "")),
                                Change.DEVICE_PAIRED)
                        .note(device);
    }

    private Reply page(int status, Ask ask, String sentence) {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("sentence", sentence);
        return PageHandling.html(status, context.pages().render("signin/pair", params));
    }
}
