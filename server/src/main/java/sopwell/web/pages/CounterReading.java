package sopwell.web.pages;

import java.util.List;
import java.util.Optional;
import sopwell.call.CallParser;
import sopwell.call.Reading;
import sopwell.counter.CallView;
import sopwell.counter.CallViews;
import sopwell.desk.Stand;
import sopwell.kitchen.WaitQuote;
import sopwell.menu.Menu;
import sopwell.money.CardNumber;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.Quote;
import sopwell.orders.Refusal;
import sopwell.web.T;

/** Reads a call for the counter's page, prices it and asks what the stand says. Thread-safe. */
final class CounterReading {
    private final PageContext context;

    CounterReading(PageContext context) {
        this.context = context;
    }

    /**
     * The reading of a text.
     *
     * @param edited the order that is edited, or empty; what it had, it may keep
     * @param pressed whether it is to be placed now, so that what is unfinished is a fault
     */
    CallView view(String text, String edited, boolean pressed, T t)
            throws PageHandling.Interrupted {
        if (CardNumber.isIn(text)) {
            return CallViews.withCard(t.phrases());
        }
        CallParser parser = context.parser().get();
        Reading reading = parser.read(text);
        CallViews views = new CallViews(parser, t.phrases(), context.settings().tax());
        List<OrderLine> priced = views.priced(reading);
        Said said = said(parser.menu(), priced, CallViews.asked(reading), edited);
        CallView view = views.of(text, reading, pressed, said.shortage());
        return priced.isEmpty() ? view : view.withQuote(t.quote(said.quote()));
    }

    /** What the stand says to lines as things are now. */
    private record Said(Quote quote, Optional<Refusal> shortage) {}

    private Said said(Menu menu, List<OrderLine> lines, List<Asked> asked, String order)
            throws PageHandling.Interrupted {
        long nowMs = context.clock().millis();
        return PageHandling.await(
                context.follower()
                        .ask(
                                (Stand s) ->
                                        new Said(
                                                WaitQuote.quote(s.kitchen(), menu, lines, nowMs),
                                                s.selling()
                                                        .shortage(had(s, order), asked, nowMs))));
    }

    private static List<OrderLine> had(Stand stand, String order) {
        return stand.orders().find(order).map(Order::lines).orElse(List.of());
    }
}
