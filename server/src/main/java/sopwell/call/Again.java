package sopwell.call;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sopwell.Limits;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;

/**
 * "Same again, but dry": an earlier order's lines once more, with changes. Stateless.
 *
 * <p>What is said after "but" changes every line that takes it, and leaves the others as they were;
 * of each line, only the groups that it speaks of.
 */
public final class Again {
    /** What means "the same once more", in lower case; house words, which no menu has to name. */
    public static final List<String> WORDS =
            List.of("again", "same again", "same", "otra vez", "lo mismo", "igual");

    /** What comes before the changes and means nothing itself. */
    private static final List<String> BUT = List.of("but", "and", "pero", "y");

    private Again() {}

    /**
     * What was asked to be had again.
     *
     * @param number the order's number, or 0 for the last order
     * @param but the changes, as they were said; empty for none
     */
    public record Wanted(int number, String but) {}

    /**
     * What came of it: the call, or why not. Immutable.
     *
     * @param refusal what is wrong with the changes; its places are those in the text of the
     *     changes
     */
    public record Outcome(String call, Optional<CallRefusal> refusal) {}

    /** Whether a text asks for something again, and what. */
    public static Optional<Wanted> read(String text) {
        String said = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Optional<String> phrase =
                WORDS.stream()
                        .filter(one -> said.equals(one) || said.startsWith(one + " "))
                        .reduce((a, b) -> a.length() >= b.length() ? a : b);
        if (phrase.isEmpty()) {
            return Optional.empty();
        }
        Deque<String> words =
                new ArrayDeque<>(
                        List.of(said.substring(phrase.get().length()).strip().split(" ", -1)));
        int number = 0;
        int digits = String.valueOf(Limits.ORDER_NUMBER_MAX).length();
        if (words.peek().matches("#?[0-9]{1," + digits + "},?")) {
            number = Integer.parseInt(words.remove().replaceAll("[#,]", ""));
        }
        if (!words.isEmpty() && BUT.contains(words.peek().replace(",", ""))) {
            words.remove();
        }
        return Optional.of(new Wanted(number, String.join(" ", words)));
    }

    /** The call that says these lines with those changes. */
    public static Outcome with(CallParser parser, List<Counted> lines, String but) {
        if (but.isBlank()) {
            return new Outcome(new CallPrinter(parser).print(lines), Optional.empty());
        }
        List<Counted> changed = new ArrayList<>();
        Optional<CallRefusal> fault = Optional.empty();
        boolean taken = false;
        for (Counted line : lines) {
            String item = parser.menu().item(line.selection().item()).words().get(0);
            Reading reading = parser.read(item + " " + but);
            if (reading.refusal().isEmpty() && reading.lines().size() == 1) {
                changed.add(changed(parser.menu(), line, reading.lines().get(0)));
                taken = true;
            } else {
                changed.add(line);
                fault = fault.or(() -> placed(reading, item.length() + 1));
            }
        }
        return taken
                ? new Outcome(new CallPrinter(parser).print(changed), Optional.empty())
                : new Outcome("", fault);
    }

    /** The refusal with its places in the text of the changes alone. */
    private static Optional<CallRefusal> placed(Reading reading, int before) {
        return reading.refusal()
                .map(
                        r ->
                                new CallRefusal(
                                        r.why(),
                                        Math.max(1, r.column() - before),
                                        r.length(),
                                        r.args(),
                                        r.suggestions(),
                                        0,
                                        0));
    }

    private static Counted changed(Menu menu, Counted line, CallLine said) {
        Selection old = line.selection();
        Selection fresh = said.selection();
        Item item = menu.item(old.item());
        boolean sized = item.sizes().stream().anyMatch(size -> said.said().contains(size.id()));
        List<String> options = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (Group group : menu.groupsOf(item)) {
            Selection from = speaksOf(said, group) ? fresh : old;
            Set<String> ids = group.options().stream().map(Option::id).collect(Collectors.toSet());
            from.options().stream().filter(ids::contains).forEach(options::add);
            from.refused().stream().filter(ids::contains).forEach(refused::add);
        }
        String size = sized ? fresh.size() : old.size();
        return new Counted(line.quantity(), new Selection(old.item(), size, options, refused));
    }

    private static boolean speaksOf(CallLine said, Group group) {
        return group.options().stream().anyMatch(option -> said.said().contains(option.id()))
                || group.bundles().stream().anyMatch(b -> said.said().contains(b.id()));
    }
}
