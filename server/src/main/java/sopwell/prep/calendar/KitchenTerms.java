package sopwell.prep.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.Check;

/**
 * What the owner has set of the kitchen, by date, weekday, ingredient and resource. Immutable.
 *
 * @param opensOn the first date on which the stand opens; empty when it has opened already
 * @param hours when somebody is in the kitchen, by weekday; empty for what the book of recipes says
 * @param away dates on which nobody is in the kitchen
 * @param out what can't be used for a while
 * @param reviewDays how many open days one batch is made for, by ingredient; 1 unless named
 * @param costs what one too few and one too many cost, by ingredient
 */
public record KitchenTerms(
        Optional<LocalDate> opensOn,
        Map<DayOfWeek, OpenHours> hours,
        SortedSet<LocalDate> away,
        List<Out> out,
        SortedMap<String, Integer> reviewDays,
        SortedMap<String, Cost> costs) {
    /** Nothing was set. */
    public static final KitchenTerms NONE =
            new KitchenTerms(
                    Optional.empty(),
                    Map.of(),
                    new TreeSet<>(),
                    List.of(),
                    new TreeMap<>(),
                    new TreeMap<>());

    public KitchenTerms {
        Map<DayOfWeek, OpenHours> byDay = new EnumMap<>(DayOfWeek.class);
        byDay.putAll(hours);
        hours = Collections.unmodifiableMap(byDay);
        away = Collections.unmodifiableSortedSet(new TreeSet<>(away));
        out = List.copyOf(out);
        reviewDays = Collections.unmodifiableSortedMap(new TreeMap<>(reviewDays));
        costs = Collections.unmodifiableSortedMap(new TreeMap<>(costs));
    }

    /**
     * A resource that can't be used, by the stand's wall clock. Immutable.
     *
     * @param slots how many of its places; 0 for all of them
     * @param until later than {@code from}
     */
    public record Out(String resource, int slots, LocalDateTime from, LocalDateTime until) {
        public Out {
            Check.that(slots >= 0 && from.isBefore(until), "what is out comes back later");
        }
    }

    /**
     * What one of a unit costs; empty where it is worked out from prices. Immutable.
     *
     * @param unit such as {@code lb}
     * @param shortCents one too few
     * @param wasteCents one too many
     */
    public record Cost(String unit, OptionalInt shortCents, OptionalInt wasteCents) {}

    KitchenTerms openingOn(Optional<LocalDate> date) {
        return new KitchenTerms(date, hours, away, out, reviewDays, costs);
    }

    KitchenTerms withHours(Map<DayOfWeek, OpenHours> others) {
        return new KitchenTerms(opensOn, others, away, out, reviewDays, costs);
    }

    KitchenTerms withAway(SortedSet<LocalDate> dates) {
        return new KitchenTerms(opensOn, hours, dates, out, reviewDays, costs);
    }

    KitchenTerms withOut(List<Out> others) {
        return new KitchenTerms(opensOn, hours, away, others, reviewDays, costs);
    }

    KitchenTerms reviewing(String ingredient, int days) {
        SortedMap<String, Integer> more = new TreeMap<>(reviewDays);
        if (days <= 1) {
            more.remove(ingredient);
        } else {
            more.put(ingredient, days);
        }
        return new KitchenTerms(opensOn, hours, away, out, more, costs);
    }

    KitchenTerms costing(String ingredient, Cost cost) {
        SortedMap<String, Cost> more = new TreeMap<>(costs);
        if (cost.shortCents().isEmpty() && cost.wasteCents().isEmpty()) {
            more.remove(ingredient);
        } else {
            more.put(ingredient, cost);
        }
        return new KitchenTerms(opensOn, hours, away, out, reviewDays, more);
    }
}
