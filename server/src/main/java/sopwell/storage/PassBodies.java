package sopwell.storage;

import java.io.IOException;
import sopwell.kitchen.PassEvent;

/** The written form of what is done at the pass, version 1. Stateless. */
final class PassBodies {
    private PassBodies() {}

    static void write(BodyWriter body, PassEvent event) throws IOException {
        body.text("order", event.order());
        switch (event.kind()) {
            case CALLED -> body.number("calls", ((PassEvent.NumberCalled) event).calls());
            case BAGGED -> body.number("bags", ((PassEvent.BagsCounted) event).bags());
        }
    }

    static PassEvent read(BodyReader body, PassEvent.Kind kind) throws IOException {
        String order = body.text("order");
        return switch (kind) {
            case CALLED -> new PassEvent.NumberCalled(order, body.whole("calls"));
            case BAGGED -> new PassEvent.BagsCounted(order, body.whole("bags"));
        };
    }
}
