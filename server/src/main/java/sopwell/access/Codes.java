package sopwell.access;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Finds constants by their fixed names. Stateless. */
final class Codes {
    private Codes() {}

    static <E extends Enum<E>> Optional<E> find(E[] all, String code) {
        return Arrays.stream(all)
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(code))
                .findFirst();
    }
}
