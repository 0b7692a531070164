package sopwell.mix;

/**
 * How long guests waited for their orders. Immutable.
 *
 * @param orders how many orders there were, measured or not
 * @param toStarted from the call until work on the first part began, where somebody said so
 * @param toUp from the call to the last part up, of orders that are whole
 * @param onPass from whole to handed
 * @param toHanded from the call to handed
 * @param within orders that were whole within the stand's target
 */
public record GuestWaits(
        int orders,
        WaitSummary toStarted,
        WaitSummary toUp,
        WaitSummary onPass,
        WaitSummary toHanded,
        Share within) {

    /** Counts orders. Not thread-safe: made and read in one go. */
    static final class Counting {
        private final SecondsCount toStarted = new SecondsCount();
        private final SecondsCount toUp = new SecondsCount();
        private final SecondsCount onPass = new SecondsCount();
        private final SecondsCount toHanded = new SecondsCount();
        private int orders;

        void add(WaitTally.OrderWait order) {
            orders++;
            toStarted.add(order.toStarted());
            toUp.add(order.toUp());
            onPass.add(order.upToHanded());
            toHanded.add(order.toHanded());
        }

        GuestWaits counted(int targetSeconds) {
            return new GuestWaits(
                    orders,
                    toStarted.summary(),
                    toUp.summary(),
                    onPass.summary(),
                    toHanded.summary(),
                    toUp.within(targetSeconds));
        }
    }
}
