package sopwell.access;

import java.util.Optional;

/**
 * What came of asking for something: what was asked for, or why not. Immutable.
 *
 * @param value there when it was done
 * @param refused there when it was not
 */
public record Outcome<A>(Optional<A> value, Optional<Refused> refused) {
    static <A> Outcome<A> done(A value) {
        return new Outcome<>(Optional.of(value), Optional.empty());
    }

    static <A> Outcome<A> not(Refused.Why why, Object... args) {
        return not(Refused.of(why, args));
    }

    static <A> Outcome<A> not(Refused refused) {
        return new Outcome<>(Optional.empty(), Optional.of(refused));
    }

    public boolean isDone() {
        return value.isPresent();
    }
}
