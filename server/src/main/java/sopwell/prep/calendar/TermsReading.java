package sopwell.prep.calendar;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;

/**
 * Reads what an owner typed, and keeps the first thing that is wrong; what can't be read comes back
 * as something harmless. For one command.
 */
final class TermsReading {
    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");
    private static final Pattern MONEY = Pattern.compile("\\$?\\s*(\\d{1,4}([.,]\\d{1,2})?)");
    private static final int DAY_MINUTES = 1_440;

    private Optional<Refusal> refusal = Optional.empty();

    Optional<Refusal> refusal() {
        return refusal;
    }

    void refuse(Reason reason, Object... args) {
        if (refusal.isEmpty()) {
            refusal = Optional.of(Refusal.of(reason, args));
        }
    }

    int whole(String field, String typed, int least, int most) {
        String text = typed.strip();
        int number = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : -1;
        if (number < least || number > most) {
            refuse(Reason.TERMS_NUMBER, field, text, least, most);
            return least;
        }
        return number;
    }

    int cents(String field, String typed) {
        String text = typed.strip();
        java.util.regex.Matcher money = MONEY.matcher(text);
        if (!money.matches()) {
            refuse(Reason.TERMS_MONEY, field, text);
            return 0;
        }
        return new BigDecimal(money.group(1).replace(',', '.')).movePointRight(2).intValueExact();
    }

    LocalTime time(String field, String typed) {
        OptionalInt minute = CalendarRules.minute(typed.strip());
        if (minute.isEmpty() || minute.getAsInt() >= DAY_MINUTES) {
            refuse(Reason.TERMS_TIME, field, typed.strip());
            return LocalTime.MIDNIGHT;
        }
        return LocalTime.MIDNIGHT.plusMinutes(minute.getAsInt());
    }

    OpenHours hours(DayOfWeek day, String from, String to) {
        OptionalInt first = CalendarRules.minute(from);
        OptionalInt last = CalendarRules.minute(to);
        if (first.isEmpty() || last.isEmpty() || first.getAsInt() >= last.getAsInt()) {
            refuse(Reason.KITCHEN_HOURS, day.name(), from, to);
            return new OpenHours(0, DAY_MINUTES);
        }
        return new OpenHours(first.getAsInt(), last.getAsInt());
    }

    LocalDate date(String typed, LocalDate today) {
        Optional<LocalDate> date = CalendarRules.date(typed, today);
        if (date.isEmpty()) {
            refuse(Reason.CALENDAR_DATE, typed.strip(), today, CalendarRules.last(today));
        }
        return date.orElse(today);
    }

    /** A date that the plan reaches. */
    LocalDate opening(String typed, LocalDate today) {
        LocalDate last = today.plusDays(CalendarLimits.OPENING_DAYS_AHEAD_MAX);
        Optional<LocalDate> date = CalendarRules.date(typed, today).filter(d -> !d.isAfter(last));
        if (date.isEmpty()) {
            refuse(Reason.CALENDAR_DATE, typed.strip(), today, last);
        }
        return date.orElse(today);
    }

    /** A date and a time of day; of today and yesterday's too, since things break before. */
    LocalDateTime moment(String typed, LocalDate today) {
        try {
            LocalDateTime at = LocalDateTime.parse(typed.strip().replace(' ', 'T'));
            LocalDate date = at.toLocalDate();
            if (!date.isBefore(today.minusDays(1)) && !date.isAfter(CalendarRules.last(today))) {
                return at.withSecond(0).withNano(0);
            }
        } catch (DateTimeParseException none) {
            // refused below, like a date that is too far away
        }
        refuse(Reason.OUT_MOMENT, typed.strip(), today.atTime(8, 0).toString().replace('T', ' '));
        return today.atStartOfDay();
    }

    void atMost(int many, int most) {
        if (many > most) {
            refuse(Reason.TERMS_MANY, most);
        }
    }
}
