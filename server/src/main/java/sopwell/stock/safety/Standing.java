package sopwell.stock.safety;

import java.util.Optional;

/**
 * How things stand by one clock. Immutable.
 *
 * @param byMs when it must be done at the latest, milliseconds since 1970-01-01 UTC; 0 when no time
 *     is set. Failed: when it failed
 * @param target what is to be reached, if anything is
 */
public record Standing(State state, Advice advice, long byMs, Optional<Temperature> target) {
    /** How good or bad it is. */
    public enum State {
        /** There is time enough. */
        FINE,
        /** Something must be done now, or it will be too late. */
        ACT,
        /** It is too late. */
        FAILED,
        /** The clock has nothing more to watch. */
        DONE
    }

    /** What to do before it is too late, or once it is. */
    public enum Advice {
        /** Cool to the middle temperature: ice bath, shallower pans. */
        COOL_MIDDLE,
        /** Cool on to the cold holding temperature. */
        COOL_COLD,
        /** Let it stay as hot inside and measure again. */
        ROAST_HOLD,
        /** It is not hot enough inside for any row of the table. */
        ROAST_ON,
        /** Heat through. */
        REHEAT,
        /** Keep it that hot for the seconds that are asked for. */
        REHEAT_HOLD,
        /** Keep it hot and measure again. */
        HOT_HOLD,
        /** It has got too cool: reheat it. */
        HOT_AGAIN,
        /** Keep it cold and measure again. */
        COLD_HOLD,
        /** It has got too warm: cool it. */
        COLD_AGAIN,
        /** Use it up. */
        USE_UP,
        /** Clean it. */
        CLEAN,
        /** Throw it away. */
        DISCARD,
        /** Nothing. */
        NOTHING
    }

    /** How long is left, in milliseconds; 0 when there is no time set or it is past. */
    public long leftMs(long nowMs) {
        return byMs == 0 ? 0 : Math.max(0, byMs - nowMs);
    }

    static Standing done() {
        return new Standing(State.DONE, Advice.NOTHING, 0, Optional.empty());
    }

    static Standing failed(long atMs) {
        return new Standing(State.FAILED, Advice.DISCARD, atMs, Optional.empty());
    }

    static Standing fine(Advice advice, long byMs, Temperature target) {
        return new Standing(State.FINE, advice, byMs, Optional.of(target));
    }

    static Standing act(Advice advice, long byMs, Temperature target) {
        return new Standing(State.ACT, advice, byMs, Optional.of(target));
    }
}
