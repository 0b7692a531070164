package sopwell.prep.quantity;

import java.util.Arrays;

/**
 * One part's requirements, period by period. Immutable; amounts from 0.
 *
 * @param onHand at the end of each period, after what is planned
 * @param receipts what must have come in at the start of each period
 * @param releases what must be started in each period for that
 * @param late what should have been started before the first period
 */
public record Netting(long[] onHand, long[] receipts, long[] releases, long late) {
    /**
     * What a part starts from. Immutable.
     *
     * @param onHand before the first period
     * @param scheduled what comes in by period without a decision
     * @param lead periods from release to receipt
     */
    public record Start(long onHand, long[] scheduled, int lead, LotRule rule) {}

    /** Nets gross requirements against what is there, and offsets by the lead time. */
    public static Netting of(long[] gross, Start start) {
        long[] left = new long[gross.length];
        long[] receipts = new long[gross.length];
        long[] releases = new long[gross.length];
        long late = 0;
        long have = start.onHand();
        for (int t = 0; t < gross.length; t++) {
            have += start.scheduled()[t] - gross[t];
            if (have < 0) {
                receipts[t] = start.rule().amount(-have);
                have += receipts[t];
                if (t >= start.lead()) {
                    releases[t - start.lead()] += receipts[t];
                } else {
                    late += receipts[t];
                }
            }
            left[t] = have;
        }
        return new Netting(left, receipts, releases, late);
    }

    /** What was asked for and is not covered by anything there: the sum of receipts. */
    public long net() {
        return Arrays.stream(receipts).sum();
    }
}
