package sopwell.access;

import java.util.List;
import java.util.Optional;
import sopwell.Limits;

/** What may stand against a change of the roster. Stateless and pure. */
final class RosterRules {
    private RosterRules() {}

    static boolean isName(String name) {
        return !name.isBlank() && name.strip().length() <= Limits.NAME_CHARS_MAX;
    }

    static Optional<Refused> badName(String name) {
        return isName(name)
                ? Optional.empty()
                : Optional.of(Refused.of(Refused.Why.NAME_FORM, Limits.NAME_CHARS_MAX));
    }

    /**
     * Only an owner makes an owner, and of them there are few.
     *
     * @param before the role that somebody has; null for somebody new
     */
    static Optional<Refused> badRole(AccessState state, Actor by, Role before, Role role) {
        if (role != Role.OWNER || before == Role.OWNER) {
            return Optional.empty();
        }
        if (by.role() != Role.OWNER) {
            return Optional.of(Refused.of(Refused.Why.OWNERS_ONLY));
        }
        long owners =
                state.people().stream().filter(p -> p.role() == Role.OWNER && !p.ended()).count();
        return owners >= AccessLimits.OWNERS_MAX
                ? Optional.of(Refused.of(Refused.Why.TOO_MANY, AccessLimits.OWNERS_MAX))
                : Optional.empty();
    }

    static Optional<Refused> noPasswordHere(Person person) {
        return person.role().hasPassword()
                ? Optional.empty()
                : Optional.of(Refused.of(Refused.Why.ROLE_WITHOUT_PASSWORD));
    }

    static Optional<Refused> notLastOwner(AccessState state, Person person) {
        return isLastOwner(state, person)
                ? Optional.of(Refused.of(Refused.Why.LAST_OWNER))
                : Optional.empty();
    }

    static boolean isLastOwner(AccessState state, Person person) {
        List<Person> owners = state.owners();
        return owners.size() == 1 && owners.get(0).id().equals(person.id());
    }

    static <A> Outcome<A> noPassword() {
        return Outcome.not(
                Refused.Why.PASSWORD_FORM,
                AccessLimits.PASSWORD_CHARS_MIN,
                AccessLimits.PASSWORD_CHARS_MAX);
    }
}
