package sopwell.prep;

import java.time.LocalDate;
import java.util.List;
import sopwell.Check;
import sopwell.log.Event;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Sold;

/** What a stand was told of days that it did not run itself. */
public sealed interface HistoryEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        KEPT
    }

    /** This event's kind. */
    Kind kind();

    /**
     * An owner's old records of one business day. Of several of the same date the newest counts.
     * Pieces stand in the order of item, size, modifiers and bin, and chances and guesses are
     * rounded to millionths, so that the same records are the same event.
     *
     * @param binMinutes how long a bin of {@code day} is
     * @param closedReason why it was closed, as written; empty when it was open or nobody said
     * @param outlooks weather forecasts of this date, as they were issued
     */
    record PastDayKept(int binMinutes, String closedReason, PastDay day, List<Outlook> outlooks)
            implements HistoryEvent {
        private static final double MILLIONTHS = 1e6;

        public PastDayKept {
            Check.that(binMinutes > 0, "a bin is some minutes long");
            LocalDate date = day.date();
            Check.that(
                    outlooks.stream().allMatch(outlook -> outlook.date().equals(date)),
                    "a day keeps the forecasts of its own weather");
            day =
                    new PastDay(
                            day.date(),
                            day.open(),
                            day.hours(),
                            day.sold().stream().sorted(Sold.ORDER).toList(),
                            day.outs(),
                            day.occasions().stream().map(PastDayKept::rounded).toList(),
                            day.weather());
            outlooks = outlooks.stream().map(PastDayKept::rounded).toList();
        }

        @Override
        public Kind kind() {
            return Kind.KEPT;
        }

        private static Occasion rounded(Occasion one) {
            return new Occasion(one.name(), one.kind(), rounded(one.guess()));
        }

        private static Outlook rounded(Outlook one) {
            return new Outlook(one.issued(), one.date(), one.kind(), rounded(one.probability()));
        }

        private static double rounded(double value) {
            return Math.round(value * MILLIONTHS) / MILLIONTHS;
        }
    }
}
