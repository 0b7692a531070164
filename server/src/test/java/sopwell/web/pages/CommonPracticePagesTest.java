package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.menu.Selection;
import sopwell.prep.plan.PlanAsk;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.Terms;
import sopwell.prep.plan.Planner;
import sopwell.prep.plan.PrepPlan;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.Usage;

/**
 * A stand that types in its recipes by page and has them planned. The figures are common practice,
 * no source, and are used in this test only.
 */
class CommonPracticePagesTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final String NEW = "/recipes/new";
    private PageStand stand;

    @BeforeEach
    void open() throws jakarta.servlet.ServletException {
        stand = new PageStand();
        kitchen();
        bought("Roast", "Asado", "LB", "15 lb", "monday");
        bought("Spice mix", "Mezcla de especias", "LB", "6 lb", "tuesday");
        send(NEW, fields("name.en=Vegetables", "name.es=Verduras", "unit=LB", "how=free"));
        beef();
        relish();
        jus();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private static Map<String, String> fields(String... pairs) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String pair : pairs) {
            int is = pair.indexOf('=');
            fields.put(pair.substring(0, is), pair.substring(is + 1));
        }
        return fields;
    }

    private void send(String path, Map<String, String> typed) {
        Map<String, String> form = PageForm.of(stand.get(path).body(), path);
        form.putAll(typed);
        HttpResponse<String> sent = stand.post(path, form);
        assertEquals(303, sent.statusCode(), sent.body());
    }

    private void kitchen() {
        Map<String, String> typed =
                fields("place.0.en=oven", "place.0.es=horno", "place.0.slots=4", "place.0.turn=15");
        for (DayOfWeek day : DayOfWeek.values()) {
            String name = day.name().toLowerCase(Locale.ROOT);
            typed.putAll(Map.of("from." + name, "07:00", "to." + name, "22:00"));
        }
        send("/recipes/kitchen", typed);
    }

    private void bought(String en, String es, String unit, String pack, String day) {
        Map<String, String> typed =
                fields("how=bought", "supplier=Halloway", "price=90", "lead=2", "order-by=14:00");
        typed.putAll(Map.of("name.en", en, "name.es", es, "unit", unit, "pack", pack));
        typed.put("day." + day, "on");
        send(NEW, typed);
    }

    /**
     * Whole boneless pieces of about 15 lb: 3 1/2 h at 450 °F, cooled, 24 h in the cold, sliced.
     */
    private void beef() {
        Map<String, String> typed =
                fields(
                        "name.en=Sliced beef",
                        "name.es=Res rebanada",
                        "unit=LB",
                        "how=made",
                        "life=4",
                        "caution.SLICER=on",
                        "in.0.what=roast",
                        "in.0.amount=15 lb",
                        "yield.0.en=roast",
                        "yield.0.es=asar",
                        "yield.0.left=70 %",
                        "lot.en=piece",
                        "lot.es=pieza",
                        "per-run=4");
        typed.putAll(
                fields(
                        "step.0.en=Roast at 450 °F",
                        "step.0.es=Asar a 450 °F",
                        "step.0.minutes=3 h 30 min",
                        "step.0.resource=oven",
                        "step.0.slots=1",
                        "step.0.start=on",
                        "step.0.end=on",
                        "step.0.watch=COOK_ROAST",
                        "step.1.en=Cool to 38 °F",
                        "step.1.es=Enfriar a 38 °F",
                        "step.1.minutes=4 h",
                        "step.1.least=24 h",
                        "step.1.most=3 days",
                        "step.1.watch=COOL"));
        typed.putAll(
                fields(
                        "step.2.en=Slice",
                        "step.2.es=Rebanar",
                        "step.2.minutes=1:30",
                        "step.2.hands=15",
                        "step.2.start=on",
                        "step.2.end=on",
                        "use.0.item=beef",
                        "use.0.much=120 g"));
        send(NEW, typed);
    }

    /** A large tablespoon on each sandwich; it stands for four days. */
    private void relish() {
        send(
                NEW,
                fields(
                        "name.en=Relish",
                        "name.es=Encurtido",
                        "unit=GAL",
                        "how=made",
                        "in.0.what=vegetables",
                        "in.0.amount=15 lb",
                        "gives=2 gal",
                        "lot.en=crock",
                        "lot.es=tarro",
                        "per-run=4",
                        "step.0.en=Mix",
                        "step.0.es=Mezclar",
                        "step.0.minutes=1 h",
                        "step.0.start=on",
                        "step.0.end=on",
                        "step.1.en=Stand",
                        "step.1.es=Reposar",
                        "step.1.minutes=4 days",
                        "step.1.watch=MATURE",
                        "dated=0",
                        "use.0.item=beef",
                        "use.0.much=14.8 ml"));
    }

    /** About 6 lb of spice mix make about 30 gallons. */
    private void jus() {
        send(
                NEW,
                fields(
                        "name.en=Jus",
                        "name.es=Jugo",
                        "unit=GAL",
                        "how=made",
                        "life=2",
                        "in.0.what=spice-mix",
                        "in.0.amount=6 lb",
                        "gives=30 gal",
                        "lot.en=kettle",
                        "lot.es=olla",
                        "step.0.en=Boil",
                        "step.0.es=Hervir",
                        "step.0.minutes=2 h",
                        "step.0.start=on",
                        "step.0.end=on",
                        "use.0.item=beef",
                        "use.0.much=1 l"));
    }

    /**
     * The same as by hand in the planner's own test: 180 sandwiches for Thursday 10:30 take 21.6 kg
     * of beef, which are 4.53 pieces of 10.5 lb: five, as four and one. Two runs of 3 1/2 h are 7
     * oven hours; the later one goes in on Tuesday 18:30, because nobody is there in the night, and
     * the other on Tuesday 14:45.
     */
    @Test
    void piecesOvenHoursAndLatestStartsComeOutRight() {
        PrepPlan plan = Planner.plan(ask());
        List<Task> beef = of(plan, "sliced-beef");
        assertEquals(5, beef.stream().mapToInt(Task::lots).sum());
        assertEquals(
                List.of(at("2026-06-09T14:45"), at("2026-06-09T18:30")),
                beef.stream().map(Task::start).toList());
        long ovenMinutes =
                beef.stream()
                        .map(task -> task.steps().get(0))
                        .mapToLong(step -> Duration.between(step.from(), step.until()).toMinutes())
                        .sum();
        assertEquals(7 * 60, ovenMinutes);
        assertEquals(at("2026-06-07T09:30"), of(plan, "relish").get(0).start());
        assertEquals(1, of(plan, "relish").get(0).lots());
        assertEquals(2, of(plan, "jus").stream().mapToInt(Task::lots).sum());
        assertEquals(at("2026-06-11T08:30"), of(plan, "jus").get(0).start());
        Map<String, Long> packs = new LinkedHashMap<>();
        plan.orders().forEach(order -> packs.put(order.ingredient(), order.packs()));
        assertEquals(Map.of("roast", 5L, "spice-mix", 2L), packs);
    }

    @Test
    void theStandsOwnPlanUsesTheRecipeAsSoonAsItIsSaved() {
        String plan = stand.get("/prep").body();
        assertTrue(plan.contains("Sliced beef"), plan);
        assertTrue(stand.get("/prep?lang=es").body().contains("Res rebanada"));
    }

    private PlanAsk ask() {
        Selection sandwich = new Selection("beef", "regular", List.of(), List.of());
        List<DemandFor> demand =
                Usage.of(stand.recipes(), sandwich).entrySet().stream()
                        .map(taken -> sure(taken.getKey(), taken.getValue()))
                        .toList();
        return new PlanAsk(
                stand.recipes(),
                ZONE,
                at("2026-06-05T08:00"),
                List.of(new OpenDay(LocalDate.of(2026, 6, 11), at("2026-06-11T10:30"))),
                demand,
                List.of(),
                List.of(),
                new Terms(Map.of(), Map.of(), 2, 360, LocalTime.of(9, 0)));
    }

    private static DemandFor sure(String ingredient, BigDecimal each) {
        return new DemandFor(ingredient, List.of(180 * each.doubleValue()), List.of(0.0), 0);
    }

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(ZONE).toInstant();
    }

    private static List<Task> of(PrepPlan plan, String ingredient) {
        return plan.tasks().stream().filter(task -> task.makes().equals(ingredient)).toList();
    }
}
