package sopwell.orders;

import java.util.List;

/**
 * A command that the stand's rules don't allow. Nothing was changed. Immutable.
 *
 * @param args what the sentence names, as {@link Reason} says
 */
public record Refusal(Reason reason, List<String> args) {
    public Refusal {
        args = List.copyOf(args);
    }

    /** A refusal with what its sentence names. */
    public static Refusal of(Reason reason, Object... args) {
        return new Refusal(reason, java.util.Arrays.stream(args).map(Object::toString).toList());
    }
}
