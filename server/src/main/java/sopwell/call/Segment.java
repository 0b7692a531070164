package sopwell.call;

import java.util.List;
import sopwell.call.Span.Role;
import sopwell.menu.Item;

/**
 * The pieces of one line of a call. Immutable.
 *
 * @param item what the line is about: its first item, or null
 * @param end the token after it: a separator, an "and", or the end of the text
 */
record Segment(List<Piece> pieces, Item item, int end) {
    /** Whether it holds more than words that mean nothing. */
    boolean saysSomething() {
        for (Piece piece : pieces) {
            if (!piece.is(Role.SKIP)) {
                return true;
            }
        }
        return false;
    }

    /** Whether it is about this one item and the item takes all of it. */
    boolean isClean(Item about) {
        int items = 0;
        for (Piece piece : pieces) {
            if (!piece.fits()) {
                return false;
            }
            if (piece.is(Role.ITEM)) {
                items++;
            }
        }
        return items == 1 && item.equals(about);
    }

    /** Whether it holds nothing but modifiers that the line before it can take, for certain. */
    boolean isMoreOf(Segment before) {
        boolean choices = false;
        for (Piece piece : pieces) {
            boolean choice = piece.is(Role.OPTION) || piece.is(Role.BUNDLE) || piece.is(Role.SIZE);
            if (!piece.fits() || !(choice || piece.is(Role.NO) || piece.is(Role.SKIP))) {
                return false;
            }
            choices |= choice;
        }
        return choices && (!before.refuses() || pieces.get(0).is(Role.NO));
    }

    /** How many pieces are unknown or not for its item. */
    int misfits() {
        int count = 0;
        for (Piece piece : pieces) {
            count += piece.fits() ? 0 : 1;
        }
        return count;
    }

    /** Whether it holds an "and" and a refusal, which may or may not reach beyond the "and". */
    boolean isUnclear() {
        boolean and = false;
        for (Piece piece : pieces) {
            and |= piece.is(Role.SKIP) && piece.phrase() == null;
        }
        return and && refuses();
    }

    private boolean refuses() {
        for (Piece piece : pieces) {
            if (piece.is(Role.NO)) {
                return true;
            }
        }
        return false;
    }
}
