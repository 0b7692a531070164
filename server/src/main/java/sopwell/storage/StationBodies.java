package sopwell.storage;

import java.io.IOException;
import sopwell.kitchen.StationEvent;

/** The written form of what happens to stations, version 1. Stateless. */
final class StationBodies {
    private StationBodies() {}

    static void write(BodyWriter body, StationEvent event) throws IOException {
        body.text("station", event.station());
        switch (event.kind()) {
            case HANDS_SET -> body.number("hands", ((StationEvent.HandsSet) event).hands());
        }
    }

    static StationEvent read(BodyReader body, StationEvent.Kind kind) throws IOException {
        String station = body.text("station");
        return switch (kind) {
            case HANDS_SET -> new StationEvent.HandsSet(station, body.whole("hands"));
        };
    }
}
