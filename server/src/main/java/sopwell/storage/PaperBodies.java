package sopwell.storage;

import java.io.IOException;
import sopwell.orders.PaperEvent;

/** The written form of what is printed, version 1. Stateless. */
final class PaperBodies {
    private PaperBodies() {}

    static void write(BodyWriter body, PaperEvent event) throws IOException {
        PaperEvent.PaperPrinted printed = (PaperEvent.PaperPrinted) event;
        body.text("order", printed.order());
        body.text("paper", printed.paper());
        body.number("copy", printed.copy());
    }

    static PaperEvent read(BodyReader body) throws IOException {
        return new PaperEvent.PaperPrinted(
                body.text("order"), body.text("paper"), body.whole("copy"));
    }
}
