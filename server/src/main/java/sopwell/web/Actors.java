package sopwell.web;

import io.undertow.server.HttpServerExchange;
import io.undertow.util.AttachmentKey;
import java.util.Optional;
import sopwell.Check;
import sopwell.audit.Who;

/** Who a request comes from. Stateless. */
public final class Actors {
    private static final AttachmentKey<Who> WHO = AttachmentKey.create(Who.class);
    private static final AttachmentKey<Boolean> GATED = AttachmentKey.create(Boolean.class);

    private Actors() {}

    /** Says who it is, for whatever answers the request. */
    public static void put(HttpServerExchange exchange, Who who) {
        exchange.putAttachment(WHO, who);
    }

    /** A gate stands before whatever answers: only it says who it is. */
    static void expectGate(HttpServerExchange exchange) {
        exchange.putAttachment(GATED, true);
    }

    /** Whether a gate has to say who it is. */
    static boolean isGated(HttpServerExchange exchange) {
        return exchange.getAttachment(GATED) != null;
    }

    /**
     * Who it is; at a stand without a gate, whoever sits at its machine. Behind a gate that did not
     * say, nothing is answered.
     */
    public static Who of(HttpServerExchange exchange) {
        Optional<Who> said = Optional.ofNullable(exchange.getAttachment(WHO));
        Check.that(said.isPresent() || !isGated(exchange), "the gate says who it is");
        return said.orElse(Who.AT_THIS_MACHINE);
    }
}
