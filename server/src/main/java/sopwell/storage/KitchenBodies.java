package sopwell.storage;

import java.io.IOException;
import java.util.Locale;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PartId;
import sopwell.kitchen.RemakeReason;

/** The written form of kitchen events, version 1. Stateless. */
final class KitchenBodies {
    private KitchenBodies() {}

    /** Nearly all of them say only which part. */
    static void write(BodyWriter body, KitchenEvent event) throws IOException {
        body.text("part", event.part().toString());
        if (event.kind() == KitchenEvent.Kind.REMADE) {
            KitchenEvent.PartRemade remade = (KitchenEvent.PartRemade) event;
            body.number("pieces", remade.pieces());
            body.text("reason", written(remade.reason()));
            body.textIfAny("text", remade.text());
            body.flag("along", remade.along());
        }
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
            case REMADE ->
                    new KitchenEvent.PartRemade(
                            part,
                            body.whole("pieces"),
                            reason(body),
                            body.textOr("text"),
                            body.flag("along"));
        };
    }

    static String written(RemakeReason reason) {
        return reason.name().toLowerCase(Locale.ROOT);
    }

    static RemakeReason reason(BodyReader body) throws IOException {
        String written = body.text("reason");
        for (RemakeReason reason : RemakeReason.values()) {
            if (written(reason).equals(written)) {
                return reason;
            }
        }
        throw new BodyReader.Unreadable(written + " is no reason for a remake");
    }
}
