package sopwell.web.pages;

import java.util.ArrayList;
import java.util.List;
import sopwell.call.CallLine;
import sopwell.call.CallParser;
import sopwell.call.Reading;
import sopwell.counter.CallView;
import sopwell.counter.CallViews;
import sopwell.desk.Stand;
import sopwell.kitchen.WaitQuote;
import sopwell.menu.Menu;
import sopwell.menu.Pricing;
import sopwell.orders.Asked;
import sopwell.orders.OrderLine;
import sopwell.orders.Quote;
import sopwell.web.T;

/** Reads a call for the counter's page, prices it and finds the wait. Thread-safe. */
final class CounterReading {
    private final PageContext context;

    CounterReading(PageContext context) {
        this.context = context;
    }

    /** What the guest asked for, of a reading without fault. */
    static List<Asked> asked(Reading reading) {
        return reading.lines().stream()
                .map(line -> new Asked(line.quantity(), line.selection()))
                .toList();
    }

    /**
     * The reading of a text.
     *
     * @param pressed whether it is to be placed now, so that what is unfinished is a fault
     */
    CallView view(String text, boolean pressed, T t) throws PageHandling.Interrupted {
        CallParser parser = context.parser().get();
        Reading reading = parser.read(text);
        CallView view =
                new CallViews(parser, t.phrases(), context.settings().tax())
                        .of(text, reading, pressed);
        return reading.lines().isEmpty()
                ? view
                : view.withQuote(t.quote(quote(parser.menu(), reading)));
    }

    private Quote quote(Menu menu, Reading reading) throws PageHandling.Interrupted {
        List<OrderLine> lines = new ArrayList<>();
        for (CallLine line : reading.lines()) {
            long unitCents = Pricing.unitCents(menu, line.selection());
            int number = lines.size() + 1;
            lines.add(new OrderLine(number, line.quantity(), line.selection(), unitCents));
        }
        return PageHandling.await(
                context.follower().ask((Stand s) -> WaitQuote.quote(s.kitchen(), menu, lines)));
    }
}
