package sopwell.boards;

import java.util.List;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.OrderStage;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PartState;
import sopwell.menu.LocalText;

/**
 * One order on the pass. Immutable.
 *
 * @param order the order's id
 * @param digit the key that works this row, 1 to 9, kept while it is whole and there; 0 for none
 * @param stage how far it is; {@link OrderStage#UP} means whole, {@link OrderStage#HANDED} that it
 *     can still be brought back
 * @param pieces how many pieces it has in all
 * @param dueCents what is due on it; negative when money is due back
 * @param placedAtMs since when its guest waits, milliseconds since 1970-01-01 UTC
 * @param wholeAtMs when its last part came up, or 0
 * @param calls how often its number was called since it is whole
 * @param calledAtMs when it was called last, or 0
 * @param bags in how many bags it is, or 0 when nobody has counted
 * @param allergens what it contains, as the menu names it
 */
public record PassRow(
        String order,
        int digit,
        int number,
        String name,
        boolean toGo,
        OrderStage stage,
        int pieces,
        long dueCents,
        List<PassPart> parts,
        long placedAtMs,
        long wholeAtMs,
        int calls,
        long calledAtMs,
        int bags,
        List<String> allergens)
        implements Row {
    public PassRow {
        allergens = List.copyOf(allergens);
        parts = List.copyOf(parts);
    }

    /**
     * One part of the order as the pass sees it.
     *
     * @param station the station's name
     * @param words what departs from the house's way, and refusals
     * @param done made, with nothing unseen
     * @param cancelled taken off the order after it was begun
     * @param asked its station waits for an answer from the counter
     * @param sinceMs since when it is in this state: ordered, begun or up, milliseconds since
     *     1970-01-01 UTC
     */
    public record PassPart(
            PartId part,
            LocalText station,
            int quantity,
            LocalText item,
            List<CellWord> words,
            PartState state,
            boolean done,
            boolean cancelled,
            boolean asked,
            long sinceMs) {
        public PassPart {
            words = List.copyOf(words);
        }
    }

    @Override
    public String rowId() {
        return order;
    }

    PassRow withDigit(int key) {
        return new PassRow(
                order,
                key,
                number,
                name,
                toGo,
                stage,
                pieces,
                dueCents,
                parts,
                placedAtMs,
                wholeAtMs,
                calls,
                calledAtMs,
                bags,
                allergens);
    }
}
