package sopwell.kitchen;

import sopwell.menu.Selection;

/**
 * What is to be made. Immutable.
 *
 * @param quantity how many alike, 1 to 99
 * @param toGo whether it leaves the stand
 * @param menuRevision the menu that its words come from
 */
public record Making(Selection selection, int quantity, boolean toGo, String menuRevision) {
    /** Whether a piece of both is made the same way. */
    public boolean isLike(Making other) {
        return of(1).equals(other.of(1));
    }

    /** So many made the same way. */
    public Making of(int pieces) {
        return new Making(selection, pieces, toGo, menuRevision);
    }
}
