package sopwell.prep.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.orders.Deciding;
import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;
import sopwell.prep.calendar.CalendarCommand.AddOccasion;
import sopwell.prep.calendar.CalendarCommand.Guess;
import sopwell.prep.calendar.CalendarCommand.RemoveOccasion;
import sopwell.prep.calendar.CalendarCommand.SetHours;
import sopwell.prep.calendar.CalendarCommand.SetTerms;
import sopwell.prep.calendar.CalendarEvent.CalendarSet;
import sopwell.stock.recipes.RecipeBook;

/**
 * What may be said of days. What is said already asks for nothing. Stateless and pure: looks, never
 * changes.
 */
public final class CalendarRules {
    private static final Pattern TIME = Pattern.compile("(\\d{1,2})[:.](\\d{2})");
    private static final Pattern PERCENT = Pattern.compile("([+−-]?)\\s*(\\d{1,6})\\s*%?");
    private static final Pattern PIECES = Pattern.compile("\\d{1,6}");
    private static final int HOUR_MINUTES = 60;
    private static final int DAY_MINUTES = 1_440;

    private CalendarRules() {}

    /**
     * The event that a command comes to now, or why it is refused.
     *
     * @param book the recipes in force
     */
    public static Decision decide(
            OwnerCalendar calendar, RecipeBook book, CalendarCommand command, Deciding with) {
        LocalDate today =
                LocalDate.ofInstant(Instant.ofEpochMilli(with.nowMs()), with.settings().zone());
        return switch (command.kind()) {
            case HOURS -> hours(calendar, (SetHours) command, today);
            case ADD -> add(calendar, (AddOccasion) command, today);
            case REMOVE -> remove(calendar, (RemoveOccasion) command, today);
            case GUESS -> guess(calendar, (Guess) command, with);
            case TERMS -> terms(calendar, book, (SetTerms) command, today);
        };
    }

    private static Decision hours(OwnerCalendar calendar, SetHours set, LocalDate today) {
        Optional<LocalDate> date = date(set.date(), today);
        if (date.isEmpty()) {
            return noDate(set.date(), today);
        }
        CalendarDay before = calendar.day(date.get());
        String opens = set.opens().strip();
        String closes = set.closes().strip();
        if (set.closed() || (opens.isEmpty() && closes.isEmpty())) {
            return said(calendar, before.open(set.closed(), Optional.empty()), today);
        }
        OptionalInt from = minute(opens);
        OptionalInt to = minute(closes);
        if (from.isEmpty() || to.isEmpty() || from.getAsInt() >= to.getAsInt()) {
            return Decision.refused(Reason.CALENDAR_HOURS, opens, closes);
        }
        OpenHours hours = new OpenHours(from.getAsInt(), to.getAsInt());
        return said(calendar, before.open(false, Optional.of(hours)), today);
    }

    private static Decision add(OwnerCalendar calendar, AddOccasion add, LocalDate today) {
        Optional<LocalDate> date = date(add.date(), today);
        if (date.isEmpty()) {
            return noDate(add.date(), today);
        }
        String name = add.name().strip();
        if (name.isEmpty()) {
            return Decision.refused(Reason.OCCASION_NAME);
        }
        Optional<Refusal> text = Texts.occasion(name);
        if (text.isPresent()) {
            return new Decision(List.of(), text);
        }
        OptionalInt percent = percent(add.percent().strip());
        if (percent.isEmpty()) {
            return Decision.refused(
                    Reason.OCCASION_PERCENT,
                    add.percent().strip(),
                    CalendarLimits.OCCASION_PERCENT_MIN,
                    CalendarLimits.OCCASION_PERCENT_MAX);
        }
        CalendarDay before = calendar.day(date.get());
        if (!before.has(name) && before.occasions().size() >= CalendarLimits.OCCASIONS_MAX) {
            return Decision.refused(Reason.OCCASIONS_MANY, CalendarLimits.OCCASIONS_MAX);
        }
        return said(calendar, before.with(new NamedOccasion(name, percent.getAsInt())), today);
    }

    private static Decision remove(OwnerCalendar calendar, RemoveOccasion remove, LocalDate today) {
        Optional<LocalDate> date = date(remove.date(), today);
        if (date.isEmpty()) {
            return noDate(remove.date(), today);
        }
        CalendarDay before = calendar.day(date.get());
        String name = remove.name().strip();
        return before.has(name)
                ? said(calendar, before.without(name), today)
                : Decision.refused(Reason.UNKNOWN_OCCASION, name, date.get());
    }

    private static Decision guess(OwnerCalendar calendar, Guess guess, Deciding with) {
        if (!with.menu().hasItem(guess.item())) {
            return Decision.refused(Reason.NOT_ON_MENU, guess.item());
        }
        String typed = guess.pieces().strip();
        int pieces = PIECES.matcher(typed).matches() ? Integer.parseInt(typed) : 0;
        boolean number = typed.isEmpty() || PIECES.matcher(typed).matches();
        if (!number || pieces > CalendarLimits.GUESS_PIECES_MAX) {
            return Decision.refused(Reason.GUESS_RANGE, typed, CalendarLimits.GUESS_PIECES_MAX);
        }
        return set(calendar, calendar.guessing(guess.item(), pieces));
    }

    private static Decision terms(
            OwnerCalendar calendar, RecipeBook book, SetTerms set, LocalDate today) {
        TermsRules rules = new TermsRules(calendar.terms(), book, today);
        OwnerTerms after = rules.after(set.command());
        return rules.refusal().isPresent()
                ? new Decision(List.of(), rules.refusal())
                : set(calendar, calendar.with(after));
    }

    private static Decision said(OwnerCalendar calendar, CalendarDay day, LocalDate today) {
        return calendar.day(day.date()).equals(day)
                ? Decision.accepted()
                : set(
                        calendar,
                        calendar.with(day, today.minusDays(CalendarLimits.CALENDAR_DAYS_KEPT)));
    }

    private static Decision set(OwnerCalendar before, OwnerCalendar after) {
        return before.equals(after)
                ? Decision.accepted()
                : Decision.accepted(new CalendarSet(after));
    }

    /** A date that can still be planned for; empty for any other text. */
    static Optional<LocalDate> date(String typed, LocalDate today) {
        if (typed.strip().equals("today")) {
            return Optional.of(today);
        }
        if (typed.strip().equals("tomorrow")) {
            return Optional.of(today.plusDays(1));
        }
        try {
            LocalDate date = LocalDate.parse(typed.strip());
            return Optional.of(date).filter(d -> !d.isBefore(today) && !d.isAfter(last(today)));
        } catch (DateTimeParseException noDate) {
            return Optional.empty();
        }
    }

    private static Decision noDate(String typed, LocalDate today) {
        return Decision.refused(Reason.CALENDAR_DATE, typed.strip(), today, last(today));
    }

    static LocalDate last(LocalDate today) {
        return today.plusDays(CalendarLimits.CALENDAR_DAYS_AHEAD_MAX);
    }

    static OptionalInt minute(String typed) {
        Matcher time = TIME.matcher(typed);
        if (!time.matches()) {
            return OptionalInt.empty();
        }
        int hour = Integer.parseInt(time.group(1));
        int rest = Integer.parseInt(time.group(2));
        int minute = hour * HOUR_MINUTES + rest;
        return rest < HOUR_MINUTES && minute <= DAY_MINUTES
                ? OptionalInt.of(minute)
                : OptionalInt.empty();
    }

    private static OptionalInt percent(String typed) {
        if (typed.isEmpty()) {
            return OptionalInt.of(0);
        }
        Matcher percent = PERCENT.matcher(typed);
        if (!percent.matches()) {
            return OptionalInt.empty();
        }
        int size = Integer.parseInt(percent.group(2));
        int signed = percent.group(1).isEmpty() || percent.group(1).equals("+") ? size : -size;
        return signed >= CalendarLimits.OCCASION_PERCENT_MIN
                        && signed <= CalendarLimits.OCCASION_PERCENT_MAX
                ? OptionalInt.of(signed)
                : OptionalInt.empty();
    }
}
