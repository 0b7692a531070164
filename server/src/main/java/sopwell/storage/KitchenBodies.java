package sopwell.storage;

import java.io.IOException;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PartId;

/** The written form of kitchen events, version 1. Stateless. */
final class KitchenBodies {
    private KitchenBodies() {}

    /** All of them say only which part. */
    static void write(BodyWriter body, KitchenEvent event) throws IOException {
        body.text("part", event.part().toString());
    }

    static KitchenEvent read(BodyReader body, KitchenEvent.Kind kind) throws IOException {
        String written = body.text("part");
        PartId part =
                PartId.read(written)
                        .orElseThrow(() -> new BodyReader.Unreadable(written + " names no part"));
        return switch (kind) {
            case STARTED -> new KitchenEvent.PartStarted(part);
            case UP -> new KitchenEvent.PartUp(part);
            case BROUGHT_BACK -> new KitchenEvent.PartBroughtBack(part);
            case SEEN -> new KitchenEvent.PartSeen(part);
        };
    }
}
