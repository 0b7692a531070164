package sopwell.storage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import sopwell.menu.Out;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayExceptions.RemakeCount;
import sopwell.mix.DayExceptions.VoidCount;
import sopwell.mix.ExceptionTally;
import sopwell.mix.ExceptionTally.Difference;
import sopwell.mix.ExceptionTally.Refunds;
import sopwell.mix.OutTime;

/**
 * Writes what did not go straight on a day as JSON, since reasons are people's own words, and reads
 * it back. Stateless.
 */
final class ExceptionTallyCodec {
    /** Changes when the form changes; what is kept in another form is counted anew. */
    static final int FORM = 1;

    private ExceptionTallyCodec() {}

    static String write(ExceptionTally tally) {
        try {
            byte[] bytes =
                    BodyWriter.bytes(
                            body -> {
                                write(body, tally.exceptions());
                                body.objects("outs", tally.outs(), ExceptionTallyCodec::write);
                                body.objects(
                                        "refunds", tally.refunds(), ExceptionTallyCodec::write);
                                body.objects(
                                        "differences",
                                        tally.differences(),
                                        (difference, one) -> {
                                            difference.text("cashier", one.cashier());
                                            difference.number("cents", one.overCents());
                                        });
                            });
            return new String(bytes, StandardCharsets.UTF_8);
        } catch (IOException impossible) {
            throw new IllegalStateException("memory does not fail", impossible);
        }
    }

    /**
     * Reads what was written.
     *
     * @throws IOException when it is something else
     */
    static ExceptionTally read(LocalDate date, String text) throws IOException {
        try (BodyReader body = new BodyReader(text.getBytes(StandardCharsets.UTF_8))) {
            ExceptionTally tally =
                    new ExceptionTally(
                            date,
                            exceptions(body),
                            body.objects("outs", ExceptionTallyCodec::out),
                            body.objects(
                                    "refunds",
                                    one ->
                                            new Refunds(
                                                    one.text("reason"),
                                                    one.whole("count"),
                                                    one.number("cents"))),
                            body.objects(
                                    "differences",
                                    one ->
                                            new Difference(
                                                    one.text("cashier"), one.number("cents"))));
            body.end();
            return tally;
        }
    }

    private static void write(BodyWriter body, DayExceptions day) throws IOException {
        body.number("asked", day.asked());
        body.number("lapsed", day.lapsed());
        body.objects("waits", day.waitsMs(), (wait, ms) -> wait.number("ms", ms));
        body.number("changes", day.changes());
        body.number("changesAfterStart", day.changesAfterStart());
        body.number("voidsAfterStart", day.voidsAfterStart());
        body.objects(
                "voids",
                day.voids(),
                (count, one) -> {
                    count.text("reason", one.reason());
                    count.number("orders", one.orders());
                });
        body.objects(
                "remakes",
                day.remakes(),
                (count, one) -> {
                    count.text("reason", KitchenBodies.written(one.reason()));
                    count.number("pieces", one.pieces());
                });
    }

    private static DayExceptions exceptions(BodyReader body) throws IOException {
        return new DayExceptions(
                body.whole("asked"),
                body.whole("lapsed"),
                body.objects("waits", wait -> wait.number("ms")),
                body.whole("changes"),
                body.whole("changesAfterStart"),
                body.whole("voidsAfterStart"),
                body.objects(
                        "voids", one -> new VoidCount(one.text("reason"), one.whole("orders"))),
                body.objects(
                        "remakes",
                        one -> new RemakeCount(KitchenBodies.reason(one), one.whole("pieces"))));
    }

    private static void write(BodyWriter body, OutTime time) throws IOException {
        body.text("out", time.out().toString());
        body.number("fromMs", time.fromMs());
        body.number("toMs", time.toMs());
        body.flag("open", time.open());
        body.number("sold", time.sold());
    }

    private static OutTime out(BodyReader body) throws IOException {
        String written = body.text("out");
        return new OutTime(
                Out.read(written)
                        .orElseThrow(() -> new BodyReader.Unreadable(written + " names nothing")),
                body.number("fromMs"),
                body.number("toMs"),
                body.flag("open"),
                body.whole("sold"));
    }

    private static void write(BodyWriter body, Refunds refunds) throws IOException {
        body.text("reason", refunds.reason());
        body.number("count", refunds.count());
        body.number("cents", refunds.cents());
    }
}
