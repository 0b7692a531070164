package sopwell.mix;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.menu.Out;
import sopwell.mix.DayTally.Sold;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.Orders;
import sopwell.orders.OutSpans;

/**
 * A time in which something could not be sold, and what of it was ordered all the same. Immutable.
 *
 * @param fromMs milliseconds since 1970-01-01 UTC
 * @param toMs when it was sold again or the day ended, or as far as is known now
 * @param open whether it can't be sold still
 * @param sold pieces that guests who ordered in that time got all the same: told when the stand
 *     could not be asked, or before it was marked
 */
public record OutTime(Out out, long fromMs, long toMs, boolean open, int sold) {
    private static final long STEP_MS = 60_000;
    private static final int STEPS_HALF_HOUR = 30;

    /**
     * What such a time usually sells. Immutable.
     *
     * @param pieces the mean of the days
     * @param days how many days it is the mean of, 1 or more
     */
    public record Usual(double pieces, int days) {
        /** What was likely not sold because of it: an estimate, 0 or more, never certain. */
        public double missed(OutTime time) {
            return Math.max(0, pieces - time.sold());
        }
    }

    /**
     * The times of a day.
     *
     * @param nowMs as far as is known, milliseconds since 1970-01-01 UTC
     */
    public static List<OutTime> of(OutSpans spans, Orders orders, long nowMs) {
        List<OutTime> times = new ArrayList<>();
        for (OutSpans.Span span : spans.all()) {
            boolean over = span.untilMs() != 0 && span.untilMs() <= nowMs;
            long toMs = span.toMs() != 0 ? span.toMs() : over ? span.untilMs() : nowMs;
            times.add(
                    new OutTime(
                            span.out(),
                            span.fromMs(),
                            toMs,
                            span.toMs() == 0 && !over,
                            sold(orders, span.out(), span.fromMs(), toMs)));
        }
        return times;
    }

    /**
     * What is usually sold in that time of the day.
     *
     * @param date the day's own
     * @param before the same weekdays before it that are compared with; none give no estimate
     */
    public Optional<Usual> usual(LocalDate date, ZoneId zone, List<DayTally> before) {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        int[] minutes = minutes(date, zone);
        double pieces = 0;
        for (DayTally day : before) {
            for (DayTally.HalfHour half : day.halfHours()) {
                double share = (double) minutes[half.index()] / STEPS_HALF_HOUR;
                pieces += share * pieces(half.sold());
            }
        }
        return Optional.of(new Usual(pieces / before.size(), before.size()));
    }

    /** For how many minutes it was out in each half hour of the day. */
    private int[] minutes(LocalDate date, ZoneId zone) {
        int[] minutes = new int[HalfHours.END_MAX];
        for (long at = fromMs; at < toMs; at += STEP_MS) {
            int half = HalfHours.of(date, zone, at);
            minutes[half] = Math.min(STEPS_HALF_HOUR, minutes[half] + 1);
        }
        return minutes;
    }

    private int pieces(List<Sold> sold) {
        return sold.stream()
                .filter(some -> !some.staff() && isOf(some))
                .mapToInt(Sold::pieces)
                .sum();
    }

    private boolean isOf(Sold some) {
        return switch (out.kind()) {
            case ITEM -> some.item().equals(out.item());
            case SIZE -> some.item().equals(out.item()) && some.size().equals(out.id());
            case OPTION ->
                    some.ways().stream()
                            .anyMatch(
                                    way ->
                                            List.of(Ways.chosen(way).split("\\+", -1))
                                                    .contains(out.id()));
        };
    }

    private static int sold(Orders orders, Out out, long fromMs, long toMs) {
        int pieces = 0;
        for (Order order : orders.all()) {
            boolean then = order.takenAtMs() > fromMs && order.takenAtMs() < toMs;
            if (then && !order.isVoid() && !order.isStaffMeal()) {
                for (OrderLine line : order.lines()) {
                    pieces += out.isIn(line.selection()) ? line.quantity() : 0;
                }
            }
        }
        return pieces;
    }
}
