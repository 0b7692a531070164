package sopwell.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.call.CallRefusal;
import sopwell.call.Reading;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Wish;
import sopwell.menu.WishFault;
import sopwell.menu.Wishes;
import sopwell.orders.Asked;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.T;

/** Reads what is ordered, as a call or as lines, against the menu in force. Stateless. */
final class LinesReader {
    private LinesReader() {}

    /** The lines that a body asks for: {@code call} or {@code lines}, one of them. */
    static List<Asked> read(Fields fields, ApiContext context, Menu menu, T text)
            throws BadJson, Refused {
        boolean call = fields.has("call");
        boolean lines = fields.has("lines");
        if (call == lines) {
            throw new Refused(Problem.of(ProblemKind.CALL_OR_LINES, text));
        }
        return call
                ? call(fields.text("call"), context, menu, text)
                : lines(fields.objects("lines"), menu, text);
    }

    private static List<Asked> call(String call, ApiContext context, Menu menu, T text)
            throws Refused {
        Reading reading = context.parser().apply(menu).read(call);
        if (reading.refusal().isPresent()) {
            throw new Refused(problem(reading.refusal().get(), menu, text));
        }
        return reading.lines().stream()
                .map(line -> new Asked(line.quantity(), line.selection()))
                .toList();
    }

    private static Problem problem(CallRefusal refusal, Menu menu, T text) {
        return new Problem(
                422,
                ProblemKind.code(refusal.why()),
                text.sentence(refusal, menu),
                new Problem.CallPlace(refusal.column(), refusal.length(), refusal.suggestions()));
    }

    private static List<Asked> lines(List<Fields> lines, Menu menu, T text)
            throws BadJson, Refused {
        List<Asked> asked = new ArrayList<>();
        for (Fields line : lines) {
            String item = line.text("item");
            String size = line.text("size", "");
            int quantity = line.has("quantity") ? line.number("quantity") : 1;
            List<String> modifiers = line.texts("modifiers");
            List<String> without = line.texts("without");
            line.nothingElse();
            if (modifiers.size() + without.size() > Limits.LINE_MODIFIERS_MAX) {
                throw new Refused(
                        Problem.of(
                                ProblemKind.TOO_MANY_MODIFIERS, text, Limits.LINE_MODIFIERS_MAX));
            }
            Wish wish = wish(menu, item, size, modifiers, without);
            Optional<WishFault> fault = Wishes.fault(menu, wish);
            if (fault.isPresent()) {
                throw new Refused(problem(fault.get(), asked.size() + 1, text));
            }
            asked.add(new Asked(quantity, Wishes.select(menu, wish)));
        }
        return asked;
    }

    /** A modifier may be an option or a bundle; a bundle stands for its options, or for none. */
    private static Wish wish(
            Menu menu, String item, String size, List<String> modifiers, List<String> without) {
        List<String> options = new ArrayList<>();
        List<String> emptied = new ArrayList<>();
        for (String modifier : modifiers) {
            Optional<GroupBundle> bundle = bundle(menu, item, modifier);
            if (bundle.isEmpty()) {
                options.add(modifier);
            } else if (bundle.get().bundle().options().isEmpty()) {
                emptied.add(bundle.get().group().id());
            } else {
                options.addAll(bundle.get().bundle().options());
            }
        }
        options.removeIf(option -> without.contains(option) && !modifiers.contains(option));
        return new Wish(item, size, options, emptied, without);
    }

    private record GroupBundle(Group group, Bundle bundle) {}

    private static Optional<GroupBundle> bundle(Menu menu, String itemId, String id) {
        if (!menu.hasItem(itemId)) {
            return Optional.empty();
        }
        Item item = menu.item(itemId);
        for (Group group : menu.groupsOf(item)) {
            for (Bundle bundle : group.bundles()) {
                if (bundle.id().equals(id)) {
                    return Optional.of(new GroupBundle(group, bundle));
                }
            }
        }
        return Optional.empty();
    }

    private static Problem problem(WishFault fault, int line, T text) {
        return Problem.of(
                422,
                fault.why(),
                text.of("wish." + fault.why(), line, fault.first(), fault.second()));
    }
}
