package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.Check;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.AuditEvent.DoneBy;
import sopwell.audit.Who;
import sopwell.desk.StandCommand.AdoptMenu;
import sopwell.desk.StandCommand.By;
import sopwell.desk.StandCommand.ForAccess;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.desk.SteppedDesk.Asking;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.money.Discount;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.DayClosed;
import sopwell.orders.OrderEvent.DayReopened;
import sopwell.orders.OrderEvent.OrderDiscounted;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.OrderEvent.OrderVoided;
import sopwell.orders.Orders.Reopening;
import sopwell.orders.Reason;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.prep.calendar.CalendarEvent.CalendarSet;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;
import sopwell.storage.MemoryLog;
import sopwell.till.Means;
import sopwell.till.TillCommand;
import sopwell.till.TillEvent.OrderRefunded;
import sopwell.till.TillEvent.PaidOut;

class AnswerableTest {
    private static final Who LEAD = new Who("s2", "d1", "", "lead");
    private static final Who OTHER = new Who("s3", "d2", "", "counter");

    private final MemoryLog log = new MemoryLog("epoch");
    private final long nowMs = new Script().nowMs();
    private final SteppedDesk desk =
            new SteppedDesk(log, Script.SETTINGS, () -> Instant.ofEpochMilli(nowMs));
    private int keys;

    @Test
    void whoDidItStandsBehindWhatMustBeAnsweredFor() {
        assertNoted(MenuAdopted.class, new AdoptMenu(Script.demoMenu()));
        RecipeBook book = Script.demoRecipes().get(0);
        assertNoted(
                RecipesAdopted.class,
                new StandCommand.AdoptRecipes(book, RecipeBook.empty().revision()));
        assertNoted(
                CalendarSet.class,
                new StandCommand.ForCalendar(
                        new CalendarCommand.AddOccasion("tomorrow", "fair", "+10 %")));
        String order = placed();
        Discount off = new Discount(Discount.Kind.GUEST, 100, 0, "waited in vain");
        assertNoted(
                OrderDiscounted.class, new ForOrders(new OrderCommand.SetDiscount(order, 0, off)));
        by(LEAD, new ForTill(new TillCommand.OpenTill("Ines", 10_000)));
        assertNoted(PaidOut.class, new ForTill(new TillCommand.PayOut("Ines", 500, "ice")));
        by(LEAD, new ForTill(new TillCommand.Pay(order, "Ines", Means.CASH, 0, 0, 0)));
        assertNoted(
                OrderRefunded.class,
                new ForTill(new TillCommand.Refund(order, "Ines", Means.CASH, 100, false, "cold")));
        assertNoted(OrderVoided.class, new ForOrders(new OrderCommand.VoidOrder(order, 0, "left")));
        assertNoted(
                AccessChanged.class,
                new ForAccess(AccessChanged.ofPerson(Change.PERSON_ADDED, "s4")));
    }

    @Test
    void whatNobodyMustAnswerForIsNotNoted() {
        adopt();
        placed();
        by(LEAD, new ForTill(new TillCommand.OpenTill("Ines", 10_000)));
        by(LEAD, new ForTill(new TillCommand.PayIn("Ines", 500, "coins")));
        assertEquals(List.of(), all().stream().filter(DoneBy.class::isInstance).toList());
    }

    @Test
    void anAnswerSaysWhatWasDoneAndNotByWhomAlsoWhenItIsRepeated() {
        adopt();
        Asking asking =
                new Asking(
                        "k", "print", new By(LEAD, new ForTill(new TillCommand.OpenTill("", 0))));
        assertEquals(Answer.Outcome.REFUSED, answer(asking).outcome());
        by(LEAD, new ForTill(new TillCommand.OpenTill("Ines", 10_000)));
        Asking out =
                new Asking(
                        "out",
                        "print",
                        new By(LEAD, new ForTill(new TillCommand.PayOut("Ines", 5, "ice"))));
        List<Recorded> first = answer(out).events();
        assertEquals(1, first.size());
        Asking again = new Asking("out", "print", new By(OTHER, ((By) out.command()).command()));
        assertEquals(Answer.Outcome.REPEATED, answer(again).outcome());
        assertEquals(first, answer(again).events());
        assertEquals(new DoneBy(LEAD), last(), "whoever repeats it did not do it");
        assertEquals(first, answer(new SteppedDesk(log, Script.SETTINGS, this::now), out).events());
    }

    @Test
    void aPaidOrderIsVoidedByNobodyButALeadOrAnOwnerHoweverTheyGotHere() {
        adopt();
        String order = placed();
        by(LEAD, new ForTill(new TillCommand.OpenTill("Ines", 10_000)));
        by(LEAD, new ForTill(new TillCommand.Pay(order, "Ines", Means.CASH, 100, 100, 0)));
        StandCommand gone = new ForOrders(new OrderCommand.VoidOrder(order, 0, "left"));
        for (String role : List.of("counter", "line", "")) {
            Answer answer = by(new Who("s9", "d1", "", role), gone);
            assertEquals(Reason.PAID_VOID, answer.refusal().orElseThrow().reason(), role);
        }
        assertEquals(0, all().stream().filter(OrderVoided.class::isInstance).count());
        TillCommand back = new TillCommand.Refund(order, "Ines", Means.CASH, 100, true, "cold");
        by(LEAD, new ForTill(back));
        assertEquals(Answer.Outcome.DONE, by(new Who("s9", "d1", "", "counter"), gone).outcome());
        String other = placed();
        by(LEAD, new ForTill(new TillCommand.Pay(other, "Ines", Means.CASH, 100, 100, 0)));
        assertNoted(OrderVoided.class, new ForOrders(new OrderCommand.VoidOrder(other, 0, "left")));
    }

    @Test
    void theReopeningOfADayKnowsWhoItWas() {
        adopt();
        by(OTHER, new ForOrders(new OrderCommand.OpenDay()));
        by(OTHER, new ForOrders(new OrderCommand.CloseDay()));
        assertEquals(new DoneBy(OTHER), last());
        by(LEAD, new ForOrders(new OrderCommand.ReopenDay(Optional.empty(), "a party came late")));
        List<Reopening> wanted =
                List.of(new Reopening(nowMs, "a party came late", Optional.of(LEAD)));
        assertEquals(wanted, desk.deciding().orders().reopenings());
        by(OTHER, new ForOrders(new OrderCommand.CloseDay()));
        assertEquals(wanted, desk.deciding().orders().reopenings(), "the close is another deed");
        assertEquals(wanted, SteppedDesk.replayed(log, Script.SETTINGS).orders().reopenings());
        assertEquals(
                List.of(DayClosed.class, DayReopened.class, DayClosed.class),
                all().stream()
                        .filter(e -> e instanceof DayClosed || e instanceof DayReopened)
                        .map(Object::getClass)
                        .toList());
    }

    @Test
    void aCommandIsAskedForByOneAlone() {
        By by = new By(LEAD, new ForOrders(new OrderCommand.OpenDay()));
        assertThrows(Check.Broken.class, () -> new By(OTHER, by));
        assertThrows(Check.Broken.class, () -> new Who("s1", "", "", "king"));
    }

    private void assertNoted(Class<? extends Event> type, StandCommand command) {
        Answer answer = by(LEAD, command);
        assertEquals(Answer.Outcome.DONE, answer.outcome(), answer::toString);
        List<Event> events = all();
        assertEquals(new DoneBy(LEAD), last());
        assertEquals(type, events.get(events.size() - 2).getClass());
        assertEquals(events.size() - 1L, answer.events().get(answer.events().size() - 1).seq());
    }

    private void adopt() {
        answer(new Asking("menu", "menu", new AdoptMenu(Script.demoMenu())));
    }

    private String placed() {
        OrderCommand place =
                new OrderCommand.Place("", false, new Script().asked("2 beef dipped hot"));
        return by(OTHER, new ForOrders(place)).events().stream()
                .map(Recorded::event)
                .filter(OrderPlaced.class::isInstance)
                .map(event -> ((OrderPlaced) event).order())
                .findFirst()
                .orElseThrow();
    }

    private Instant now() {
        return Instant.ofEpochMilli(nowMs);
    }

    private Answer by(Who who, StandCommand command) {
        keys++;
        return answer(new Asking("k" + keys, "print", new By(who, command)));
    }

    private Answer answer(Asking asking) {
        return answer(desk, asking);
    }

    private static Answer answer(SteppedDesk desk, Asking asking) {
        return desk.run(List.of(asking)).get(0).join();
    }

    private Event last() {
        List<Event> all = all();
        return all.get(all.size() - 1);
    }

    private List<Event> all() {
        List<Event> all = new ArrayList<>();
        log.read(1, log.lastSeq(), recorded -> all.add(recorded.event()));
        return all;
    }
}
