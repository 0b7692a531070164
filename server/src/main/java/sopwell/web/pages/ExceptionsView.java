package sopwell.web.pages;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import sopwell.menu.Out;
import sopwell.mix.DayTally;
import sopwell.mix.ExceptionTally;
import sopwell.mix.Names;
import sopwell.mix.OutTime;
import sopwell.web.DayFigures;
import sopwell.web.T;

/**
 * What did not go straight on a day beside what the stations know, in one language. Immutable.
 *
 * @param before the same weekdays before, that what was missed is estimated from
 */
public record ExceptionsView(
        T t, ZoneId zone, Names names, DayFigures data, List<DayTally> before) {
    private static final String UNKNOWN = "–";

    public ExceptionsView {
        before = List.copyOf(before);
    }

    /** A row of money: so often, so much. */
    public record Sum(String name, int count, long cents) {}

    /** What was out. */
    public List<OutTime> outs() {
        return data.troubles().outs();
    }

    /** What it is called. */
    public String name(OutTime time) {
        Out out = time.out();
        return switch (out.kind()) {
            case ITEM -> t.local(names.item(out.item()));
            case SIZE ->
                    t.local(names.item(out.item()))
                            + ", "
                            + t.local(names.size(out.item(), out.id()));
            case OPTION -> t.local(names.way("", out.id()));
        };
    }

    /** From when. */
    public String from(OutTime time) {
        return t.time(time.fromMs(), zone);
    }

    /** Until when, or that it is out still. */
    public String to(OutTime time) {
        return time.open() ? t.get("out-time.still") : t.time(time.toMs(), zone);
    }

    /** How many pieces that time usually sells, or a dash when no such day is known. */
    public String usual(OutTime time) {
        return time.usual(data.tally().date(), zone, before)
                .map(usual -> Long.toString(Math.round(usual.pieces())))
                .orElse(UNKNOWN);
    }

    /** How many pieces were likely not sold, or a dash when nothing can be said. */
    public String missed(OutTime time) {
        return time.usual(data.tally().date(), zone, before)
                .map(usual -> t.of("out-time.about", Math.round(usual.missed(time))))
                .orElse(UNKNOWN);
    }

    /** What the estimate is made from, and what it leaves out. */
    public String note() {
        return before.isEmpty()
                ? t.get("out-time.no-days")
                : t.of(
                        "out-time.note",
                        before.size(),
                        t.under(
                                "weekdays",
                                Integer.toString(data.tally().date().getDayOfWeek().getValue())));
    }

    /** What was given back to guests, by reason, and what tills were over or short. */
    public List<Sum> money() {
        List<Sum> sums = new ArrayList<>();
        for (ExceptionTally.Refunds refunds : data.troubles().refunds()) {
            String name = t.of("exceptions.refund", t.reason(refunds.reason()));
            sums.add(new Sum(name, refunds.count(), refunds.cents()));
        }
        for (ExceptionTally.Difference till : data.troubles().differences()) {
            String key = till.overCents() > 0 ? "exceptions.over" : "exceptions.short";
            sums.add(new Sum(t.of(key, till.cashier()), 1, Math.abs(till.overCents())));
        }
        return sums;
    }
}
