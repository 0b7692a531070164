package sopwell.prep.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.prep.calendar.KitchenTerms.Cost;
import sopwell.prep.calendar.KitchenTerms.Out;
import sopwell.prep.calendar.TermsCommand.BringBack;
import sopwell.prep.calendar.TermsCommand.CloseKitchen;
import sopwell.prep.calendar.TermsCommand.OpenKitchen;
import sopwell.prep.calendar.TermsCommand.SetCost;
import sopwell.prep.calendar.TermsCommand.SetCosts;
import sopwell.prep.calendar.TermsCommand.SetDay;
import sopwell.prep.calendar.TermsCommand.SetKitchen;
import sopwell.prep.calendar.TermsCommand.SetOpening;
import sopwell.prep.calendar.TermsCommand.SetReview;
import sopwell.prep.calendar.TermsCommand.TakeOut;
import sopwell.storage.RecipeReader;

/** What the owner sets for the plan; the script's clock stands on 2026-01-14. */
class TermsTest {
    private final Script script = new Script().recipes(book());

    private static sopwell.stock.recipes.RecipeBook book() {
        try {
            byte[] json = TermsTest.class.getResourceAsStream("/demo/recipes.json").readAllBytes();
            byte[] menu = TermsTest.class.getResourceAsStream("/demo/menu.json").readAllBytes();
            return RecipeReader.read(
                            json, sopwell.storage.MenuReader.read(menu).menu().orElseThrow())
                    .book()
                    .orElseThrow();
        } catch (IOException fault) {
            throw new java.io.UncheckedIOException(fault);
        }
    }

    private Decision decide(TermsCommand command) {
        return script.decide(new CalendarCommand.SetTerms(command));
    }

    private OwnerTerms after(TermsCommand command) {
        Decision decision = decide(command);
        assertTrue(!decision.isRefused(), () -> decision.refusal().toString());
        return script.stand().calendar().terms();
    }

    private void refused(Reason reason, TermsCommand command) {
        Decision decision = decide(command);
        assertEquals(Optional.of(reason), decision.refusal().map(one -> one.reason()));
        assertEquals(OwnerTerms.USUAL, script.stand().calendar().terms(), "nothing was set");
    }

    @Test
    void whatIsSetStandsInTheCalendar() {
        PrepTerms costs = after(new SetCosts("$0.75", "30", "4")).numbers();
        assertEquals(75, costs.goodwillCents());
        assertEquals(30, costs.withoutPercent());
        assertEquals(4, costs.nightPerMille());
        PrepTerms day = after(new SetDay("150", "11:00", "8.30", "3")).numbers();
        assertEquals(
                new PrepTerms(75, 30, 4, 150, LocalTime.of(11, 0), LocalTime.of(8, 30), 3), day);
        assertEquals(0, after(new SetDay("150", "11:00", "8:30", "")).numbers().hands());
        assertEquals(
                Optional.of(LocalDate.of(2026, 2, 1)),
                after(new SetOpening("2026-02-01")).kitchen().opensOn());
        assertEquals(Optional.empty(), after(new SetOpening("")).kitchen().opensOn());
        List<String> from = List.of("", "7:00", "", "", "", "", "");
        List<String> to = List.of("", "15:30", "", "", "", "", "");
        assertEquals(
                Map.of(DayOfWeek.TUESDAY, new OpenHours(420, 930)),
                after(new SetKitchen(from, to)).kitchen().hours());
        assertEquals(Map.of(), after(new SetKitchen(List.of(), List.of())).kitchen().hours());
        LocalDate date = LocalDate.of(2026, 1, 20);
        assertEquals(
                new TreeSet<>(List.of(date)),
                after(new CloseKitchen("2026-01-20")).kitchen().away());
        assertEquals(new TreeSet<>(), after(new OpenKitchen("2026-01-20")).kitchen().away());
    }

    @Test
    void whatIsOutComesBackAndWhatIsSetOfAnIngredientIsTakenBack() {
        LocalDateTime from = LocalDateTime.of(2026, 1, 15, 8, 0);
        LocalDateTime until = LocalDateTime.of(2026, 1, 16, 12, 0);
        TakeOut out = new TakeOut("oven", "", "2026-01-15T08:00", "2026-01-16 12:00");
        assertEquals(List.of(new Out("oven", 0, from, until)), after(out).kitchen().out());
        TakeOut two = new TakeOut("oven", "2", "2026-01-15T08:00", "2026-01-16T12:00");
        assertEquals(List.of(new Out("oven", 2, from, until)), after(two).kitchen().out());
        BringBack back = new BringBack("oven", "2026-01-15T08:00");
        assertEquals(List.of(), after(back).kitchen().out());
        assertEquals(
                Map.of("hot-relish", 4),
                after(new SetReview("hot-relish", "4")).kitchen().reviewDays());
        assertEquals(Map.of(), after(new SetReview("hot-relish", "")).kitchen().reviewDays());
        assertEquals(
                Map.of("roll", new Cost("each", OptionalInt.of(250), OptionalInt.empty())),
                after(new SetCost("roll", "2.50", "")).kitchen().costs());
        assertEquals(Map.of(), after(new SetCost("roll", "", "")).kitchen().costs());
        assertEquals(List.of(), decide(new SetCost("roll", "", "")).events(), "said already");
    }

    @Test
    void whatCanNotBeIsRefusedAndChangesNothing() {
        refused(Reason.TERMS_MONEY, new SetCosts("-1", "20", "2"));
        refused(Reason.TERMS_NUMBER, new SetCosts("0.50", "101", "2"));
        refused(Reason.TERMS_NUMBER, new SetDay("-5", "10:30", "9:00", ""));
        refused(Reason.TERMS_NUMBER, new SetDay("5", "10:30", "9:00", "51"));
        refused(Reason.TERMS_TIME, new SetDay("5", "24:00", "9:00", ""));
        refused(Reason.CALENDAR_DATE, new SetOpening("2026-01-13"));
        refused(Reason.CALENDAR_DATE, new SetOpening("2026-03-16"));
        List<String> late = List.of("22:00", "", "", "", "", "", "");
        List<String> early = List.of("7:00", "", "", "", "", "", "");
        refused(Reason.KITCHEN_HOURS, new SetKitchen(late, early));
        refused(Reason.CALENDAR_DATE, new CloseKitchen("soon"));
        String end = "2026-01-16T12:00";
        refused(Reason.OUT_SPAN, new TakeOut("oven", "", end, "2026-01-15T08:00"));
        refused(Reason.OUT_SPAN, new TakeOut("oven", "", end, end));
        refused(Reason.OUT_MOMENT, new TakeOut("oven", "", "tonight", end));
        refused(Reason.OUT_MOMENT, new TakeOut("oven", "", "2026-01-12T08:00", end));
        refused(Reason.TERMS_NUMBER, new TakeOut("oven", "7", "2026-01-15T08:00", end));
        refused(Reason.UNKNOWN_RESOURCE, new TakeOut("smoker", "", "2026-01-15T08:00", end));
        refused(Reason.TERMS_NUMBER, new SetReview("hot-relish", "13"));
        refused(Reason.NO_RECIPE, new SetReview("roll", "2"));
        refused(Reason.UNKNOWN_INGREDIENT, new SetCost("caviar", "2", ""));
        refused(Reason.TERMS_MONEY, new SetCost("roll", "two", ""));
    }

    @Test
    void asManyDatesAsFitAndNoMore() {
        for (int d = 0; d < CalendarLimits.AWAY_DATES_MAX; d++) {
            after(new CloseKitchen(LocalDate.of(2026, 1, 14).plusDays(d).toString()));
        }
        Decision one = decide(new CloseKitchen("2026-06-01"));
        assertEquals(Reason.TERMS_MANY, Script.reason(one));
    }
}
