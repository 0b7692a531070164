package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sopwell.audit.AuditEvent;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PaceEvent;
import sopwell.kitchen.PassEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.StationEvent;
import sopwell.log.Event;
import sopwell.log.LogFault;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent;
import sopwell.menu.Selection;
import sopwell.money.Totals;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.orders.OutEvent;
import sopwell.orders.PaperEvent;
import sopwell.prep.HistoryEvent;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.prep.past.PlanEvent;
import sopwell.stock.PanEvent;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.stock.recipes.RecipeParts;
import sopwell.till.TillEvent;

class EventCodecTest {
    @Test
    void everyEventOfEveryFamilyHasAName() {
        List<Class<?>> happened = new ArrayList<>();
        for (Class<?> family :
                List.of(
                        OrderEvent.class,
                        OutEvent.class,
                        PaperEvent.class,
                        KitchenEvent.class,
                        PassEvent.class,
                        PanEvent.class,
                        LarderEvent.class,
                        BatchEvent.class,
                        QueryEvent.class,
                        StationEvent.class,
                        PaceEvent.class,
                        TillEvent.class,
                        MenuEvent.class,
                        CalendarEvent.class,
                        PlanEvent.class,
                        RecipeEvent.class,
                        HistoryEvent.class,
                        AuditEvent.class)) {
            happened.addAll(List.of(family.getPermittedSubclasses()));
        }
        Set<Class<?>> named = new HashSet<>();
        for (EventName name : EventName.values()) {
            named.add(name.type());
        }
        assertEquals(new HashSet<>(happened), named);
        assertEquals(EventName.values().length, happened.size(), "no name is given twice");
    }

    @Test
    void everyEventIsAmongTheSamples() {
        Set<EventName> sampled = new HashSet<>();
        Samples.oneOfEach().forEach(event -> sampled.add(EventCodec.name(event)));
        assertEquals(Set.of(EventName.values()), sampled);
    }

    @Test
    void writesWhatItWroteWhenItsVersionWasNew() {
        for (Event event : Samples.oneOfEach()) {
            EventName name = EventCodec.name(event);
            String written = new String(EventCodec.encode(event), StandardCharsets.UTF_8);
            assertEquals(golden(name, name.version()), written, name.written());
        }
    }

    @Test
    void readsEveryVersionThatWasEverWritten() {
        for (Event event : Samples.oneOfEach()) {
            EventName name = EventCodec.name(event);
            for (int version = 1; version <= name.version(); version++) {
                byte[] body = golden(name, version).getBytes(StandardCharsets.UTF_8);
                assertSame(event, EventCodec.decode(1, name.written(), version, body));
            }
        }
    }

    @Test
    void keepsWhatIsSeldomSaidOfMoney() {
        OrderLine untaxed =
                new OrderLine(1, 1, new Selection("water", "", List.of(), List.of()), 150, false);
        OrderEvent.OrderChanged changed =
                new OrderEvent.OrderChanged(
                        "20250503-0213",
                        2,
                        "",
                        false,
                        List.of(untaxed),
                        new Totals(150, 50, 0, true, 100),
                        "",
                        "1dacc72cbec9e27e");
        String golden =
                "{\"order\":\"20250503-0213\",\"version\":2,\"lines\":[{\"line\":1,"
                        + "\"quantity\":1,\"item\":\"water\",\"unitCents\":150,"
                        + "\"untaxed\":true}],\"subtotalCents\":150,\"taxCents\":0,"
                        + "\"totalCents\":100,\"discountCents\":50,\"taxIncluded\":true,"
                        + "\"menu\":\"1dacc72cbec9e27e\"}";
        byte[] body = golden.getBytes(StandardCharsets.UTF_8);
        assertEquals(golden, new String(EventCodec.encode(changed), StandardCharsets.UTF_8));
        assertEquals(changed, EventCodec.decode(1, "order-changed", 1, body));
    }

    @Test
    void keepsAShelfsNameInBothLanguagesAndTheRevisionOfAnOlderBook() {
        RecipeBook demo = RecipeWriter.book(demoParts());
        RecipeEvent.RecipesAdopted adopted = new RecipeEvent.RecipesAdopted(demo);
        Event read = EventCodec.decode(1, "recipes-adopted", 2, EventCodec.encode(adopted));
        RecipeBook again = ((RecipeEvent.RecipesAdopted) read).book();
        assertEquals(demo, again);
        assertEquals(
                new LocalText("Bread rack", "Estante del pan"),
                again.ingredient("roll").place().shelf());
        byte[] old = golden(EventName.RECIPES_ADOPTED, 1).getBytes(StandardCharsets.UTF_8);
        RecipeBook before =
                ((RecipeEvent.RecipesAdopted) EventCodec.decode(1, "recipes-adopted", 1, old))
                        .book();
        assertEquals(
                new LocalText("low left", "low left"), before.ingredient("raw").place().shelf());
        assertEquals("6b3e5a3fa65c1f74", before.revision());
    }

    private static RecipeParts demoParts() {
        return RecipeReader.read(Samples.demoRecipesBytes(), Samples.demoMenu())
                .book()
                .orElseThrow()
                .parts();
    }

    @Test
    void keepsOddTextsAsTheyAre() {
        String name = "\"Ñandú\\ \u0007 \uD83C\uDF36 </script> ".repeat(400);
        OrderEvent.OrderPlaced placed = Samples.placed(1, name);
        byte[] body = EventCodec.encode(placed);
        assertEquals(placed, EventCodec.decode(1, "order-placed", 1, body));
    }

    @Test
    void keepsHalfACharacterWithoutMakingTheLogUnreadable() {
        for (String half : List.of("\uD83C", "x\uD83Cy", "\uDF36z")) {
            OrderEvent.OrderVoided voided = new OrderEvent.OrderVoided("20250503-0001", 2, half);
            byte[] body = EventCodec.encode(voided);
            assertEquals(voided, EventCodec.decode(1, "order-voided", 1, body));
            String text = new String(body, StandardCharsets.UTF_8);
            assertTrue(text.codePoints().allMatch(point -> point < 128), text);
        }
    }

    @Test
    void saysWhichEventItDoesNotKnow() {
        byte[] body = "{}".getBytes(StandardCharsets.UTF_8);
        LogFault unknown =
                assertThrows(LogFault.class, () -> EventCodec.decode(77, "till-opened", 1, body));
        assertTrue(unknown.getMessage().contains("Event 77"), unknown.getMessage());
        assertTrue(unknown.getMessage().contains("till-opened"), unknown.getMessage());
        LogFault newer =
                assertThrows(LogFault.class, () -> EventCodec.decode(78, "part-up", 2, body));
        assertTrue(newer.getMessage().contains("Event 78"), newer.getMessage());
        assertTrue(newer.getMessage().contains("version 2"), newer.getMessage());
    }

    @Test
    void refusesBodiesThatAreNotAsTheyWereWritten() {
        List<String> broken =
                List.of(
                        "",
                        "[]",
                        "{}",
                        "{\"part\":7}",
                        "{\"part\":\"20250503-0001.1\"}",
                        "{\"part\":\"20250503-0001.1.line\",\"more\":1}",
                        "{\"part\":\"20250503-0001.1.line\"",
                        "{\"Part\":\"20250503-0001.1.line\"}");
        for (String body : broken) {
            byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
            LogFault fault =
                    assertThrows(
                            LogFault.class, () -> EventCodec.decode(5, "part-up", 1, bytes), body);
            assertTrue(fault.getMessage().contains("Event 5"), fault.getMessage());
        }
    }

    @Test
    void refusesTotalsThatDoNotAddUp() {
        String body = golden(EventName.ORDER_PLACED, 1).replace("3020", "3021");
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        assertThrows(LogFault.class, () -> EventCodec.decode(5, "order-placed", 1, bytes));
    }

    private static void assertSame(Event expected, Event found) {
        if (expected instanceof MenuEvent.MenuAdopted adopted) {
            Menu menu = ((MenuEvent.MenuAdopted) found).menu();
            assertEquals(adopted.menu().revision(), menu.revision());
            assertEquals(adopted.menu().parts(), menu.parts());
        } else if (expected instanceof RecipeEvent.RecipesAdopted adopted) {
            assertEquals(
                    adopted.book().parts(), ((RecipeEvent.RecipesAdopted) found).book().parts());
        } else {
            assertEquals(expected, found);
        }
    }

    private static String golden(EventName name, int version) {
        String file = "/events/" + name.written() + "-v" + version + ".json";
        return new String(Samples.resource(file), StandardCharsets.UTF_8).strip();
    }
}
