package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.BatchEvent.BatchStarted;
import sopwell.stock.larder.BatchEvent.BatchYielded;
import sopwell.stock.larder.BatchEvent.Taken;
import sopwell.stock.safety.Temperature;

/** The written form of what happens to batches, version 1. Stateless. */
final class BatchBodies {
    private BatchBodies() {}

    static void write(BodyWriter body, BatchEvent event) throws IOException {
        body.text("batch", event.batch());
        switch (event.kind()) {
            case STARTED -> started(body, (BatchStarted) event);
            case MOVED -> {
                BatchEvent.BatchMoved moved = (BatchEvent.BatchMoved) event;
                body.text("step", moved.step());
                body.flag("met", moved.met());
                body.textIfAny("preparedOn", moved.preparedOn());
            }
            case MEASURED -> {
                BatchEvent.TemperatureTaken taken = (BatchEvent.TemperatureTaken) event;
                body.number("hundredthsF", taken.temperature().hundredthsF());
                body.flag("celsius", taken.celsius());
                body.textIfAny("by", taken.by());
            }
            case YIELDED -> {
                BatchYielded yielded = (BatchYielded) event;
                LarderBodies.measure(body, yielded.gave());
                body.flag("met", yielded.met());
                body.text("preparedOn", yielded.preparedOn().toString());
                body.text("useBy", yielded.useBy().toString());
            }
            case DISCARDED -> {
                BatchEvent.BatchDiscarded discarded = (BatchEvent.BatchDiscarded) event;
                body.numberIfAny("thousandths", discarded.thousandths());
                body.text("reason", discarded.reason());
            }
            case USED_UP -> {}
        }
    }

    static BatchEvent read(BodyReader body, BatchEvent.Kind kind) throws IOException {
        String batch = body.text("batch");
        return switch (kind) {
            case STARTED -> started(body, batch);
            case MOVED ->
                    new BatchEvent.BatchMoved(
                            batch, body.text("step"), body.flag("met"), body.textOr("preparedOn"));
            case MEASURED ->
                    new BatchEvent.TemperatureTaken(
                            batch,
                            new Temperature(body.whole("hundredthsF")),
                            body.flag("celsius"),
                            body.textOr("by"));
            case YIELDED ->
                    new BatchYielded(
                            batch,
                            LarderBodies.measure(body),
                            body.flag("met"),
                            LocalDate.parse(body.text("preparedOn")),
                            LocalDate.parse(body.text("useBy")));
            case DISCARDED ->
                    new BatchEvent.BatchDiscarded(
                            batch, body.numberOr("thousandths"), body.text("reason"));
            case USED_UP -> new BatchEvent.BatchUsedUp(batch);
        };
    }

    private static void started(BodyWriter body, BatchStarted started) throws IOException {
        body.text("makes", started.makes());
        body.number("lots", started.lots());
        body.number("planned", started.planned());
        body.textIfAny("note", started.note());
        body.textIfAny("step", started.step());
        body.objects("takes", started.takes(), BatchBodies::taken);
    }

    private static BatchStarted started(BodyReader body, String batch) throws IOException {
        return new BatchStarted(
                batch,
                body.text("makes"),
                body.whole("lots"),
                body.number("planned"),
                body.textOr("note"),
                body.textOr("step"),
                body.objects("takes", BatchBodies::taken));
    }

    private static void taken(BodyWriter body, Taken taken) throws IOException {
        body.text("ingredient", taken.ingredient());
        body.number("thousandths", taken.thousandths());
    }

    private static Taken taken(BodyReader body) throws IOException {
        return new Taken(body.text("ingredient"), body.number("thousandths"));
    }
}
