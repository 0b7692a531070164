package sopwell.web;

import io.undertow.server.HttpServerExchange;
import io.undertow.util.AttachmentKey;
import java.util.Optional;
import sopwell.audit.Who;

/** Who a request comes from. Stateless. */
public final class Actors {
    private static final AttachmentKey<Who> WHO = AttachmentKey.create(Who.class);

    private Actors() {}

    /** Says who it is, for whatever answers the request. */
    public static void put(HttpServerExchange exchange, Who who) {
        exchange.putAttachment(WHO, who);
    }

    /** Who it is; at a stand without a gate, whoever sits at its machine. */
    public static Who of(HttpServerExchange exchange) {
        return Optional.ofNullable(exchange.getAttachment(WHO)).orElse(Who.AT_THIS_MACHINE);
    }
}
