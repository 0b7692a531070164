package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.web.Reply;

/** How a tablet comes to trust the stand: the page, and the certificate to install. Thread-safe. */
final class TrustRoutes {
    private static final String CERTIFICATE = "application/x-x509-ca-cert";
    private static final int GROUP_BYTES = 4;

    private final PageContext context;
    private final PageHandling handling;

    TrustRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/trust", handling.handler(this::page));
        routes.get("/trust/sopwell-stand.crt", handling.handler(this::certificate));
    }

    private Reply page(Ask ask) {
        Optional<Trust> trust = context.trust().get();
        List<String> groups = trust.map(t -> groups(t.fingerprint())).orElse(List.of());
        String until =
                trust.map(t -> t.until().atZone(context.settings().zone()).toLocalDate())
                        .map(date -> ask.screen().t().date(date))
                        .orElse("");
        return PageHandling.html(
                200,
                context.pages()
                        .render(
                                "trust",
                                Map.of(
                                        "s", ask.screen(),
                                        "trust", trust,
                                        "groups", groups,
                                        "until", until)));
    }

    private Reply certificate(Ask ask) {
        Optional<Trust> trust = context.trust().get();
        if (trust.isEmpty()) {
            return handling.sentence(404, ask.screen().t().get("trust.none"), ask);
        }
        byte[] pem = trust.get().pem().getBytes(StandardCharsets.US_ASCII);
        return new Reply(
                200,
                CERTIFICATE,
                ByteBuffer.wrap(pem),
                Map.of("Content-Disposition", "attachment; filename=\"sopwell-stand.crt\""));
    }

    /** A few digits at a time can be compared by eye. */
    private static List<String> groups(String fingerprint) {
        String[] bytes = fingerprint.split(":", -1);
        return java.util.stream.IntStream.range(0, bytes.length / GROUP_BYTES)
                .map(group -> group * GROUP_BYTES)
                .mapToObj(from -> Arrays.asList(bytes).subList(from, from + GROUP_BYTES))
                .map(group -> String.join(" ", group))
                .toList();
    }
}
