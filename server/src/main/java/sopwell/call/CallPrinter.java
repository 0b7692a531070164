package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;
import sopwell.menu.Size;

/**
 * Writes lines as the shortest call that says them: only departures from the house's default, and a
 * bundle's word where one fits exactly. Immutable, thread-safe.
 *
 * <p>Law: reading what was printed gives the lines again, for every order that the menu allows and
 * whose text is not over the limit of a call. Where the words of a line would run together into
 * other phrases, slashes stand between them and the item comes first: then each phrase is read by
 * itself and for that item, and the menu's checks see to it that it means one thing there.
 */
public final class CallPrinter {
    private final CallParser parser;
    private final Menu menu;

    /** A printer for the menu of a parser. */
    public CallPrinter(CallParser parser) {
        this.parser = parser;
        this.menu = parser.menu();
    }

    /** The call that says these lines; see {@link #print(List)}. Slow: builds a parser. */
    public static String print(Menu menu, List<Counted> lines) {
        return new CallPrinter(new CallParser(menu)).print(lines);
    }

    /**
     * The call that says these lines, in their order.
     *
     * @param lines selections of this menu; an id that the menu doesn't know is a fault
     */
    public String print(List<Counted> lines) {
        StringBuilder text = new StringBuilder();
        for (Counted line : lines) {
            text.append(text.length() == 0 ? "" : ", ").append(line(line));
        }
        return text.toString();
    }

    private String line(Counted line) {
        String plain = String.join(" ", words(line, false));
        boolean same = parser.read(plain).counted().equals(List.of(line));
        return same ? plain : String.join(" / ", words(line, true));
    }

    /**
     * The phrases of a line.
     *
     * @param itemFirst puts the item before its size, so that nothing is read for another item
     */
    private List<String> words(Counted line, boolean itemFirst) {
        Selection selection = line.selection();
        Item item = menu.item(selection.item());
        List<String> words = new ArrayList<>();
        if (line.quantity() != 1) {
            words.add("" + line.quantity());
        }
        int place = words.size();
        words.add(item.words().get(0));
        if (!selection.size().equals(item.defaultSize())) {
            Optional<Size> size = item.size(selection.size());
            int at = itemFirst ? words.size() : place;
            size.ifPresent(said -> words.add(at, said.words().get(0)));
        }
        for (Group group : menu.groupsOf(item)) {
            addGroup(group, selection, words);
        }
        return words;
    }

    private void addGroup(Group group, Selection selection, List<String> words) {
        Choices choices = Choices.of(group, selection);
        if (!choices.isDefault()) {
            Optional<Bundle> bundle = choices.bundle();
            if (bundle.isPresent()) {
                words.add(bundle.get().words().get(0));
            } else {
                choices.chosen().forEach(option -> words.add(option.words().get(0)));
            }
        }
        for (Option option : choices.refused()) {
            menu.speech().no().stream().limit(1).forEach(words::add);
            words.add(option.words().get(0));
        }
    }
}
