package sopwell.web;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import sopwell.Limits;
import sopwell.mix.HalfHours;
import sopwell.mix.Period;

/**
 * The days and the part of each that an address asks for, or why they can't be. Immutable.
 *
 * @param period what was asked, empty when the sentence says why not
 * @param weekday only these days of the period, or all
 * @param sentence empty when it can be looked up
 */
public record AskedPeriod(Optional<Period> period, Optional<DayOfWeek> weekday, String sentence) {
    private static final int MINUTES = 30;

    /**
     * Reads {@code from}, {@code to}, {@code weekday} (1 is Monday), {@code begin}, {@code end}.
     */
    public static AskedPeriod of(In ask, T t, LocalDate today) {
        try {
            LocalDate from = date(ask, "from", today);
            LocalDate to = date(ask, "to", today);
            Optional<DayOfWeek> weekday = weekday(ask);
            if (to.isBefore(from)) {
                throw new Unclear("mix.reversed", t.date(from), t.date(to));
            }
            if (from.isAfter(today)) {
                throw new Unclear("mix.future", t.date(from));
            }
            if (ChronoUnit.DAYS.between(from, to) >= Limits.MIX_DAYS_MAX) {
                throw new Unclear("mix.too-long", Limits.MIX_DAYS_MAX);
            }
            return new AskedPeriod(Optional.of(period(ask, from, to)), weekday, "");
        } catch (Unclear unclear) {
            return unclear.said(t);
        }
    }

    /** Reads {@code begin} and {@code end} alone: a part of one date. */
    public static AskedPeriod of(LocalDate date, In ask, T t) {
        try {
            return new AskedPeriod(Optional.of(period(ask, date, date)), Optional.empty(), "");
        } catch (Unclear unclear) {
            return unclear.said(t);
        }
    }

    /** What an address says, by name; empty when it says nothing. */
    public interface In {
        /** The text behind a name, or empty. */
        String in(String name);
    }

    /** Whether one date was asked for, as such. */
    public boolean isOneDay() {
        return weekday.isEmpty() && period.map(Period::isOneDay).orElse(false);
    }

    /** The part of the day as an address names it, or empty for all of it. */
    public static String query(Period period) {
        return period.isWholeDays()
                ? ""
                : "?begin="
                        + HalfHours.begins(period.beginHalfHour())
                        + "&end="
                        + HalfHours.begins(period.endHalfHour());
    }

    /** Whether a date counts. */
    public boolean holds(LocalDate date) {
        return weekday.isEmpty() || weekday.get() == date.getDayOfWeek();
    }

    private static Period period(In ask, LocalDate from, LocalDate to) throws Unclear {
        int begin = halfHour(ask, "begin", 0);
        int end = halfHour(ask, "end", HalfHours.END_MAX);
        if (end <= begin) {
            throw new Unclear("mix.part-reversed", ask.in("begin"), ask.in("end"));
        }
        return new Period(from, to, begin, end);
    }

    private static LocalDate date(In ask, String name, LocalDate otherwise) throws Unclear {
        String written = ask.in(name).strip();
        if (written.isEmpty()) {
            return otherwise;
        }
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException wrong) {
            throw new Unclear("mix.not-date", written, otherwise);
        }
    }

    /** The end of a day is written as midnight, which is also where it begins. */
    private static int halfHour(In ask, String name, int otherwise) throws Unclear {
        String written = ask.in(name).strip();
        if (written.isEmpty()) {
            return otherwise;
        }
        try {
            LocalTime time = LocalTime.parse(written);
            int halfHour = (time.getHour() * 60 + time.getMinute()) / MINUTES;
            boolean endsTheDay = halfHour == 0 && otherwise == HalfHours.END_MAX;
            return endsTheDay ? HalfHours.END_MAX : halfHour;
        } catch (DateTimeParseException wrong) {
            throw new Unclear("mix.not-time", written);
        }
    }

    private static Optional<DayOfWeek> weekday(In ask) throws Unclear {
        String written = ask.in("weekday").strip();
        if (written.isEmpty()) {
            return Optional.empty();
        }
        if (!written.matches("[1-7]")) {
            throw new Unclear("mix.not-weekday", written);
        }
        return Optional.of(DayOfWeek.of(Integer.parseInt(written)));
    }

    private static final class Unclear extends Exception {
        private static final long serialVersionUID = 1L;
        private final String key;
        private final transient Object[] args;

        Unclear(String key, Object... args) {
            super(key);
            this.key = key;
            this.args = args;
        }

        AskedPeriod said(T t) {
            return new AskedPeriod(Optional.empty(), Optional.empty(), t.of(key, args));
        }
    }
}
