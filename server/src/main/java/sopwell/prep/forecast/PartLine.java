package sopwell.prep.forecast;

import java.util.BitSet;

/** A modifier, or a size of an item: a share of the items on which it was ever sold. */
final class PartLine {
    private final Shares shares = new Shares(0, 0);
    private final BitSet items = new BitSet();
    private int daysSinceSold;

    /** The items on which it was ever sold. */
    BitSet items() {
        return items;
    }

    Shares shares() {
        return shares;
    }

    int daysSinceSold() {
        return daysSinceSold;
    }

    /**
     * Takes in a day.
     *
     * @param some pieces of it
     * @param of pieces of its items while it could be had
     */
    void learn(int weekday, double some, double of) {
        daysSinceSold = some > 0 ? 0 : daysSinceSold + 1;
        if (of > 0) {
            shares.judge(weekday, some, of);
            shares.learn(weekday, some, of);
        }
    }
}
