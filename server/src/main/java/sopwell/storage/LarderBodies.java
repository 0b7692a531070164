package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import sopwell.stock.larder.Batch;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.Label;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.larder.LarderEvent.StockCarried;
import sopwell.stock.larder.Measure;
import sopwell.stock.larder.Yields;
import sopwell.stock.safety.Reading;
import sopwell.stock.safety.Temperature;

/** The written form of what happens to what is kept, version 1. Stateless. */
final class LarderBodies {
    private LarderBodies() {}

    static void write(BodyWriter body, LarderEvent event) throws IOException {
        switch (event.kind()) {
            case COUNTED -> measure(body, ((LarderEvent.IngredientCounted) event).counted());
            case WASTED -> {
                LarderEvent.IngredientWasted wasted = (LarderEvent.IngredientWasted) event;
                measure(body, wasted.wasted());
                body.text("reason", wasted.reason());
            }
            case DELIVERED -> {
                LarderEvent.IngredientDelivered delivered = (LarderEvent.IngredientDelivered) event;
                measure(body, delivered.delivered());
                body.textIfAny("note", delivered.note());
            }
            case SLICER_CLEANED -> {}
            case CLOCK_STARTED -> ClockBodies.started(body, (LarderEvent.ClockStarted) event);
            case CLOCK_MEASURED -> ClockBodies.measured(body, (LarderEvent.ClockMeasured) event);
            case CLOCK_STOPPED -> ClockBodies.stopped(body, (LarderEvent.ClockStopped) event);
            case CARRIED -> carried(body, (StockCarried) event);
        }
    }

    static LarderEvent read(BodyReader body, LarderEvent.Kind kind) throws IOException {
        return switch (kind) {
            case COUNTED -> new LarderEvent.IngredientCounted(measure(body));
            case WASTED -> new LarderEvent.IngredientWasted(measure(body), body.text("reason"));
            case DELIVERED ->
                    new LarderEvent.IngredientDelivered(measure(body), body.textOr("note"));
            case SLICER_CLEANED -> new LarderEvent.SlicerCleaned();
            case CLOCK_STARTED -> ClockBodies.started(body);
            case CLOCK_MEASURED -> ClockBodies.measured(body);
            case CLOCK_STOPPED -> ClockBodies.stopped(body);
            case CARRIED -> carried(body);
        };
    }

    static void measure(BodyWriter body, Measure measure) throws IOException {
        body.text("ingredient", measure.ingredient());
        body.number("thousandths", measure.thousandths());
        body.text("entered", measure.entered());
        body.text("unit", measure.unit());
    }

    static Measure measure(BodyReader body) throws IOException {
        return new Measure(
                body.text("ingredient"),
                body.number("thousandths"),
                body.text("entered"),
                body.text("unit"));
    }

    private static void carried(BodyWriter body, StockCarried carried) throws IOException {
        body.objects("held", carried.held(), LarderBodies::held);
        body.objects("batches", carried.batches(), LarderBodies::batch);
        body.objects("labels", carried.labels(), LarderBodies::label);
        body.objects("yields", carried.yields(), LarderBodies::yields);
        body.number("started", carried.started());
        body.numberIfAny("slicerCleanedAtMs", carried.slicerCleanedAtMs());
        ClockBodies.carried(body, carried);
    }

    private static StockCarried carried(BodyReader body) throws IOException {
        return new StockCarried(
                body.objects("held", LarderBodies::held),
                body.objects("batches", LarderBodies::batch),
                body.objects("labels", LarderBodies::label),
                body.objects("yields", LarderBodies::yields),
                body.whole("started"),
                body.numberOr("slicerCleanedAtMs"),
                body.objectsIfAny("clocks", ClockBodies::clock),
                (int) body.numberOr("clocksStarted"));
    }

    private static void held(BodyWriter body, Held held) throws IOException {
        body.text("ingredient", held.ingredient());
        body.number("countedAtMs", held.countedAtMs());
        body.number("counted", held.counted());
        body.numberIfAny("in", held.in());
        body.numberIfAny("used", held.used());
        body.numberIfAny("out", held.out());
    }

    private static Held held(BodyReader body) throws IOException {
        return new Held(
                body.text("ingredient"),
                body.number("countedAtMs"),
                body.number("counted"),
                body.numberOr("in"),
                body.numberOr("used"),
                body.numberOr("out"));
    }

    private static void batch(BodyWriter body, Batch batch) throws IOException {
        body.text("batch", batch.id());
        body.text("makes", batch.makes());
        body.number("lots", batch.lots());
        body.number("planned", batch.planned());
        body.textIfAny("note", batch.note());
        body.number("startedAtMs", batch.startedAtMs());
        body.textIfAny("step", batch.step());
        body.number("stepAtMs", batch.stepAtMs());
        body.objects("readings", batch.readings(), LarderBodies::reading);
        body.texts("missed", batch.missed());
        body.textIfAny("preparedOn", batch.preparedOn());
    }

    private static Batch batch(BodyReader body) throws IOException {
        return new Batch(
                body.text("batch"),
                body.text("makes"),
                body.whole("lots"),
                body.number("planned"),
                body.textOr("note"),
                body.number("startedAtMs"),
                body.textOr("step"),
                body.number("stepAtMs"),
                body.objects("readings", LarderBodies::reading),
                body.texts("missed"),
                body.textOr("preparedOn"));
    }

    static void reading(BodyWriter body, Reading reading) throws IOException {
        body.number("atMs", reading.atMs());
        body.number("hundredthsF", reading.temperature().hundredthsF());
    }

    static Reading reading(BodyReader body) throws IOException {
        return new Reading(body.number("atMs"), new Temperature(body.whole("hundredthsF")));
    }

    private static void label(BodyWriter body, Label label) throws IOException {
        body.text("batch", label.batch());
        body.text("makes", label.makes());
        body.number("thousandths", label.thousandths());
        body.text("preparedOn", label.preparedOn().toString());
        body.text("useBy", label.useBy().toString());
    }

    private static Label label(BodyReader body) throws IOException {
        return new Label(
                body.text("batch"),
                body.text("makes"),
                body.number("thousandths"),
                LocalDate.parse(body.text("preparedOn")),
                LocalDate.parse(body.text("useBy")));
    }

    private static void yields(BodyWriter body, Yields yields) throws IOException {
        body.text("makes", yields.makes());
        body.objects(
                "gave", yields.perMille(), (each, perMille) -> each.number("perMille", perMille));
    }

    private static Yields yields(BodyReader body) throws IOException {
        return new Yields(body.text("makes"), body.objects("gave", each -> each.whole("perMille")));
    }
}
