package sopwell.kitchen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Pricing;
import sopwell.menu.Selection;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderLine;

/** The answers that a question allows, and what each makes of its line. Stateless. */
public final class Answers {
    private Answers() {}

    /**
     * One possible answer.
     *
     * @param options what is chosen of the group, perhaps nothing
     * @param asOrdered whether the line is like this already
     * @param moreCents what the line costs more with it, before tax; negative when less
     */
    public record Choice(List<String> options, LocalText name, boolean asOrdered, long moreCents) {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /**
     * The choices that a query leaves, what is ordered first. None when it asks about no options,
     * or about options that the line no longer takes.
     */
    public static List<Choice> of(Menu menu, Query query, OrderLine line) {
        List<String> asked = query.question().options();
        if (asked.isEmpty() || !asked.stream().allMatch(menu::hasOption)) {
            return List.of();
        }
        Map<List<String>, LocalText> names = new LinkedHashMap<>();
        Group group = menu.groupOf(asked.get(0));
        for (Option option : group.options()) {
            if (asked.contains(option.id())) {
                names.put(List.of(option.id()), option.name());
            }
        }
        for (Bundle bundle : group.bundles()) {
            if (asked.containsAll(bundle.options())) {
                names.putIfAbsent(bundle.options(), bundle.name());
            }
        }
        List<Choice> choices = new ArrayList<>();
        names.forEach(
                (options, name) ->
                        altered(menu, query, line, options)
                                .map(wanted -> choice(menu, line, options, name, wanted))
                                .ifPresent(choices::add));
        choices.sort((one, other) -> Boolean.compare(other.asOrdered(), one.asOrdered()));
        return choices;
    }

    /** The line with this of the group that was asked about, or empty when that can't be. */
    static Optional<Selection> altered(
            Menu menu, Query query, OrderLine line, List<String> options) {
        List<String> asked = query.question().options();
        Selection now = line.selection();
        if (asked.isEmpty() || !menu.hasOption(asked.get(0))) {
            return Optional.empty();
        }
        Group group = menu.groupOf(asked.get(0));
        if (!ids(group).containsAll(options)) {
            return Optional.empty();
        }
        Wish before = Wishes.asked(menu, now);
        List<String> wanted = new ArrayList<>(before.options());
        wanted.removeAll(ids(group));
        wanted.addAll(options);
        List<String> emptied = new ArrayList<>(before.emptied());
        emptied.remove(group.id());
        if (options.isEmpty()) {
            emptied.add(group.id());
        }
        List<String> refused = new ArrayList<>(before.refused());
        refused.removeAll(options);
        Wish wish = new Wish(now.item(), now.size(), wanted, emptied, refused);
        return Wishes.fault(menu, wish).isEmpty()
                ? Optional.of(Wishes.select(menu, wish))
                : Optional.empty();
    }

    /** The edit that makes one line another way and leaves the others. */
    static OrderCommand.Change change(
            Order order, int number, Selection wanted, QueryCommand.Answer answer) {
        List<Asked> lines =
                order.lines().stream()
                        .map(
                                line ->
                                        new Asked(
                                                line.quantity(),
                                                line.line() == number ? wanted : line.selection()))
                        .toList();
        return new OrderCommand.Change(
                order.id(), order.version(), order.name(), order.toGo(), lines, answer.text());
    }

    private static Choice choice(
            Menu menu, OrderLine line, List<String> options, LocalText name, Selection wanted) {
        boolean asOrdered = wanted.equals(line.selection());
        long moreCents =
                asOrdered
                        ? 0
                        : (Pricing.unitCents(menu, wanted) - line.unitCents()) * line.quantity();
        return new Choice(options, name, asOrdered, moreCents);
    }

    static List<String> ids(Group group) {
        return group.options().stream().map(Option::id).toList();
    }
}
