package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import sopwell.audit.Who;
import sopwell.call.CallParser;
import sopwell.counter.CallViews;
import sopwell.desk.Answer;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.By;
import sopwell.desk.StandCommand.ForCalendar;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForQueries;
import sopwell.desk.StandCommand.ForTill;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.Question;
import sopwell.kitchen.RemakeReason;
import sopwell.menu.Lang;
import sopwell.money.Discount;
import sopwell.orders.Asked;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.till.TillCommand;

/** Nothing that anybody types becomes a part of a page. */
class HostileTextsTest {
    private static final List<String> PAGES =
            List.of(
                    "/counter",
                    "/pass",
                    "/ready",
                    "/orders",
                    "/boards/line",
                    "/boards/fryer",
                    "/till",
                    "/till/today",
                    "/close",
                    "/prep/calendar",
                    "/mix/today",
                    "/waits/today",
                    "/waits/today/slowest",
                    "/audit",
                    "/outs",
                    "/screens");

    private static final int A_ROUND = 24;

    private final List<Asked> asked =
            CallViews.asked(new CallParser(PageStand.menu()).read("beef dipped hot, fries"));

    @Test
    void whatIsTypedIsShownAsItIsAndMakesNoElementAndNoAttribute() throws Exception {
        List<String> texts = HostileTexts.all();
        assertTrue(texts.size() >= 300, () -> "only " + texts.size());
        Looked plain = look(texts.subList(0, A_ROUND), text -> "word");
        Looked hostile = look(texts, text -> text);
        assertEquals(List.of(), hostile.faults);
        Set<String> more = new TreeSet<>(hostile.made);
        more.removeAll(plain.made);
        assertEquals(Set.of(), more, "elements and attributes that plain words do not make");
        assertTrue(hostile.shown.size() >= 150, () -> "shown as typed: " + hostile.shown.size());
        assertTrue(hostile.pages >= 200, () -> "pages: " + hostile.pages);
    }

    @Test
    void findsWhatWasNotEscaped() {
        Looked looked = new Looked();
        String page = "<p>=1+1</p><b onclick=zq()>x</b><a href='JavaScript:zq()'>y</a>";
        looked.note(Jsoup.parse(page), List.of("=1+1"), "/planted");
        assertTrue(looked.made.contains("b onclick"), looked.made::toString);
        assertEquals(List.of("/planted leads to javascript:zq()"), looked.faults);
        assertEquals(Set.of("=1+1"), looked.shown);
    }

    private Looked look(List<String> texts, UnaryOperator<String> typed) throws Exception {
        Looked looked = new Looked();
        try (PageStand stand = new PageStand()) {
            List<String> round = new ArrayList<>();
            for (int i = 0; i < texts.size(); i++) {
                deeds(stand, typed.apply(texts.get(i)), i).ifPresent(round::add);
                if ((i + 1) % A_ROUND == 0 || i + 1 == texts.size()) {
                    pages(stand, texts, looked);
                    String reason = typed.apply(texts.get(i));
                    round.forEach(
                            order ->
                                    by(
                                            stand,
                                            new ForOrders(
                                                    new OrderCommand.VoidOrder(order, 0, reason))));
                    round.clear();
                }
            }
            for (String text : texts) {
                String find = URLEncoder.encode(typed.apply(text), StandardCharsets.UTF_8);
                looked.page(stand.get("/orders?find=" + find), texts, "/orders?find=");
            }
        }
        return looked;
    }

    /** Everything that a text can be typed into; what is refused is no harm. */
    private Optional<String> deeds(PageStand stand, String text, int i) {
        by(stand, new ForTill(new TillCommand.OpenTill(text, 10_000)));
        by(stand, new ForTill(new TillCommand.PayOut(text, 5, text)));
        by(stand, new ForTill(new TillCommand.PayIn(text, 5, text)));
        String date = LocalDate.of(2026, 11, 28).plusDays(i % 60).toString();
        by(stand, new ForCalendar(new CalendarCommand.AddOccasion(date, text, "+5 %")));
        Answer placed = by(stand, new ForOrders(new OrderCommand.Place(text, true, asked)));
        Optional<String> order =
                placed.events().stream()
                        .map(recorded -> recorded.event())
                        .filter(OrderPlaced.class::isInstance)
                        .map(event -> ((OrderPlaced) event).order())
                        .findFirst();
        order.ifPresent(id -> onOrder(stand, id, text));
        return order;
    }

    private static void onOrder(PageStand stand, String id, String text) {
        Discount off = new Discount(Discount.Kind.GUEST, 5, 0, text);
        by(stand, new ForOrders(new OrderCommand.SetDiscount(id, 0, off)));
        PartId part = new PartId(id, 1, "line");
        by(stand, new ForQueries(new QueryCommand.Ask(part, new Question(List.of(), text))));
        by(stand, new ForKitchen(new KitchenCommand.Start(part)));
        by(
                stand,
                new ForKitchen(
                        new KitchenCommand.Remake(List.of(part), 1, RemakeReason.OTHER, text)));
    }

    private static Answer by(PageStand stand, StandCommand command) {
        return stand.ask(new By(Who.AT_THIS_MACHINE, command));
    }

    private static void pages(PageStand stand, List<String> texts, Looked looked) {
        for (String path : PAGES) {
            looked.page(stand.get(path), texts, path);
        }
        for (String board : List.of("line", "pass", "ready", "counter")) {
            for (Lang lang : Lang.values()) {
                String frame = stand.written(stand.frame(board), lang);
                looked.note(Jsoup.parseBodyFragment(frame), texts, "frame " + board);
            }
        }
    }
}
