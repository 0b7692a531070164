package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import sopwell.prep.calendar.CalendarEvent.CalendarSet;
import sopwell.prep.calendar.KitchenTerms;
import sopwell.prep.calendar.KitchenTerms.Cost;
import sopwell.prep.calendar.KitchenTerms.Out;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.calendar.OwnerTerms;
import sopwell.prep.calendar.PrepTerms;

/** The written form of the plan's settings is frozen, as events are. */
class TermsBodiesTest {
    private static final String GOLDEN =
            "{\"days\":[],\"guesses\":[],\"terms\":[{\"goodwillCents\":75,\"withoutPercent\":30,"
                    + "\"nightPerMille\":4,\"guessPieces\":150,\"opens\":\"11:00\","
                    + "\"deliveredBy\":\"08:30\",\"hands\":3,\"opensOn\":\"2026-12-05\","
                    + "\"hours\":[{\"day\":\"MONDAY\",\"toMinute\":600},"
                    + "{\"day\":\"FRIDAY\",\"fromMinute\":420,\"toMinute\":1320}],"
                    + "\"away\":[\"2026-12-24\"],\"out\":[{\"resource\":\"oven\",\"slots\":2,"
                    + "\"from\":\"2026-12-01T08:00\",\"until\":\"2026-12-03T18:30\"},"
                    + "{\"resource\":\"stove\",\"from\":\"2026-12-01T08:00\","
                    + "\"until\":\"2026-12-01T09:00\"}],"
                    + "\"reviews\":[{\"ingredient\":\"hot-relish\",\"days\":4}],"
                    + "\"costs\":[{\"ingredient\":\"jus\",\"unit\":\"qt\",\"wasteCents\":\"0\"},"
                    + "{\"ingredient\":\"roll\",\"unit\":\"each\",\"shortCents\":\"250\"}]}]}";

    @Test
    void everySettingIsWrittenAndReadAsItWasWhenItWasNew() {
        LocalDateTime from = LocalDateTime.of(2026, 12, 1, 8, 0);
        KitchenTerms kitchen =
                new KitchenTerms(
                        Optional.of(LocalDate.of(2026, 12, 5)),
                        Map.of(
                                DayOfWeek.FRIDAY,
                                new OpenHours(420, 1_320),
                                DayOfWeek.MONDAY,
                                new OpenHours(0, 600)),
                        new TreeSet<>(List.of(LocalDate.of(2026, 12, 24))),
                        List.of(
                                new Out("oven", 2, from, LocalDateTime.of(2026, 12, 3, 18, 30)),
                                new Out("stove", 0, from, from.plusHours(1))),
                        new TreeMap<>(Map.of("hot-relish", 4)),
                        new TreeMap<>(
                                Map.of(
                                        "roll",
                                        new Cost("each", OptionalInt.of(250), OptionalInt.empty()),
                                        "jus",
                                        new Cost("qt", OptionalInt.empty(), OptionalInt.of(0)))));
        PrepTerms numbers =
                new PrepTerms(75, 30, 4, 150, LocalTime.of(11, 0), LocalTime.of(8, 30), 3);
        CalendarSet set =
                new CalendarSet(OwnerCalendar.EMPTY.with(new OwnerTerms(numbers, kitchen)));
        assertEquals(GOLDEN, new String(EventCodec.encode(set), StandardCharsets.UTF_8));
        byte[] body = GOLDEN.getBytes(StandardCharsets.UTF_8);
        assertEquals(set, EventCodec.decode(1, "calendar-set", 1, body));
    }

    @Test
    void aCalendarFromBeforeThereWereSettingsHasTheUsualOnes() {
        byte[] body = "{\"days\":[],\"guesses\":[]}".getBytes(StandardCharsets.UTF_8);
        CalendarSet read = (CalendarSet) EventCodec.decode(1, "calendar-set", 1, body);
        assertEquals(OwnerTerms.USUAL, read.calendar().terms());
        assertEquals(
                new String(body, StandardCharsets.UTF_8),
                new String(EventCodec.encode(read), StandardCharsets.UTF_8));
    }
}
