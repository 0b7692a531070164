package sopwell.web.pages;

import java.util.Optional;
import java.util.function.Supplier;
import sopwell.access.AccessState;
import sopwell.access.Device;
import sopwell.access.Person;
import sopwell.access.ProgramToken;
import sopwell.audit.Who;
import sopwell.web.T;

/**
 * Who somebody was, in words: names come from what is kept of people just now, so that those who
 * were erased have none. Thread-safe.
 */
final class WhoWords {
    private final Supplier<AccessState> state;

    WhoWords(Supplier<AccessState> state) {
        this.state = state;
    }

    /** Who it was, and as what. */
    String who(Who who, T t) {
        if (!who.person().isEmpty()) {
            return t.of("audit.who.as", person(who.person(), t), t.under("role", who.role()));
        }
        if (!who.token().isEmpty()) {
            return t.of("audit.who.program", token(who.token(), t));
        }
        return t.get(who.role().isEmpty() ? "audit.who.nobody" : "audit.who.here");
    }

    /** Where it was, or nothing when that is no device that was paired. */
    String where(Who who, T t) {
        return who.device().isEmpty() ? "" : device(who.device(), t);
    }

    /** A person's name, or that they have left. */
    String person(String id, T t) {
        return state.get().people().stream()
                .filter(person -> person.id().equals(id))
                .map(Person::name)
                .findFirst()
                .filter(name -> !name.isEmpty())
                .orElseGet(() -> t.get("audit.who.left"));
    }

    String device(String id, T t) {
        return name(
                state.get().devices().stream()
                        .filter(device -> device.id().equals(id))
                        .map(Device::name)
                        .findFirst(),
                id,
                t);
    }

    String token(String id, T t) {
        return name(
                state.get().tokens().stream()
                        .filter(token -> token.id().equals(id))
                        .map(ProgramToken::name)
                        .findFirst(),
                id,
                t);
    }

    /** What is no longer kept has its id alone. */
    private static String name(Optional<String> name, String id, T t) {
        return name.filter(one -> !one.isEmpty()).orElseGet(() -> t.of("audit.gone", id));
    }
}
