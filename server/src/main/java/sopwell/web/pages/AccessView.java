package sopwell.web.pages;

import java.util.List;
import sopwell.access.AccessLimits;
import sopwell.access.AccessState;
import sopwell.access.Device;
import sopwell.access.Person;
import sopwell.access.ProgramToken;
import sopwell.access.Role;
import sopwell.access.Use;

/** Who may do what, for its page: those who are still let in. Immutable. */
public record AccessView(AccessState state) {
    /** The roles that somebody who works here can be given. */
    public List<Role> roles() {
        return List.of(Role.LINE, Role.COUNTER, Role.LEAD, Role.OWNER);
    }

    /** The roles that a program can be given. */
    public List<Role> programRoles() {
        return List.of(Role.values());
    }

    /** What a screen can be for. */
    public List<Use> uses() {
        return List.of(Use.values());
    }

    /** Everybody who works here. */
    public List<Person> people() {
        return state.people().stream().filter(person -> !person.ended()).toList();
    }

    /** Those who no longer work here and whose names are still kept. */
    public List<Person> left() {
        return state.people().stream()
                .filter(person -> person.ended() && !person.name().isEmpty())
                .toList();
    }

    /** Every screen that is let in. */
    public List<Device> devices() {
        return state.devices().stream().filter(device -> !device.ended()).toList();
    }

    /** Every program that is let in. */
    public List<ProgramToken> tokens() {
        return state.tokens().stream().filter(token -> !token.ended()).toList();
    }

    /** Whether somebody typed wrongly so often that a lead or owner must unlock them. */
    public boolean isLocked(Person person) {
        return state.tries().entrySet().stream()
                .filter(one -> one.getKey().startsWith(person.id() + "@"))
                .anyMatch(one -> one.getValue().count() >= AccessLimits.SECRET_TRIES_HARD_MAX);
    }
}
