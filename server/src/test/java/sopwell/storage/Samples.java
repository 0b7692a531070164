package sopwell.storage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.audit.AuditEvent;
import sopwell.audit.Who;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PaceEvent;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PassEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;
import sopwell.kitchen.RemakeReason;
import sopwell.kitchen.StationEvent;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent;
import sopwell.menu.Out;
import sopwell.menu.Selection;
import sopwell.money.CashCount;
import sopwell.money.CashUnit;
import sopwell.money.Discount;
import sopwell.money.Totals;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.orders.OutEvent;
import sopwell.orders.PaperEvent;
import sopwell.orders.Quote;
import sopwell.prep.HistoryEvent;
import sopwell.prep.calendar.CalendarDay;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.prep.calendar.NamedOccasion;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;
import sopwell.prep.past.KeptTask;
import sopwell.prep.past.PlanEvent;
import sopwell.stock.PanEvent;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.till.Means;
import sopwell.till.Payment;
import sopwell.till.TillEvent;

/** Events, entries and files for the tests of this package. */
final class Samples {
    private Samples() {}

    static byte[] resource(String path) {
        try (InputStream in = Samples.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalArgumentException("no resource " + path);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static byte[] demoMenuBytes() {
        return resource("/demo/menu.json");
    }

    static Menu demoMenu() {
        return MenuReader.read(demoMenuBytes()).menu().orElseThrow();
    }

    /** A menu that uses every field once, and never changes: golden files hold it. */
    static Menu smallMenu() {
        String json =
                """
                {"speech": {"and": ["and"], "no": ["no"], "skip": ["with"],
                            "numbers": {"two": 2, "a": 1},
                            "toGo": {"en": "to go", "es": "para llevar"},
                            "here": {"en": "here", "es": "aquí"}},
                 "stations": [{"id": "line", "name": {"en": "Line", "es": "Línea"},
                               "hands": 2, "builds": true}],
                 "steps": [{"id": "fill", "name": {"en": "Fill", "es": "Llenar"},
                            "station": "line",
                            "shows": ["item", "size", "service", "group:peppers"],
                            "seconds": 9}],
                 "groups": [{"id": "peppers", "name": {"en": "Peppers", "es": "Chiles"},
                             "choose": {"min": 0, "max": 2}, "default": ["hot"],
                             "options": [
                               {"id": "hot", "name": {"en": "hot", "es": "picante"},
                                "words": ["hot", "picante"], "short": ["h"],
                                "priceCents": 0, "allergens": ["celery"]},
                               {"id": "sweet", "name": {"en": "sweet", "es": "dulce"},
                                "words": ["sweet"], "priceCents": 25, "insteadOf": "hot"}],
                             "bundles": [
                               {"id": "none", "name": {"en": "no peppers", "es": "sin chiles"},
                                "words": ["plain"], "options": []}]}],
                 "items": [{"id": "beef", "name": {"en": "beef", "es": "res"},
                            "words": ["beef", "res"],
                            "sizes": [{"id": "large", "name": {"en": "large", "es": "grande"},
                                       "words": ["large"], "priceCents": 985}],
                            "defaultSize": "large", "groups": ["peppers"],
                            "steps": ["fill"], "allergens": ["wheat"],
                            "days": ["friday"]},
                           {"id": "roll", "name": {"en": "roll", "es": "pan"},
                            "words": ["roll"], "priceCents": 100, "steps": ["fill"]}]}
                """;
        return MenuReader.read(json.getBytes(StandardCharsets.UTF_8)).menu().orElseThrow();
    }

    /** A book of recipes that uses every field once, and never changes: a golden file holds it. */
    static RecipeBook smallBook() {
        byte[] json = resource("/recipes/small.json");
        return RecipeReader.read(json, smallMenu()).book().orElseThrow();
    }

    static byte[] demoRecipesBytes() {
        return resource("/demo/recipes.json");
    }

    static OrderEvent.OrderPlaced placed(int n, String name) {
        List<OrderLine> lines =
                List.of(
                        new OrderLine(
                                1,
                                2,
                                new Selection(
                                        "beef", "regular", List.of("dipped", "hot"), List.of()),
                                790,
                                true),
                        new OrderLine(
                                2,
                                1,
                                new Selection(
                                        "beef",
                                        "regular",
                                        List.of("dry", "sweet", "provolone"),
                                        List.of("mozzarella")),
                                865,
                                true),
                        new OrderLine(
                                3, 1, new Selection("fries", "", List.of(), List.of()), 345, true));
        return new OrderEvent.OrderPlaced(
                order(n),
                n % 999 + 1,
                name,
                true,
                lines,
                new Totals(2790, 0, 230, false, 3020),
                new Quote(360, 540),
                "1dacc72cbec9e27e");
    }

    static String order(int n) {
        return String.format(Locale.ROOT, "20250503-%04d", n);
    }

    private static PaceEvent pace() {
        return new PaceEvent.PaceCarried(
                List.of(
                        new PaceEvent.Learned("line", "", "", 40, 262_364, 89_000),
                        new PaceEvent.Learned("line", "beef", "regular", 17, -51_293, 74_100)),
                new PaceEvent.Quoting(60, 24_810, 1_040_000, 1_316_500));
    }

    /** A day out of old records that was open, and yet closed early for a reason. */
    private static HistoryEvent pastDay(LocalDate date) {
        PastDay day =
                new PastDay(
                        date,
                        true,
                        new PastDay.Hours(630, 1_200),
                        List.of(
                                new Sold(48, "beef", "large", List.of("dipped", "hot"), 3),
                                new Sold(49, "beef", "large", List.of("dipped", "hot"), 1),
                                new Sold(48, "fries", "", List.of(), 12)),
                        List.of(
                                new OutSpan("rolls", 1_095, 1_200),
                                new OutSpan("fries", OutSpan.UNKNOWN, 2_160)),
                        List.of(new Occasion("festival: river", "festival", 1.4)),
                        List.of("rain"));
        Outlook outlook = new Outlook(date.minusDays(1), date, "rain", 0.35);
        return new HistoryEvent.PastDayKept(15, "storm", day, List.of(outlook));
    }

    /** One of each kind, all fields filled. */
    static List<Event> oneOfEach() {
        LocalDate date = LocalDate.of(2025, 5, 3);
        OrderEvent.OrderPlaced placed = placed(213, "Inés");
        PartId part = new PartId(order(213), 2, "line");
        QueryId query = new QueryId(part, 1);
        KitchenEvent remade =
                new KitchenEvent.PartRemade(part, 1, RemakeReason.DROPPED, "by the door", true);
        RecipeEvent recipes = new RecipeEvent.RecipesAdopted(smallBook());
        OrderEvent again = new OrderEvent.DayReopened(date, "a party came late");
        return Stream.of(
                        List.of(remade, recipes, again, calendar(), plan(date), pastDay(date)),
                        audit(),
                        oneOfEach(date, placed, part, query),
                        StockSamples.oneOfEach())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Event> audit() {
        return List.of(
                new AuditEvent.DoneBy(new Who("s3", "d2", "t1", "lead")),
                new AuditEvent.AccessChanged(AuditEvent.Change.PIN_SET, "s3", "d2", "t1"),
                new AuditEvent.NamesErased(
                        AuditEvent.Of.GUESTS,
                        LocalDate.of(2025, 5, 3),
                        "20250503-0213",
                        812,
                        1_430,
                        2,
                        "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08"));
    }

    private static Event plan(LocalDate date) {
        return new PlanEvent.PlanKept(
                date,
                List.of(
                        new KeptTask(
                                "beef-sliced",
                                6,
                                21_800_000,
                                1_746_280_800_000L,
                                1_746_372_600_000L,
                                date.plusDays(1))));
    }

    private static Event calendar() {
        CalendarDay late =
                new CalendarDay(
                        LocalDate.of(2026, 12, 5),
                        false,
                        Optional.of(new OpenHours(630, 1_320)),
                        List.of(
                                new NamedOccasion("river festival", 40),
                                new NamedOccasion("mill closed", 0)));
        CalendarDay holiday =
                new CalendarDay(LocalDate.of(2026, 12, 25), true, Optional.empty(), List.of());
        return new CalendarEvent.CalendarSet(
                OwnerCalendar.of(List.of(late, holiday), Map.of("beef", 150, "fries", 60)));
    }

    private static List<Event> oneOfEach(
            LocalDate date, OrderEvent.OrderPlaced placed, PartId part, QueryId query) {
        return List.of(
                new OrderEvent.DayOpened(date, "America/Chicago", 1_746_349_200_000L, 1, 1),
                new OrderEvent.DayClosed(date, true, List.of(order(7), order(9))),
                new MenuEvent.MenuAdopted(smallMenu()),
                placed,
                new OrderEvent.OrderTold(placed.order(), "0123456789abcdef", 1_746_291_600_000L),
                new OrderEvent.OrderChanged(
                        placed.order(),
                        2,
                        "Inés",
                        true,
                        placed.lines(),
                        placed.totals(),
                        "guest changed her mind",
                        placed.menuRevision()),
                new OrderEvent.OrderDiscounted(
                        placed.order(),
                        3,
                        new Discount(Discount.Kind.STAFF_MEAL, 0, 50_000, "Theo's break"),
                        new Totals(2790, 1395, 115, false, 1510)),
                new OrderEvent.OrderVoided(placed.order(), 3, "guest left"),
                new OrderEvent.OrderHanded(placed.order()),
                new OrderEvent.OrderBroughtBack(placed.order()),
                new PassEvent.NumberCalled(placed.order(), 2),
                new PassEvent.BagsCounted(placed.order(), 3),
                new PanEvent.PanRefilled("beef", 4_500),
                new PaperEvent.PaperPrinted(placed.order(), "slip", 1),
                new OutEvent.OutMarked(Out.size("beef", "large"), 12, 1_746_300_000_000L),
                new StationEvent.HandsSet("line", 3),
                pace(),
                new KitchenEvent.PartRemade(part, 1, RemakeReason.DROPPED, "by the door", true),
                new OutEvent.OutLifted(Out.option("provolone"), true),
                new TillEvent.OrderPaid(
                        placed.order(),
                        "Inés",
                        Means.CASH,
                        new Payment(1508, 200, 2, 2000, 290),
                        2),
                new TillEvent.OrderRefunded(
                        placed.order(), "Inés", Means.CARD, 500, -2, 100, "cold", -8),
                new TillEvent.TillOpened("Inés", 10_000),
                new TillEvent.PaidIn("Inés", 2_000, "coins from the bank"),
                new TillEvent.PaidOut("Inés", 1_250, "ice"),
                new TillEvent.TillClosed(
                        "Inés",
                        12_345,
                        12_325,
                        List.of(
                                new CashCount(new CashUnit(10_000, true), 1),
                                new CashCount(new CashUnit(25, false), 93))),
                new KitchenEvent.PartStarted(part),
                new KitchenEvent.PartUp(part),
                new KitchenEvent.PartBroughtBack(part),
                new KitchenEvent.PartSeen(part),
                new QueryEvent.QueryAsked(
                        query, new Question(List.of("dry", "dipped"), "no jus left")),
                new QueryEvent.QueryAnswered(query, true, "dry is fine"));
    }

    static Entry entry(int n, Event... events) {
        return new Entry(1_746_300_000_000L + n, "key-" + n, "fingerprint-" + n, List.of(events));
    }

    /** So many entries of one placed order each. */
    static List<Entry> entries(int from, int count) {
        List<Entry> entries = new ArrayList<>();
        for (int n = from; n < from + count; n++) {
            entries.add(entry(n, placed(n, "Guest " + n)));
        }
        return entries;
    }
}
