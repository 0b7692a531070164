package sopwell.stock.recipes;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * When somebody is in the kitchen, by weekday and in the stand's local time. Immutable.
 *
 * @param days the weekdays on which somebody comes, with their hours
 */
public record KitchenHours(Map<DayOfWeek, Span> days) {
    public KitchenHours {
        Map<DayOfWeek, Span> copy = new EnumMap<>(DayOfWeek.class);
        copy.putAll(days);
        days = Collections.unmodifiableMap(copy);
    }

    /**
     * From when until when, on one date. Immutable.
     *
     * @param from earlier than {@code to}
     */
    public record Span(LocalTime from, LocalTime to) {}

    /** The hours of one weekday; empty when nobody comes. */
    public Optional<Span> on(DayOfWeek day) {
        return Optional.ofNullable(days.get(day));
    }
}
