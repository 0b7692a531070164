package sopwell.prep.quantity;

import java.util.Arrays;
import java.util.List;

/**
 * One part's requirements, period by period. Immutable; amounts from 0.
 *
 * @param onHand at the end of each period, after what is planned
 * @param receipts what must have come in at the start of each period
 * @param releases what must be started in each period for that
 * @param late what should have been started before the first period
 */
public record Netting(List<Long> onHand, List<Long> receipts, List<Long> releases, long late) {
    public Netting {
        onHand = List.copyOf(onHand);
        receipts = List.copyOf(receipts);
        releases = List.copyOf(releases);
    }

    /**
     * What a part starts from. Immutable.
     *
     * @param onHand before the first period
     * @param scheduled what comes in by period without a decision
     * @param lead periods from release to receipt
     */
    public record Start(long onHand, List<Long> scheduled, int lead, LotRule rule) {
        public Start {
            scheduled = List.copyOf(scheduled);
        }
    }

    /** Nets gross requirements against what is there, and offsets by the lead time. */
    public static Netting of(List<Long> gross, Start start) {
        int periods = gross.size();
        long[] left = new long[periods];
        long[] receipts = new long[periods];
        long[] releases = new long[periods];
        long late = 0;
        long have = start.onHand();
        for (int t = 0; t < periods; t++) {
            have += start.scheduled().get(t) - gross.get(t);
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
        return new Netting(listed(left), listed(receipts), listed(releases), late);
    }

    /** What was asked for and is not covered by anything there: the sum of receipts. */
    public long net() {
        return receipts.stream().mapToLong(Long::longValue).sum();
    }

    private static List<Long> listed(long[] amounts) {
        return Arrays.stream(amounts).boxed().toList();
    }
}
