package sopwell.web.api;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.Stand;
import sopwell.kitchen.WaitQuote;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.money.Discount;
import sopwell.money.Totals;
import sopwell.orders.Asked;
import sopwell.orders.OrderLine;
import sopwell.orders.OrderRules;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Languages;
import sopwell.web.Reply;

/** Reads and prices a call; nothing is placed. Thread-safe. */
final class CallApi {
    private final ApiContext context;

    CallApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> read(Ask ask) throws BadJson, Refused {
        Menu menu = context.follower().menu();
        Fields fields = ask.fields();
        List<Asked> asked = LinesReader.read(fields, context, menu, ask.text());
        fields.nothingElse();
        Lang lang = Languages.of(ask.exchange());
        return context.follower()
                .ask(stand -> reply(stand, menu, asked, lang, context.clock().millis()));
    }

    private static Reply reply(Stand stand, Menu menu, List<Asked> asked, Lang lang, long nowMs) {
        List<OrderLine> lines = new java.util.ArrayList<>();
        for (Asked line : asked) {
            lines.add(OrderLine.priced(menu, lines.size() + 1, line));
        }
        Totals totals = OrderRules.totals(lines, Discount.NONE, stand.settings().tax());
        return Reply.json(
                200,
                json ->
                        OrderJson.reading(
                                json,
                                lines,
                                totals,
                                WaitQuote.quote(stand.kitchen(), menu, lines, nowMs),
                                new OrderJson.Said(menu, lang)));
    }
}
