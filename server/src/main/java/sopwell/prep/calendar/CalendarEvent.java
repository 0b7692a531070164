package sopwell.prep.calendar;

import sopwell.log.Event;

/** What happens to the owner's calendar. */
public sealed interface CalendarEvent extends Event {
    /** The calendar is this from now on; the whole of it stands in the log. */
    record CalendarSet(OwnerCalendar calendar) implements CalendarEvent {}
}
