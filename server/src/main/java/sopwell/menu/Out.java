package sopwell.menu;

import java.util.Optional;
import sopwell.Check;

/**
 * Something of the menu that can't be sold now, or of which few are left. Immutable.
 *
 * @param kind what it is
 * @param item the item's id; empty for an option, which is out wherever it is asked for
 * @param id the size's or the option's id; empty for an item
 */
public record Out(Kind kind, String item, String id) {
    /** What can be out. */
    public enum Kind {
        /** An item, in every size. */
        ITEM,
        /** One size of one item. */
        SIZE,
        /** A modifier, on every item. */
        OPTION
    }

    public Out {
        Check.that(item.isEmpty() == (kind == Kind.OPTION), "an item and a size are of an item");
        Check.that(id.isEmpty() == (kind == Kind.ITEM), "a size and an option have an id");
    }

    /** An item that is out. */
    public static Out item(String item) {
        return new Out(Kind.ITEM, item, "");
    }

    /** A size that is out. */
    public static Out size(String item, String size) {
        return new Out(Kind.SIZE, item, size);
    }

    /** A modifier that is out. */
    public static Out option(String option) {
        return new Out(Kind.OPTION, "", option);
    }

    /** Whether a selection needs it. */
    public boolean isIn(Selection selection) {
        return switch (kind) {
            case ITEM -> selection.item().equals(item);
            case SIZE -> selection.item().equals(item) && selection.size().equals(id);
            case OPTION -> selection.options().contains(id);
        };
    }

    /** Whether a menu has it. */
    public boolean isOn(Menu menu) {
        return switch (kind) {
            case ITEM -> menu.hasItem(item);
            case SIZE -> menu.hasItem(item) && menu.item(item).size(id).isPresent();
            case OPTION -> menu.hasOption(id);
        };
    }

    /** How it is written: {@code item:fries}, {@code size:beef.large}, {@code option:hot}. */
    @Override
    public String toString() {
        return switch (kind) {
            case ITEM -> "item:" + item;
            case SIZE -> "size:" + item + "." + id;
            case OPTION -> "option:" + id;
        };
    }

    /** What was written so, if it was. */
    public static Optional<Out> read(String written) {
        int colon = written.indexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        String what = written.substring(colon + 1);
        int point = what.indexOf('.');
        boolean two = point > 0 && point < what.length() - 1;
        if (what.isEmpty()) {
            return Optional.empty();
        }
        return switch (written.substring(0, colon)) {
            case "item" -> Optional.of(item(what));
            case "size" ->
                    two
                            ? Optional.of(size(what.substring(0, point), what.substring(point + 1)))
                            : Optional.empty();
            case "option" -> Optional.of(option(what));
            default -> Optional.empty();
        };
    }
}
