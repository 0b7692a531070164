package sopwell.mix;

import sopwell.menu.LocalText;

/**
 * How long the parts of one station, or of one item, took, and where that time went. Immutable.
 *
 * @param id the station's or the item's id
 * @param parts how many parts there were, measured or not
 * @param pieces how many pieces they were
 * @param toUp from the call to up
 * @param within parts that were up within the stand's target
 * @param forHands from the call to the first tap that work began: waiting for hands
 * @param beingMade from that tap to up
 * @param onPass from up to handed: waiting on the pass
 * @param spent where the time of those went that were handed
 */
public record PartWaits(
        String id,
        LocalText name,
        int parts,
        int pieces,
        WaitSummary toUp,
        Share within,
        WaitSummary forHands,
        WaitSummary beingMade,
        WaitSummary onPass,
        Spent spent) {
    /**
     * The time between call and hand, added up over parts, in seconds. Immutable.
     *
     * @param untold before up, of parts of which nobody said when they were begun: waiting for
     *     hands or being made, nobody knows
     */
    public record Spent(long forHands, long beingMade, long untold, long onPass) {
        static final Spent NOTHING = new Spent(0, 0, 0, 0);

        /** All of it. */
        public long all() {
            return forHands + beingMade + untold + onPass;
        }

        Spent plus(WaitTally.PartWait part) {
            int onPassToo = part.upToHanded();
            if (onPassToo == WaitTally.UNKNOWN) {
                return this;
            }
            return part.toStarted() == WaitTally.UNKNOWN
                    ? new Spent(forHands, beingMade, untold + part.toUp(), onPass + onPassToo)
                    : new Spent(
                            forHands + part.toStarted(),
                            beingMade + part.startedToUp(),
                            untold,
                            onPass + onPassToo);
        }
    }

    /** Counts parts. Not thread-safe: made and read in one go. */
    static final class Counting {
        private final SecondsCount toUp = new SecondsCount();
        private final SecondsCount forHands = new SecondsCount();
        private final SecondsCount beingMade = new SecondsCount();
        private final SecondsCount onPass = new SecondsCount();
        private Spent spent = Spent.NOTHING;
        private int parts;
        private int pieces;

        void add(WaitTally.PartWait part) {
            parts++;
            pieces += part.pieces();
            toUp.add(part.toUp());
            forHands.add(part.toStarted());
            beingMade.add(part.startedToUp());
            onPass.add(part.upToHanded());
            spent = spent.plus(part);
        }

        PartWaits counted(String id, LocalText name, int targetSeconds) {
            return new PartWaits(
                    id,
                    name,
                    parts,
                    pieces,
                    toUp.summary(),
                    toUp.within(targetSeconds),
                    forHands.summary(),
                    beingMade.summary(),
                    onPass.summary(),
                    spent);
        }
    }
}
