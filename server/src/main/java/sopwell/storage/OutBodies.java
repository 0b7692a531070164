package sopwell.storage;

import java.io.IOException;
import sopwell.menu.Out;
import sopwell.orders.OutEvent;

/** The written form of what is out, version 1. Stateless. */
final class OutBodies {
    private OutBodies() {}

    static void write(BodyWriter body, OutEvent event) throws IOException {
        body.text("out", event.out().toString());
        switch (event.kind()) {
            case MARKED -> {
                OutEvent.OutMarked marked = (OutEvent.OutMarked) event;
                body.number("left", marked.left());
                body.number("untilMs", marked.untilMs());
            }
            case LIFTED -> body.flag("byTime", ((OutEvent.OutLifted) event).byTime());
        }
    }

    static OutEvent read(BodyReader body, OutEvent.Kind kind) throws IOException {
        String written = body.text("out");
        Out out =
                Out.read(written)
                        .orElseThrow(() -> new BodyReader.Unreadable(written + " names nothing"));
        return switch (kind) {
            case MARKED -> new OutEvent.OutMarked(out, body.whole("left"), body.number("untilMs"));
            case LIFTED -> new OutEvent.OutLifted(out, body.flag("byTime"));
        };
    }
}
