package sopwell.storage;

import java.io.IOException;
import java.util.List;
import sopwell.kitchen.PaceEvent;
import sopwell.kitchen.PaceEvent.Learned;
import sopwell.kitchen.PaceEvent.PaceCarried;
import sopwell.kitchen.PaceEvent.Quoting;

/** The written form of what a stand has learned of its pace, version 1. Stateless. */
final class PaceBodies {
    private PaceBodies() {}

    static void write(BodyWriter body, PaceEvent event) throws IOException {
        switch (event.kind()) {
            case CARRIED -> carried(body, (PaceCarried) event);
        }
    }

    static PaceEvent read(BodyReader body, PaceEvent.Kind kind) throws IOException {
        return switch (kind) {
            case CARRIED -> carried(body);
        };
    }

    private static void carried(BodyWriter body, PaceCarried carried) throws IOException {
        body.objects("learned", carried.learned(), PaceBodies::learned);
        Quoting quoting = carried.quoting();
        body.number("orders", quoting.orders());
        body.number("lagMs", quoting.lagMs());
        body.number("belowMillionths", quoting.belowMillionths());
        body.number("aboveMillionths", quoting.aboveMillionths());
    }

    private static PaceCarried carried(BodyReader body) throws IOException {
        List<Learned> learned = body.objects("learned", PaceBodies::learned);
        Quoting quoting =
                new Quoting(
                        body.whole("orders"),
                        body.number("lagMs"),
                        body.number("belowMillionths"),
                        body.number("aboveMillionths"));
        return new PaceCarried(learned, quoting);
    }

    private static void learned(BodyWriter body, Learned learned) throws IOException {
        body.text("station", learned.station());
        body.textIfAny("item", learned.item());
        body.textIfAny("size", learned.size());
        body.number("parts", learned.parts());
        body.number("logMillionths", learned.logMillionths());
        body.number("varianceMillionths", learned.varianceMillionths());
    }

    private static Learned learned(BodyReader body) throws IOException {
        return new Learned(
                body.text("station"),
                body.textOr("item"),
                body.textOr("size"),
                body.whole("parts"),
                body.number("logMillionths"),
                body.number("varianceMillionths"));
    }
}
