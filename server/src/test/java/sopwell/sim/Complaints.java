package sopwell.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What the validator found wrong. Belongs to one thread. */
final class Complaints {
    private final List<Complaint> all = new ArrayList<>();

    /** One thing that does not hold. */
    record Complaint(Invariant invariant, String says) {
        @Override
        public String toString() {
            return invariant + ": " + says;
        }
    }

    /** Something must hold; {@code whom} is written out only if it does not. */
    void that(boolean holds, Invariant invariant, String says, Object whom) {
        if (!holds) {
            all.add(new Complaint(invariant, says + " " + whom));
        }
    }

    /** Two things must be equal; {@code whom} is written out only if they are not. */
    void same(Object expected, Object found, Invariant invariant, String what, Object whom) {
        if (!Objects.equals(expected, found)) {
            all.add(
                    new Complaint(
                            invariant, what + " " + whom + " is " + found + ", not " + expected));
        }
    }

    List<Complaint> all() {
        return List.copyOf(all);
    }
}
