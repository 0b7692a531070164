package sopwell.web.pages;

import java.util.List;
import sopwell.mix.HalfHours;
import sopwell.mix.PartWaits;
import sopwell.mix.Period;
import sopwell.mix.Share;
import sopwell.mix.WaitSummary;
import sopwell.mix.Waits;
import sopwell.web.T;

/** How long guests waited, in one language. Immutable. */
public record WaitsView(T t, Waits waits) {
    private static final String UNKNOWN = "–";
    private static final int SECONDS_MINUTE = 60;

    /** The pictures, those of which there is anything to draw. */
    public List<Chart> charts() {
        return WaitCharts.of(t, waits);
    }

    /** What most waited no longer than, or a dash when nothing was measured. */
    public String median(WaitSummary summary) {
        return summary.measured() == 0 ? UNKNOWN : t.minutes(summary.medianSeconds());
    }

    /** What nine of ten waited no longer than, or a dash when nothing was measured. */
    public String ninetieth(WaitSummary summary) {
        return summary.measured() == 0 ? UNKNOWN : t.minutes(summary.ninetiethSeconds());
    }

    /** How a wait is set that is over the stand's target. */
    public String weight(WaitSummary summary, double seconds) {
        return summary.measured() > 0 && seconds > waits.targetSeconds() ? "over" : "";
    }

    /** A share in whole percent, or a dash of nothing. */
    public String share(Share share) {
        return share.isKnown() ? t.percent(share.value()) : UNKNOWN;
    }

    /** The target, in minutes as they are spoken. */
    public String target() {
        return t.span(waits.targetSeconds());
    }

    /** When a half hour begins. */
    public String time(Waits.HalfHour half) {
        return HalfHours.begins(half.index()).toString();
    }

    /** A part of the time that the parts of a station took, in percent. */
    public String spent(PartWaits station, long seconds) {
        long all = station.spent().all();
        return all == 0 ? UNKNOWN : t.percent((double) seconds / all);
    }

    /** The time that the parts of a station took together, in hours and minutes. */
    public String spentInAll(PartWaits station) {
        long minutes = Math.round((double) station.spent().all() / SECONDS_MINUTE);
        return t.of("waits.hours", minutes / SECONDS_MINUTE, minutes % SECONDS_MINUTE);
    }

    /** What was never tapped as begun, a sentence; empty when everything was. */
    public String untold() {
        List<PartWaits> untold =
                waits.stations().stream().filter(s -> s.spent().untold() > 0).toList();
        return untold.isEmpty()
                ? ""
                : t.of(
                        "waits.untold-where",
                        t.list(untold.stream().map(s -> t.local(s.name())).toList()));
    }

    /** Which days are shown, and which part of them. */
    public String period() {
        Period period = waits.period();
        String days =
                period.isOneDay()
                        ? t.date(period.from())
                        : t.of("mix.from-to", t.date(period.from()), t.date(period.to()));
        return period.isWholeDays()
                ? days
                : t.of(
                        "mix.part",
                        days,
                        HalfHours.begins(period.beginHalfHour()),
                        HalfHours.begins(period.endHalfHour()));
    }
}
