package sopwell.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * All that is kept about access. Ended people, devices and tokens stay in the lists without their
 * secrets, so that no id is ever given twice. Immutable.
 *
 * @param sessions those that were not ended when this was kept
 * @param tries by what {@link Access} calls the place where they were made
 */
public record AccessState(
        List<Person> people,
        List<Device> devices,
        List<ProgramToken> tokens,
        List<Session> sessions,
        Map<String, Tries> tries) {
    /** Nobody and nothing. */
    public static final AccessState EMPTY =
            new AccessState(List.of(), List.of(), List.of(), List.of(), Map.of());

    public AccessState {
        people = List.copyOf(people);
        devices = List.copyOf(devices);
        tokens = List.copyOf(tokens);
        sessions = List.copyOf(sessions);
        tries = Map.copyOf(tries);
    }

    /** Somebody who still works here. */
    public Optional<Person> person(String id) {
        return find(people, p -> p.id().equals(id) && !p.ended());
    }

    /** A device that is still let in. */
    public Optional<Device> device(String id) {
        return find(devices, d -> d.id().equals(id) && !d.ended());
    }

    /** A program's token that still works. */
    public Optional<ProgramToken> token(String id) {
        return find(tokens, t -> t.id().equals(id) && !t.ended());
    }

    /** Owners who can sign in with a password. */
    public List<Person> owners() {
        return people.stream()
                .filter(p -> p.role() == Role.OWNER && p.hasPassword() && !p.ended())
                .toList();
    }

    AccessState with(Person person) {
        return new AccessState(
                put(people, person, p -> p.id().equals(person.id())),
                devices,
                tokens,
                sessions,
                tries);
    }

    AccessState with(Device device) {
        return new AccessState(
                people,
                put(devices, device, d -> d.id().equals(device.id())),
                tokens,
                sessions,
                tries);
    }

    AccessState with(ProgramToken token) {
        return new AccessState(
                people,
                devices,
                put(tokens, token, t -> t.id().equals(token.id())),
                sessions,
                tries);
    }

    AccessState withSessions(List<Session> others) {
        return new AccessState(people, devices, tokens, others, tries);
    }

    AccessState withTries(Map<String, Tries> others) {
        return new AccessState(people, devices, tokens, sessions, others);
    }

    private static <A> Optional<A> find(List<A> all, Predicate<A> wanted) {
        return all.stream().filter(wanted).findFirst();
    }

    private static <A> List<A> put(List<A> all, A one, Predicate<A> same) {
        List<A> other = new ArrayList<>();
        boolean found = false;
        for (A old : all) {
            found |= same.test(old);
            other.add(same.test(old) ? one : old);
        }
        if (!found) {
            other.add(one);
        }
        return other;
    }
}
