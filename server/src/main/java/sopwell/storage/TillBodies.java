package sopwell.storage;

import java.io.IOException;
import sopwell.money.CashCount;
import sopwell.money.CashUnit;
import sopwell.till.Means;
import sopwell.till.Payment;
import sopwell.till.TillEvent;

/** The written form of till events, version 1. Stateless. */
final class TillBodies {
    private static final String CASH = "cash";
    private static final String CARD = "card";

    private TillBodies() {}

    static void write(BodyWriter body, TillEvent event) throws IOException {
        switch (event.kind()) {
            case PAID -> paid(body, (TillEvent.OrderPaid) event);
            case REFUNDED -> refunded(body, (TillEvent.OrderRefunded) event);
            case OPENED -> {
                TillEvent.TillOpened opened = (TillEvent.TillOpened) event;
                body.text("cashier", opened.cashier());
                body.number("floatCents", opened.floatCents());
            }
            case PAID_IN -> {
                TillEvent.PaidIn in = (TillEvent.PaidIn) event;
                moved(body, in, in.cents(), in.reason());
            }
            case PAID_OUT -> {
                TillEvent.PaidOut out = (TillEvent.PaidOut) event;
                moved(body, out, out.cents(), out.reason());
            }
            case CLOSED -> {
                TillEvent.TillClosed closed = (TillEvent.TillClosed) event;
                body.text("cashier", closed.cashier());
                body.number("expectedCents", closed.expectedCents());
                body.number("countedCents", closed.countedCents());
                body.objects("counts", closed.counts(), TillBodies::count);
            }
        }
    }

    static TillEvent read(BodyReader body, TillEvent.Kind kind) throws IOException {
        return switch (kind) {
            case PAID -> paid(body);
            case REFUNDED ->
                    new TillEvent.OrderRefunded(
                            body.text("order"),
                            body.textOr("cashier"),
                            means(body),
                            body.number("cents"),
                            body.numberOr("roundingCents"),
                            body.numberOr("goodwillCents"),
                            body.text("reason"),
                            body.number("leftCents"));
            case OPENED ->
                    new TillEvent.TillOpened(body.text("cashier"), body.number("floatCents"));
            case PAID_IN ->
                    new TillEvent.PaidIn(
                            body.text("cashier"), body.number("cents"), body.text("reason"));
            case PAID_OUT ->
                    new TillEvent.PaidOut(
                            body.text("cashier"), body.number("cents"), body.text("reason"));
            case CLOSED ->
                    new TillEvent.TillClosed(
                            body.text("cashier"),
                            body.number("expectedCents"),
                            body.number("countedCents"),
                            body.objects("counts", TillBodies::count));
        };
    }

    private static void paid(BodyWriter body, TillEvent.OrderPaid paid) throws IOException {
        Payment payment = paid.payment();
        body.text("order", paid.order());
        body.textIfAny("cashier", paid.cashier());
        body.text("means", means(paid.means()));
        body.number("cents", payment.cents());
        body.numberIfAny("tipCents", payment.tipCents());
        body.numberIfAny("roundingCents", payment.roundingCents());
        body.number("tenderedCents", payment.tenderedCents());
        body.numberIfAny("changeCents", payment.changeCents());
        body.number("leftCents", paid.leftCents());
    }

    private static TillEvent.OrderPaid paid(BodyReader body) throws IOException {
        return new TillEvent.OrderPaid(
                body.text("order"),
                body.textOr("cashier"),
                means(body),
                new Payment(
                        body.number("cents"),
                        body.numberOr("tipCents"),
                        body.numberOr("roundingCents"),
                        body.number("tenderedCents"),
                        body.numberOr("changeCents")),
                body.number("leftCents"));
    }

    private static void refunded(BodyWriter body, TillEvent.OrderRefunded back) throws IOException {
        body.text("order", back.order());
        body.textIfAny("cashier", back.cashier());
        body.text("means", means(back.means()));
        body.number("cents", back.cents());
        body.numberIfAny("roundingCents", back.roundingCents());
        body.numberIfAny("goodwillCents", back.goodwillCents());
        body.text("reason", back.reason());
        body.number("leftCents", back.leftCents());
    }

    private static void moved(BodyWriter body, TillEvent event, long cents, String reason)
            throws IOException {
        body.text("cashier", event.cashier());
        body.number("cents", cents);
        body.text("reason", reason);
    }

    private static void count(BodyWriter body, CashCount count) throws IOException {
        body.number("cents", count.unit().cents());
        body.flag("note", count.unit().note());
        body.number("pieces", count.pieces());
    }

    private static CashCount count(BodyReader body) throws IOException {
        long cents = body.number("cents");
        boolean note = body.flag("note");
        return new CashCount(new CashUnit(cents, note), body.number("pieces"));
    }

    private static String means(Means means) {
        return switch (means) {
            case CASH -> CASH;
            case CARD -> CARD;
        };
    }

    private static Means means(BodyReader body) throws IOException {
        String written = body.text("means");
        return switch (written) {
            case CASH -> Means.CASH;
            case CARD -> Means.CARD;
            default -> throw new BodyReader.Unreadable(written + " is no means of payment");
        };
    }
}
