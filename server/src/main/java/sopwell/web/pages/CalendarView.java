package sopwell.web.pages;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.prep.calendar.CalendarDay;
import sopwell.prep.calendar.CalendarLimits;
import sopwell.prep.calendar.NamedOccasion;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.web.T;

/**
 * The owner's calendar in one language. Immutable.
 *
 * @param menu in force
 * @param chosen the date that is open, today or later
 */
public record CalendarView(
        T t, OwnerCalendar calendar, Menu menu, LocalDate today, LocalDate chosen) {
    private static final int WEEKS = 5;
    private static final int WEEK_DAYS = 7;

    /** The date that is typed, if it can be planned for; else today. */
    static LocalDate chosen(String typed, LocalDate today) {
        try {
            LocalDate date = LocalDate.parse(typed);
            boolean ahead =
                    date.isBefore(today.plusDays(CalendarLimits.CALENDAR_DAYS_AHEAD_MAX + 1L));
            return date.isBefore(today) || !ahead ? today : date;
        } catch (DateTimeParseException none) {
            return today;
        }
    }

    /** The names of the days of the week, Monday first. */
    public List<String> weekdays() {
        List<String> names = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            names.add(t.date(today.with(day), "date.weekday"));
        }
        return names;
    }

    /** The weeks that are shown; the chosen date is always in one. */
    public List<List<CalendarDay>> weeks() {
        LocalDate monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        if (!chosen.isBefore(monday.plusWeeks(WEEKS))) {
            monday = chosen.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).minusWeeks(1);
        }
        List<List<CalendarDay>> weeks = new ArrayList<>();
        for (int week = 0; week < WEEKS; week++) {
            List<CalendarDay> days = new ArrayList<>();
            for (int day = 0; day < WEEK_DAYS; day++) {
                days.add(calendar.day(monday.plusDays((long) week * WEEK_DAYS + day)));
            }
            weeks.add(days);
        }
        return weeks;
    }

    /** Where the weeks before these are looked at; empty when these are the first. */
    public String earlier() {
        LocalDate before = weeks().get(0).get(0).date().minusWeeks(WEEKS - 1L);
        boolean first = !weeks().get(0).get(0).date().isAfter(today);
        return first ? "" : (before.isBefore(today) ? today : before).toString();
    }

    /** Where the weeks after these are looked at; empty when the calendar ends before. */
    public String later() {
        LocalDate after = weeks().get(WEEKS - 1).get(WEEK_DAYS - 1).date().plusWeeks(1);
        boolean ends = after.isAfter(today.plusDays(CalendarLimits.CALENDAR_DAYS_AHEAD_MAX));
        return ends ? "" : after.toString();
    }

    /** Whether nothing can be said of a date any more. */
    public boolean isGone(CalendarDay day) {
        return day.date().isBefore(today);
    }

    /** A date in a square: with its month on the first of it. */
    public String number(CalendarDay day) {
        LocalDate date = day.date();
        boolean month = date.getDayOfMonth() == 1 || date.equals(weeks().get(0).get(0).date());
        return month ? t.date(date, "date.brief") : Integer.toString(date.getDayOfMonth());
    }

    /** What is said of a date, a line each. */
    public List<String> said(CalendarDay day) {
        List<String> lines = new ArrayList<>();
        if (day.closed()) {
            lines.add(t.get("calendar.closed"));
        }
        day.hours().ifPresent(hours -> lines.add(hours.from() + "–" + hours.to()));
        day.occasions().forEach(occasion -> lines.add(occasion(occasion)));
        return lines;
    }

    /** What an occasion is called. */
    public String name(NamedOccasion occasion) {
        return OccasionWords.name(t, occasion.name());
    }

    /** An occasion with its guess. */
    public String occasion(NamedOccasion occasion) {
        int percent = occasion.percent();
        return percent == 0
                ? OccasionWords.name(t, occasion.name())
                : OccasionWords.name(t, occasion.name())
                        + (percent > 0 ? " +" : " −")
                        + Math.abs(percent)
                        + " %";
    }

    /** The kinds of weather that can be said of a day. */
    public List<String> weather() {
        return OccasionWords.WEATHER;
    }

    /** What is said of the chosen date. */
    public CalendarDay day() {
        return calendar.day(chosen);
    }

    /** What the chosen date opens at, as typed or as said. */
    public String opens(Map<String, String> typed) {
        String said = day().hours().map(hours -> hours.from()).orElse("");
        return typed.getOrDefault("opens", said);
    }

    /** What the chosen date closes at, as typed or as said. */
    public String closes(Map<String, String> typed) {
        String said = day().hours().map(hours -> hours.to()).orElse("");
        return typed.getOrDefault("closes", said);
    }

    /** The guesses in words, in the menu's order; of items no longer sold by their id. */
    public List<String> guesses() {
        List<String> lines = new ArrayList<>();
        for (Item item : menu.items()) {
            Integer pieces = calendar.pieces().get(item.id());
            if (pieces != null) {
                lines.add(t.of("calendar.guess.line", t.local(item.name()), pieces));
            }
        }
        for (Map.Entry<String, Integer> guess : calendar.pieces().entrySet()) {
            if (!menu.hasItem(guess.getKey())) {
                lines.add(t.of("calendar.guess.line", guess.getKey(), guess.getValue()));
            }
        }
        return lines;
    }
}
