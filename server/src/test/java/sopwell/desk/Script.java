package sopwell.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sopwell.call.CallParser;
import sopwell.call.Reading;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PassCommand;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.StationCommand;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.money.CashRule;
import sopwell.money.TaxRule;
import sopwell.orders.Asked;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OutCommand;
import sopwell.orders.Reason;
import sopwell.orders.Safety;
import sopwell.orders.StandSettings;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.stock.PanCommand;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.stock.recipes.RecipeParts;
import sopwell.storage.MenuReader;
import sopwell.storage.RecipeReader;
import sopwell.storage.RecipeWriter;
import sopwell.till.TillCommand;

/**
 * A stand without a desk: commands are decided and applied one by one at a time of our choosing.
 */
public final class Script {
    /** The demo stand's settings, with an invented tax rate. */
    public static final StandSettings SETTINGS =
            new StandSettings(
                    "millrace",
                    "Millrace Lunch Counter",
                    ZoneId.of("America/Chicago"),
                    4,
                    new TaxRule(8_250),
                    360,
                    999,
                    CashRule.USUAL,
                    Safety.USUAL);

    private final StandSettings settings;
    private final Menu menu;
    private final CallParser parser;
    private final List<Recorded> log = new ArrayList<>();
    private final Stand stand;
    private long nowMs;

    /** A stand with the demo's menu on a Wednesday at noon. */
    public Script() {
        this(SETTINGS);
    }

    /** A stand with the demo's menu and other settings on a Wednesday at noon. */
    public Script(StandSettings settings) {
        this(settings, demoMenu());
    }

    /** A stand with this menu on a Wednesday at noon. */
    public Script(StandSettings settings, Menu menu) {
        this.settings = settings;
        this.menu = menu;
        this.parser = new CallParser(menu);
        this.stand = new Stand(settings);
        at("2026-01-14T12:00");
        keep(List.of(new MenuAdopted(menu)));
    }

    /** The demo's menu. */
    public static Menu demoMenu() {
        try (InputStream in = MenuReader.class.getResourceAsStream("/demo/menu.json")) {
            return MenuReader.read(in.readAllBytes()).menu().orElseThrow();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The demo's book of recipes, and the same for a kitchen that is never open. */
    public static List<RecipeBook> demoRecipes() {
        try (InputStream in = RecipeReader.class.getResourceAsStream("/demo/recipes.json")) {
            RecipeBook book = RecipeReader.read(in.readAllBytes(), demoMenu()).book().orElseThrow();
            RecipeParts parts = book.parts();
            RecipeParts closed =
                    new RecipeParts(
                            parts.ingredients(),
                            parts.recipes(),
                            parts.uses(),
                            parts.resources(),
                            RecipeParts.none().hours());
            return List.of(book, RecipeWriter.book(closed));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Moves the clock to a local time of the stand. */
    public Script at(String local) {
        nowMs = LocalDateTime.parse(local).atZone(settings.zone()).toInstant().toEpochMilli();
        return this;
    }

    /** Moves the clock on. */
    public Script later(int seconds) {
        nowMs += seconds * 1000L;
        return this;
    }

    /** Moves the clock to a moment, milliseconds since 1970-01-01 UTC. */
    public Script atMs(long atMs) {
        nowMs = atMs;
        return this;
    }

    public Stand stand() {
        return stand;
    }

    public Menu menu() {
        return menu;
    }

    public long nowMs() {
        return nowMs;
    }

    /** Every event so far. */
    public List<Recorded> log() {
        return List.copyOf(log);
    }

    /** What a call asks for; the call must be right. */
    public List<Asked> asked(String call) {
        Reading reading = parser.read(call);
        if (reading.refusal().isPresent()) {
            throw new AssertionError(call + ": " + reading.refusal().get());
        }
        return reading.lines().stream()
                .map(line -> new Asked(line.quantity(), line.selection()))
                .toList();
    }

    /** Places an order to go and returns it. */
    public Order place(String call) {
        return place(call, "", true);
    }

    /** Places an order and returns it. */
    public Order place(String call, String name, boolean toGo) {
        return place(new OrderCommand.Place(name, toGo, asked(call)));
    }

    /** Places an order and returns it. */
    public Order place(OrderCommand.Place place) {
        must(place);
        return stand.orders().openNewestFirst().iterator().next();
    }

    /** Edits an order to be this call. */
    public Decision change(Order order, String call) {
        return decide(
                new OrderCommand.Change(
                        order.id(),
                        order.version(),
                        order.name(),
                        order.toGo(),
                        asked(call),
                        "guest changed their mind"));
    }

    /** The order as it is now. */
    public Order now(Order order) {
        return stand.orders().find(order.id()).orElseThrow();
    }

    /** A part of an order as it is now. */
    public Part part(Order order, int line, String station) {
        return stand.kitchen().find(new PartId(order.id(), line, station)).orElseThrow();
    }

    /** Puts up everything of an order that is not up. */
    public void allUp(Order order) {
        List<Part> parts = new ArrayList<>(stand.kitchen().parts(order.id()));
        parts.sort(Comparator.comparingInt(part -> stand.kitchen().feeding(part).size()));
        for (Part part : parts) {
            if (part.isUnseen()) {
                must(new KitchenCommand.Seen(part.id()));
            }
            if (!part.cancelled() && !part.isDone()) {
                must(new KitchenCommand.Up(part.id()));
            }
        }
    }

    /** Decides and keeps. */
    public Decision decide(OrderCommand command) {
        return decide(new StandCommand.ForOrders(command));
    }

    /** Decides and keeps. */
    public Decision decide(KitchenCommand command) {
        return decide(new StandCommand.ForKitchen(command));
    }

    /** Decides and keeps. */
    public Decision decide(StationCommand command) {
        return decide(new StandCommand.ForStations(command));
    }

    /** Decides and keeps. */
    public Decision decide(OutCommand command) {
        return decide(new StandCommand.ForOuts(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(OutCommand command) {
        must(decide(command));
    }

    /** Decides and keeps. */
    public Decision decide(TillCommand command) {
        return decide(new StandCommand.ForTill(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(TillCommand command) {
        must(decide(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(OrderCommand command) {
        must(decide(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(KitchenCommand command) {
        must(decide(command));
    }

    /** Decides and keeps. */
    public Decision decide(QueryCommand command) {
        return decide(new StandCommand.ForQueries(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(QueryCommand command) {
        must(decide(command));
    }

    /** Decides and keeps. */
    public Decision decide(PassCommand command) {
        return decide(new StandCommand.ForPass(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(PassCommand command) {
        must(decide(command));
    }

    /** Decides and keeps. */
    public Decision decide(PanCommand command) {
        return decide(new StandCommand.ForPans(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(PanCommand command) {
        must(decide(command));
    }

    /** Decides and keeps. */
    public Decision decide(LarderCommand command) {
        return decide(new StandCommand.ForLarder(command));
    }

    /** Decides and keeps; the command must be accepted. */
    public void must(LarderCommand command) {
        must(decide(command));
    }

    /** This book of recipes takes effect. */
    public Script recipes(RecipeBook book) {
        keep(List.of(new RecipeEvent.RecipesAdopted(book)));
        return this;
    }

    /** The reason of a refusal. */
    public static Reason reason(Decision decision) {
        return decision.refusal().orElseThrow().reason();
    }

    /** What the rules say to something about coming days; accepted, it has happened. */
    public Decision decide(CalendarCommand command) {
        return decide(new StandCommand.ForCalendar(command));
    }

    /** Decides and keeps. */
    public Decision decide(StandCommand command) {
        Decision decision = StandRules.decide(stand, command, nowMs);
        keep(decision.events());
        return decision;
    }

    private static void must(Decision decision) {
        if (decision.isRefused()) {
            throw new AssertionError(decision.refusal().get().toString());
        }
    }

    private void keep(List<Event> events) {
        for (Event event : events) {
            Recorded recorded = new Recorded(log.size() + 1L, nowMs, "k" + log.size(), 0, event);
            log.add(recorded);
            stand.apply(recorded);
        }
    }
}
