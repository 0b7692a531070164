package sopwell.call;

import java.util.List;
import sopwell.call.Span.Role;

/**
 * One thing that a phrase can mean. Immutable.
 *
 * @param id the item, size, option or bundle; empty for the small words
 * @param group the group of an option or bundle; otherwise empty
 * @param options what an option or bundle stands for: itself, or the bundle's options
 * @param number the value of a number word; otherwise 0
 */
record Meaning(Role role, String id, String group, List<String> options, int number) {
    static Meaning of(Role role, String id) {
        return new Meaning(role, id, "", List.of(), 0);
    }

    static Meaning number(int number) {
        return new Meaning(Role.QUANTITY, "", "", List.of(), number);
    }

    /** Whether it says "none" of its group. */
    boolean none() {
        return role == Role.BUNDLE && options.isEmpty();
    }
}
