package sopwell.audit;

import java.util.List;
import sopwell.Check;

/**
 * Who did something, by ids alone: whose they are is kept beside the log, so that it can be
 * forgotten. Immutable.
 *
 * @param person the person's id, or empty
 * @param device the device's id, or empty
 * @param token the id of the program's token, or empty
 * @param role what they were there as: one of {@link #ROLES}, or empty when nobody was signed in
 */
public record Who(String person, String device, String token, String role) {
    /** The roles that there are, by how much they may do. */
    public static final List<String> ROLES = List.of("watch", "line", "counter", "lead", "owner");

    /** Whoever sits at a stand that is open to everybody at its machine. */
    public static final Who AT_THIS_MACHINE = new Who("", "", "", "owner");

    public Who {
        Check.that(role.isEmpty() || ROLES.contains(role), "a role is one of the list");
    }
}
