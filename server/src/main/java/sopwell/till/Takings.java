package sopwell.till;

/**
 * What was paid and given back: for one order, at one till, or in a day. All in cents. Immutable.
 *
 * @param cashCents what cash settled, before rounding
 * @param cardCents what cards settled
 * @param cashTipCents tips in cash, which are no sales
 * @param cardTipCents tips by card
 * @param roundingCents what rounding added to the cash taken less that given back; may be negative
 * @param cashBackCents what was refunded in cash, before rounding
 * @param cardBackCents what was refunded to cards
 * @param goodwillCents how much of the refunds was goodwill
 */
public record Takings(
        long cashCents,
        long cardCents,
        long cashTipCents,
        long cardTipCents,
        long roundingCents,
        long cashBackCents,
        long cardBackCents,
        long goodwillCents) {
    /** Nothing yet. */
    public static final Takings NONE = new Takings(0, 0, 0, 0, 0, 0, 0, 0);

    /** What was settled less what was given back. */
    public long keptCents() {
        return cashCents + cardCents - cashBackCents - cardBackCents;
    }

    /** What was paid by these means and not given back. */
    public long keptCents(Means means) {
        return switch (means) {
            case CASH -> cashCents - cashBackCents;
            case CARD -> cardCents - cardBackCents;
        };
    }

    /** What it all adds to a drawer. */
    public long drawerCents() {
        return cashCents + roundingCents + cashTipCents - cashBackCents;
    }

    Takings with(TillEvent.OrderPaid paid) {
        Payment payment = paid.payment();
        return switch (paid.means()) {
            case CASH ->
                    plus(
                            new Takings(
                                    payment.cents(),
                                    0,
                                    payment.tipCents(),
                                    0,
                                    payment.roundingCents(),
                                    0,
                                    0,
                                    0));
            case CARD -> plus(new Takings(0, payment.cents(), 0, payment.tipCents(), 0, 0, 0, 0));
        };
    }

    Takings with(TillEvent.OrderRefunded back) {
        long cash = back.means() == Means.CASH ? back.cents() : 0;
        long card = back.means() == Means.CARD ? back.cents() : 0;
        return plus(
                new Takings(0, 0, 0, 0, -back.roundingCents(), cash, card, back.goodwillCents()));
    }

    Takings plus(Takings other) {
        return new Takings(
                cashCents + other.cashCents,
                cardCents + other.cardCents,
                cashTipCents + other.cashTipCents,
                cardTipCents + other.cardTipCents,
                roundingCents + other.roundingCents,
                cashBackCents + other.cashBackCents,
                cardBackCents + other.cardBackCents,
                goodwillCents + other.goodwillCents);
    }
}
