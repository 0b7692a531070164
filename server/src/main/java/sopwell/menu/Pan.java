package sopwell.menu;

import java.util.List;

/**
 * What is kept hot at a station, ready to be used: it empties with each piece that is made there
 * and is refilled. Immutable.
 *
 * @param id letters, digits and hyphens
 * @param station where it stands
 * @param unit what its amounts are counted in, as people read it: g, ml, pieces
 * @param full how much a full pan holds, 1 to {@link sopwell.Limits#PAN_AMOUNT_MAX}
 * @param reheatMinutes how long the next batch takes until it can go on, 0 to {@link
 *     sopwell.Limits#PAN_REHEAT_MINUTES_MAX}
 * @param uses what takes how much from it
 * @param cautions what can hurt at a refill
 */
public record Pan(
        String id,
        LocalText name,
        String station,
        LocalText unit,
        int full,
        int reheatMinutes,
        List<Use> uses,
        List<Caution> cautions) {
    /** What leaves an amount as it is. */
    private static final int HUNDRED_PERCENT = 100;

    public Pan {
        uses = List.copyOf(uses);
        cautions = List.copyOf(cautions);
    }

    /**
     * How much one piece takes. An item without an option is what the item takes by itself, of all
     * sizes or of one; an option adds its amount to that, or makes it so many percent.
     *
     * @param item the item, or empty for every item that the option is chosen on
     * @param size the size, or empty for those that no other use names
     * @param option the modifier, or empty
     * @param amount how much, in the pan's unit; 0 when the use is a percentage
     * @param percent 100 leaves it as it is; 0 when the use is an amount
     */
    public record Use(String item, String size, String option, int amount, int percent) {}

    /** How much one piece takes from the pan, in its unit; 0 when it takes nothing. */
    public int amount(Selection selection) {
        int amount = own(selection);
        for (Use use : uses) {
            if (use.percent() != 0 && isMeant(use, selection)) {
                amount = (amount * use.percent() + HUNDRED_PERCENT / 2) / HUNDRED_PERCENT;
            }
        }
        for (Use use : uses) {
            if (use.percent() == 0 && isMeant(use, selection)) {
                amount += use.amount();
            }
        }
        return amount;
    }

    /** What the item takes by itself: its size's amount, else that of any size. */
    private int own(Selection selection) {
        int any = 0;
        for (Use use : uses) {
            if (use.option().isEmpty() && use.item().equals(selection.item())) {
                if (!use.size().isEmpty() && use.size().equals(selection.size())) {
                    return use.amount();
                }
                any = use.size().isEmpty() ? use.amount() : any;
            }
        }
        return any;
    }

    private static boolean isMeant(Use use, Selection selection) {
        return !use.option().isEmpty()
                && selection.has(use.option())
                && (use.item().isEmpty() || use.item().equals(selection.item()));
    }
}
