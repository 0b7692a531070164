package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import sopwell.call.Said.Choice;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;

/** Finds the words that may follow. Local to one call. */
final class Live {
    private final Menu menu;
    private final int column;

    Live(Menu menu, int column) {
        this.menu = menu;
        this.column = column;
    }

    /** Whether an item takes everything that a line without an item says. */
    static boolean takesAll(Item item, Segment segment) {
        for (Piece piece : segment.pieces()) {
            if (piece.phrase() != null && piece.phrase().about(item) == null) {
                return false;
            }
        }
        return true;
    }

    /** At the beginning of a line. */
    LiveWords fresh(List<String> allItems) {
        List<String> none = List.of();
        return new LiveWords(column, "", allItems, none, none, none, true, false, false);
    }

    /** On a line that has no item yet. */
    LiveWords withoutItem(Segment segment, Said said) {
        List<String> items = new ArrayList<>();
        List<String> options = new ArrayList<>();
        for (Item item : menu.items()) {
            if (takesAll(item, segment)) {
                items.add(item.id());
                if (said.openNo()) {
                    addRefusable(item, said, options);
                }
            }
        }
        List<String> none = List.of();
        boolean quantity = said.quantities().isEmpty() && !said.openNo();
        List<String> live = said.openNo() ? none : items;
        return new LiveWords(column, "", live, none, options, none, quantity, false, false);
    }

    /**
     * On a line about an item.
     *
     * @param whole whether the line could end here and another could follow
     */
    LiveWords about(Said said, boolean whole) {
        Item item = said.item();
        List<String> refusable = new ArrayList<>();
        addRefusable(item, said, refusable);
        List<String> none = List.of();
        if (said.openNo()) {
            return new LiveWords(
                    column, item.id(), none, none, refusable, none, false, false, false);
        }
        List<String> sizes = new ArrayList<>();
        if (said.sizes().isEmpty()) {
            for (Size size : item.sizes()) {
                sizes.add(size.id());
            }
        }
        List<String> options = new ArrayList<>();
        List<String> bundles = new ArrayList<>();
        List<Choice> wanted = said.wanted();
        for (Group group : menu.groupsOf(item)) {
            addChoices(group, said, wanted, options, bundles);
        }
        return new LiveWords(
                column,
                item.id(),
                none,
                sizes,
                options,
                bundles,
                false,
                !refusable.isEmpty(),
                whole);
    }

    private static void addChoices(
            Group group,
            Said said,
            List<Choice> wanted,
            List<String> options,
            List<String> bundles) {
        int count = 0;
        for (Choice choice : wanted) {
            count += choice.group().equals(group.id()) ? 1 : 0;
        }
        boolean emptied = isEmptied(group, said);
        for (Option option : group.options()) {
            boolean open = Said.find(wanted, option.id()) == null && !said.refuses(option.id());
            if (open && !emptied && count < group.chooseMax()) {
                options.add(option.id());
            }
        }
        for (Bundle bundle : group.bundles()) {
            int fresh = 0;
            for (String option : bundle.options()) {
                boolean open = Said.find(wanted, option) == null && !said.refuses(option);
                fresh += open ? 1 : 0;
            }
            boolean none = bundle.options().isEmpty();
            boolean live =
                    none
                            ? count == 0 && group.chooseMin() == 0
                            : fresh > 0 && count + fresh <= group.chooseMax();
            if (live && !emptied) {
                bundles.add(bundle.id());
            }
        }
    }

    private static boolean isEmptied(Group group, Said said) {
        for (Piece none : said.nones()) {
            if (none.meaning().group().equals(group.id())) {
                return true;
            }
        }
        return false;
    }

    private void addRefusable(Item item, Said said, List<String> into) {
        for (Group group : menu.groupsOf(item)) {
            for (Option option : group.options()) {
                String id = option.id();
                boolean open = !said.refuses(id) && Said.find(said.alone(), id) == null;
                if (open && !emptiesBundle(said, id) && !into.contains(id)) {
                    into.add(id);
                }
            }
        }
    }

    /** Whether nothing would be left of a bundle that was said. */
    private static boolean emptiesBundle(Said said, String option) {
        for (Piece bundle : said.bundles()) {
            boolean left = false;
            for (String in : bundle.meaning().options()) {
                left |= !in.equals(option) && !said.refuses(in);
            }
            if (!left) {
                return true;
            }
        }
        return false;
    }
}
