package sopwell.prep.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.desk.Replay;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Entry;
import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.prep.calendar.CalendarCommand.AddOccasion;
import sopwell.prep.calendar.CalendarCommand.Guess;
import sopwell.prep.calendar.CalendarCommand.RemoveOccasion;
import sopwell.prep.calendar.CalendarCommand.SetHours;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.storage.MemoryLog;

/** What the owner says of days; the script's clock stands on 2026-01-14. */
class CalendarTest {
    private final Script script = new Script();

    @Test
    void anOccasionIsKnownToTheForecastAsItWasSaid() {
        must(new AddOccasion("2026-01-17", " Festival: River 2026 ", "+40 %"));
        CalendarDay day = calendar().day(LocalDate.of(2026, 1, 17));
        assertEquals(List.of(new Occasion("festival: river", "festival", 1.4)), day.known());
        must(new AddOccasion("2026-01-17", "festival: river 2026", "−20"));
        assertEquals(0.8, calendar().day(day.date()).known().get(0).guess(), 1e-12);
        assertEquals(1, calendar().day(day.date()).occasions().size(), "one of a name gives way");
        must(new RemoveOccasion("2026-01-17", "festival: river 2026"));
        assertEquals(OwnerCalendar.EMPTY, calendar());
    }

    @Test
    void aDayIsClosedOrHasOtherHoursOrItsUsualOnes() {
        LocalDate date = LocalDate.of(2026, 2, 1);
        must(new SetHours("2026-02-01", false, "9:00", "24:00"));
        assertEquals(new Hours(540, 1_440), calendar().day(date).plannedHours());
        assertEquals("09:00", calendar().day(date).hours().orElseThrow().from());
        must(new SetHours("2026-02-01", true, "", ""));
        assertTrue(calendar().day(date).closed());
        assertEquals(Optional.empty(), calendar().day(date).hours());
        must(new SetHours("2026-02-01", false, "", ""));
        assertTrue(calendar().day(date).isPlain());
    }

    @Test
    void whatIsSaidAlreadyAsksForNothing() {
        must(new Guess("beef", "150"));
        assertEquals(Map.of("beef", 150.0), calendar().guesses().items());
        assertEquals(List.of(), decide(new Guess("beef", "150")).events());
        assertEquals(List.of(), decide(new SetHours("today", false, "", "")).events());
        must(new Guess("beef", ""));
        assertEquals(OwnerCalendar.EMPTY, calendar());
    }

    @ParameterizedTest(name = "{0} {1} {2}: {3}")
    @CsvSource({
        "2026-01-13,festival,+40,CALENDAR_DATE", "2027-03-01,festival,+40,CALENDAR_DATE",
        "soon,festival,+40,CALENDAR_DATE", "2026-02-30,festival,+40,CALENDAR_DATE",
        "2026-01-17,'',+40,OCCASION_NAME", "2026-01-17,festival,+4000 %,OCCASION_PERCENT",
        "2026-01-17,festival,-96,OCCASION_PERCENT", "2026-01-17,festival,much,OCCASION_PERCENT",
        "2026-01-17,festival of the old mill beside the green river,1,TEXT_TOO_LONG"
    })
    void whatIsNoOccasionIsRefused(String date, String name, String percent, Reason reason) {
        assertEquals(reason, Script.reason(decide(new AddOccasion(date, name, percent))));
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource({"20:00,10:30", "10:30,10:30", "10:30,''", "25:00,26:00", "10:75,12:00", "ten,noon"})
    void hoursThatAreNoneAreRefused(String opens, String closes) {
        SetHours hours = new SetHours("2026-01-17", false, opens, closes);
        assertEquals(Reason.CALENDAR_HOURS, Script.reason(decide(hours)));
    }

    @Test
    void noMoreThanFiveOccasionsAndNoGuessOfNothingKnown() {
        for (int n = 1; n <= 5; n++) {
            must(new AddOccasion("tomorrow", "thing " + n, ""));
        }
        AddOccasion sixth = new AddOccasion("tomorrow", "thing 6", "");
        assertEquals(Reason.OCCASIONS_MANY, Script.reason(decide(sixth)));
        RemoveOccasion unknown = new RemoveOccasion("tomorrow", "thing 6");
        assertEquals(Reason.UNKNOWN_OCCASION, Script.reason(decide(unknown)));
        assertEquals(Reason.NOT_ON_MENU, Script.reason(decide(new Guess("gravel", "5"))));
        assertEquals(Reason.GUESS_RANGE, Script.reason(decide(new Guess("beef", "-5"))));
        assertEquals(Reason.GUESS_RANGE, Script.reason(decide(new Guess("beef", "20001"))));
    }

    @Test
    void theCalendarOutlastsTheDayItWasSaidOn() {
        must(new AddOccasion("2026-01-17", "river festival", "+40"));
        script.place("beef");
        OwnerCalendar said = calendar();
        script.at("2026-01-15T12:00");
        script.place("beef");
        try (MemoryLog log = new MemoryLog("test")) {
            script.log()
                    .forEach(
                            one ->
                                    log.append(
                                            List.of(
                                                    new Entry(
                                                            one.atMs(),
                                                            "k" + one.seq(),
                                                            "f",
                                                            List.of(one.event())))));
            Stand stand = Replay.newestDay(log, Script.SETTINGS, event -> {});
            assertEquals(said, stand.calendar());
            assertEquals(1, stand.orders().all().size(), "only the newest day was read");
        }
    }

    @Test
    void whatWasParticularStaysKnownForThreeYears() {
        must(new AddOccasion("2026-01-17", "river festival", "+40"));
        LocalDate day = LocalDate.of(2026, 1, 17);
        CalendarDay other = CalendarDay.plain(day.plusDays(1)).open(true, Optional.empty());
        assertEquals(2, calendar().with(other, day).days().size());
        assertEquals(1, calendar().with(other, day.plusDays(1)).days().size());
    }

    private OwnerCalendar calendar() {
        return script.stand().calendar();
    }

    private Decision decide(CalendarCommand command) {
        return script.decide(command);
    }

    private void must(CalendarCommand command) {
        Decision decision = decide(command);
        assertTrue(decision.refusal().isEmpty(), () -> decision.refusal().toString());
    }
}
