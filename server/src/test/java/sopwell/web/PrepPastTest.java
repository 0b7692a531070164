package sopwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.DayBook;
import sopwell.desk.DaysDesk;
import sopwell.desk.MemoryShelf;
import sopwell.desk.Script;
import sopwell.log.Entry;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.mix.DayTally;
import sopwell.orders.OutEvent.OutMarked;
import sopwell.prep.HistoryEvent.PastDayKept;
import sopwell.prep.PrepAsk;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;
import sopwell.storage.MemoryLog;

/** What a plan learns from: days that were sold here and days that were taken in. */
class PrepPastTest {
    private static final LocalDate OWN = LocalDate.of(2026, 1, 14);
    private static final LocalDate OLD = OWN.minusDays(2);
    private static final LocalDate TODAY = OWN.plusDays(2);
    private static final int FIVE_PIECES = 5;

    private final MemoryLog log = new MemoryLog("past");
    private final Menu menu = Script.demoMenu();
    private final DayBook book = new DayBook(log, Script.SETTINGS, MemoryShelf.shelves());
    private final PrepPast past = new PrepPast(log, book, Script.SETTINGS);

    @BeforeEach
    void twoDaysAndTheBeginningOfAThird() {
        try (DaysDesk desk = new DaysDesk(log, OWN)) {
            desk.day(OWN, 3);
            desk.day(OWN.plusDays(1), 4);
            desk.day(TODAY, 1);
        }
    }

    private void keep(LocalDate date, int binMinutes, Sold... sold) {
        PastDay day =
                new PastDay(
                        date, true, Hours.UNKNOWN, List.of(sold), List.of(), List.of(), List.of());
        Outlook rain = new Outlook(date.minusDays(1), date, "rain", 0.5);
        append(new PastDayKept(binMinutes, "", day, List.of(rain)));
    }

    private void append(sopwell.log.Event event) {
        String key = "kept " + log.lastSeq();
        long atMs = TODAY.atTime(13, 0).atZone(Script.SETTINGS.zone()).toInstant().toEpochMilli();
        log.append(List.of(new Entry(atMs, key, key, List.of(event))));
    }

    private PrepAsk.Past before(LocalDate date) {
        return past.before(date, menu, OwnerCalendar.EMPTY, Optional.empty());
    }

    private static int pieces(PastDay day) {
        return day.sold().stream().mapToInt(Sold::pieces).sum();
    }

    @Test
    void daysThatWereTakenInAreLearnedBesideThoseThatWereSoldHere() {
        assertEquals(2, before(TODAY).days().size());
        keep(OLD, 15, new Sold(4 * 12 + 1, "fries", "", List.of(), FIVE_PIECES));
        keep(OWN, 30, new Sold(24, "fries", "", List.of(), 99));
        PrepAsk.Past both = before(TODAY);
        assertEquals(
                List.of(OLD, OWN, OWN.plusDays(1)),
                both.days().stream().map(PastDay::date).toList());
        assertEquals(FIVE_PIECES, pieces(both.days().get(0)));
        assertEquals(24, both.days().get(0).sold().get(0).bin(), "a quarter past twelve");
        assertEquals(9, pieces(both.days().get(1)), "three orders of three, sold here");
        assertEquals(2, both.outlooks().size());
        assertTrue(before(OLD).days().isEmpty(), "a day learns nothing of itself");
    }

    @Test
    void whatWasTakenInIsPricedByTheMenuAndWhatIsNotOnItIsNoWayOfMaking() {
        keep(
                OLD,
                30,
                new Sold(24, "beef", "regular", List.of("dipped", "hot", "moon dust"), 2),
                new Sold(24, "beef", "enormous", List.of(), 3),
                new Sold(24, "moon pie", "", List.of(), 4));
        DayTally old = before(TODAY).tallies().get(0);
        assertEquals(OLD, old.date());
        List<DayTally.Sold> sold = old.halfHours().get(0).sold();
        assertEquals(1, sold.size(), sold.toString());
        assertTrue(sold.get(0).ways().contains("dip=dipped"), sold.toString());
        assertTrue(sold.get(0).ways().contains("peppers=hot"), sold.toString());
        long each =
                menu.item("beef").size("regular").orElseThrow().priceCents()
                        + menu.option("dipped").priceCents()
                        + menu.option("hot").priceCents();
        assertEquals(2 * each, sold.get(0).cents());
    }

    @Test
    void marksThatComeLaterAreReadWithThoseBefore() {
        LocalDate next = TODAY.plusDays(1);
        // The third day was cut in the morning of the next one, which the mark belongs to.
        append(new OutMarked(Out.item("sausage"), 0, 0));
        assertEquals(2, before(TODAY).days().size());
        try (DaysDesk desk = new DaysDesk(log, next)) {
            desk.day(next, 1);
            desk.day(next.plusDays(1), 1);
        }
        assertEquals(List.of("sausage"), outs(before(next.plusDays(1)), next));
        append(new OutMarked(Out.item("hot-dog"), 0, 0));
        try (DaysDesk desk = new DaysDesk(log, next.plusDays(2))) {
            desk.day(next.plusDays(2), 1);
            desk.day(next.plusDays(3), 1);
        }
        PrepAsk.Past all = before(next.plusDays(3));
        assertEquals(List.of("sausage"), outs(all, next));
        assertEquals(List.of("hot-dog"), outs(all, next.plusDays(2)));
    }

    private static List<String> outs(PrepAsk.Past past, LocalDate date) {
        return past.days().stream()
                .filter(day -> day.date().equals(date))
                .flatMap(day -> day.outs().stream())
                .map(OutSpan::what)
                .toList();
    }
}
