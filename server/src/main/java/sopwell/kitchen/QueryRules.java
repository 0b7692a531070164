package sopwell.kitchen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.Group;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.orders.Deciding;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.OrderLine;
import sopwell.orders.OrderRules;
import sopwell.orders.Orders;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;

/**
 * What stations may ask and what the counter may answer. An answer that makes the line another way
 * is an edit of the order and the answer in one decision. Stateless and pure: looks, never changes.
 */
public final class QueryRules {
    private QueryRules() {}

    /** The events that a command comes to, or why it is refused. */
    public static Decision decide(
            Kitchen kitchen, Orders orders, QueryCommand command, Deciding with) {
        return switch (command.kind()) {
            case ASK -> ask(kitchen, orders, (QueryCommand.Ask) command);
            case ANSWER -> answer(kitchen, orders, (QueryCommand.Answer) command, with);
        };
    }

    /**
     * The open queries that an edit answers by itself: whoever changed what was asked about, or
     * anything of a line that was asked about as a whole, has answered.
     */
    public static List<QueryEvent> answeredBy(Kitchen kitchen, Order before, OrderChanged changed) {
        List<QueryEvent> answers = new ArrayList<>();
        for (Part part : kitchen.parts(changed.order())) {
            Optional<Query> query = kitchen.queries().openOn(part.id());
            Optional<OrderLine> old = line(before.lines(), part.id().line());
            Optional<OrderLine> now = line(changed.lines(), part.id().line());
            if (query.isEmpty() || old.isEmpty() || now.isEmpty()) {
                continue;
            }
            Question question = query.get().question();
            boolean answered =
                    question.options().isEmpty()
                            ? !old.get().equals(now.get())
                            : !chosen(kitchen, before, question, old.get())
                                    .equals(chosen(kitchen, before, question, now.get()));
            if (answered) {
                answers.add(new QueryEvent.QueryAnswered(query.get().id(), true, ""));
            }
        }
        return answers;
    }

    private static Decision ask(Kitchen kitchen, Orders orders, QueryCommand.Ask ask) {
        Decision closed = KitchenRules.closed(kitchen, orders, ask.part());
        if (closed.isRefused()) {
            return closed;
        }
        Part part = kitchen.find(ask.part()).orElseThrow();
        if (part.cancelled()) {
            return Decision.refused(Reason.PART_CANCELLED);
        }
        if (part.state() == PartState.UP) {
            return Decision.refused(Reason.ALREADY_UP);
        }
        if (kitchen.queries().openOn(part.id()).isPresent()) {
            return Decision.refused(Reason.QUERY_OPEN, part.number());
        }
        Optional<Refusal> fault =
                Texts.question(ask.question().text())
                        .or(() -> optionsFault(kitchen, part, ask.question().options()));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        return Decision.accepted(
                new QueryEvent.QueryAsked(kitchen.queries().next(part.id()), ask.question()));
    }

    /** A question is about options of one group that the station itself works with. */
    private static Optional<Refusal> optionsFault(
            Kitchen kitchen, Part part, List<String> options) {
        List<Group> groups =
                Cells.groups(
                        kitchen.menu(part.making().menuRevision()),
                        part.making(),
                        part.id().station());
        boolean fits =
                options.isEmpty()
                        || groups.stream()
                                .anyMatch(group -> Answers.ids(group).containsAll(options));
        return fits
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.QUESTION_WRONG, String.join(", ", options)));
    }

    private static Decision answer(
            Kitchen kitchen, Orders orders, QueryCommand.Answer answer, Deciding with) {
        Optional<Query> found = kitchen.queries().find(answer.query());
        if (found.isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_QUERY, answer.query());
        }
        Query query = found.get();
        Order order = orders.find(query.id().part().order()).orElseThrow();
        switch (query.state()) {
            case ANSWERED -> {
                return Decision.refused(Reason.QUERY_ANSWERED, order.number());
            }
            case LAPSED -> {
                return Decision.refused(Reason.QUERY_LAPSED, order.number());
            }
            case OPEN -> {}
        }
        Optional<Refusal> fault = Texts.answer(answer.text());
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        OrderLine line = line(order.lines(), query.id().part().line()).orElseThrow();
        if (answer.options().isEmpty()) {
            return Decision.accepted(answered(answer, false));
        }
        List<String> options = answer.options().get();
        Optional<Selection> wanted =
                Answers.altered(kitchen.menu(order.menuRevision()), query, line, options);
        if (wanted.isEmpty()) {
            return Decision.refused(Reason.ANSWER_WRONG, String.join(", ", options));
        }
        if (wanted.get().equals(line.selection())) {
            return Decision.accepted(answered(answer, false));
        }
        Decision change =
                OrderRules.decide(
                        orders, Answers.change(order, line.line(), wanted.get(), answer), with);
        return change.isRefused()
                ? change
                : Decision.accepted(answered(answer, true)).after(change.events());
    }

    private static QueryEvent answered(QueryCommand.Answer answer, boolean changed) {
        return new QueryEvent.QueryAnswered(answer.query(), changed, answer.text());
    }

    private static Optional<OrderLine> line(List<OrderLine> lines, int number) {
        return lines.stream().filter(line -> line.line() == number).findFirst();
    }

    private static Set<String> chosen(
            Kitchen kitchen, Order order, Question question, OrderLine line) {
        Menu menu = kitchen.menu(order.menuRevision());
        Set<String> chosen = new HashSet<>(line.selection().options());
        chosen.retainAll(Answers.ids(menu.groupOf(question.options().get(0))));
        return chosen;
    }
}
