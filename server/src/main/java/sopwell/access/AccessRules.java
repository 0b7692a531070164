package sopwell.access;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Who may do what: each role's rights, each device's rights while nobody is signed in, and the
 * right that each route asks for. A route without a rule is refused to everybody. Stateless.
 */
public final class AccessRules {
    /** What each role may do beyond the role before it. */
    private static final Map<Role, Set<Right>> MORE =
            Map.of(
                    Role.WATCH,
                    Set.of(Right.OPEN, Right.WATCH),
                    Role.LINE,
                    Set.of(
                            Right.ENTER,
                            Right.LOOK_READY,
                            Right.LOOK_BOARDS,
                            Right.WORK_LINE,
                            Right.LOOK_PREP,
                            Right.PREP),
                    Role.COUNTER,
                    Set.of(Right.TAKE_ORDERS, Right.TAKE_MONEY, Right.VOID),
                    Role.LEAD,
                    Set.of(
                            Right.SEE_FIGURES,
                            Right.SEE_MONEY,
                            Right.CLOSE_DAY,
                            Right.MONEY_OUT,
                            Right.REFUND,
                            Right.VOID_PAID,
                            Right.REOPEN_DAY,
                            Right.SETTINGS,
                            Right.ACCESS),
                    Role.OWNER,
                    Set.of(Right.CHANGE_PRICES));

    private static final Map<Role, Set<Right>> BY_ROLE = byRole();

    private static final Map<Use, Set<Right>> BY_USE =
            Map.of(
                    Use.LINE,
                    Set.of(
                            Right.OPEN,
                            Right.ENTER,
                            Right.LOOK_READY,
                            Right.LOOK_BOARDS,
                            Right.WORK_LINE,
                            Right.LOOK_PREP),
                    Use.GUESTS,
                    Set.of(Right.OPEN, Right.ENTER, Right.LOOK_READY),
                    Use.COUNTER,
                    Set.of(Right.OPEN),
                    Use.OFFICE,
                    Set.of(Right.OPEN));

    /** Made once, because each request of somebody who is signed in asks for it. */
    private static final Map<Role, Map<Use, Set<Right>>> BY_BOTH = byBoth();

    private AccessRules() {}

    /** What a role may do. */
    public static Set<Right> rights(Role role) {
        return BY_ROLE.get(role);
    }

    /** What a device may do while nobody is signed in at it. */
    public static Set<Right> rights(Use use) {
        return BY_USE.get(use);
    }

    /** What somebody may do at a device: both together. */
    static Set<Right> rights(Role role, Use use) {
        return BY_BOTH.get(role).get(use);
    }

    /**
     * The right that a route asks for.
     *
     * @param template the path with its parameters in braces
     * @return empty for a route that has no rule, which nobody may take then
     */
    public static Optional<Right> right(String method, String template) {
        return Optional.ofNullable(RouteRules.TABLE.get(method + " " + template));
    }

    /** Every route that has a rule, as {@code METHOD template}, in order. */
    public static Set<String> routes() {
        return new TreeSet<>(RouteRules.TABLE.keySet());
    }

    private static Map<Role, Set<Right>> byRole() {
        Map<Role, Set<Right>> all = new EnumMap<>(Role.class);
        Set<Right> so = EnumSet.noneOf(Right.class);
        for (Role role : Role.values()) {
            so.addAll(MORE.get(role));
            all.put(role, Set.copyOf(so));
        }
        return all;
    }

    private static Map<Role, Map<Use, Set<Right>>> byBoth() {
        Map<Role, Map<Use, Set<Right>>> all = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            Map<Use, Set<Right>> at = new EnumMap<>(Use.class);
            for (Use use : Use.values()) {
                Set<Right> both = EnumSet.copyOf(rights(role));
                both.addAll(rights(use));
                at.put(use, Set.copyOf(both));
            }
            all.put(role, at);
        }
        return all;
    }
}
