package sopwell.storage;

import java.io.IOException;
import sopwell.stock.PanEvent;

/** The written form of what happens to pans, version 1. Stateless. */
final class PanBodies {
    private PanBodies() {}

    static void write(BodyWriter body, PanEvent event) throws IOException {
        PanEvent.PanRefilled refilled = (PanEvent.PanRefilled) event;
        body.text("pan", refilled.pan());
        body.number("amount", refilled.amount());
    }

    static PanEvent read(BodyReader body) throws IOException {
        return new PanEvent.PanRefilled(body.text("pan"), body.whole("amount"));
    }
}
