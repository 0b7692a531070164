package sopwell.access;

import java.util.Set;

/**
 * Who a request comes from, and what they may do just now. Immutable.
 *
 * @param kind by what they are known
 * @param personId who is signed in, or empty
 * @param deviceId at which device, or empty
 * @param tokenId by which program's token, or empty
 * @param role the person's or program's role; null for a device alone and for nobody
 * @param rights what they may do
 * @param passwordUntilMs how long the password counts as just typed
 */
public record Actor(
        Kind kind,
        String personId,
        String deviceId,
        String tokenId,
        Role role,
        Set<Right> rights,
        long passwordUntilMs) {
    /** By what somebody is known. */
    public enum Kind {
        /** By nothing. */
        NOBODY,
        /** By being at a stand that is open to everybody at its machine. */
        OPEN,
        /** By the device alone. */
        DEVICE,
        /** By a session. */
        PERSON,
        /** By a program's token. */
        PROGRAM
    }

    /** For those of whom no password is asked. */
    private static final long ALWAYS = Long.MAX_VALUE;

    /** Somebody whom nothing is known of. */
    public static final Actor NOBODY =
            new Actor(Kind.NOBODY, "", "", "", null, Set.of(Right.OPEN), 0);

    /** Whoever is at the machine of an open stand. */
    public static final Actor ANYBODY =
            new Actor(Kind.OPEN, "", "", "", Role.OWNER, AccessRules.rights(Role.OWNER), ALWAYS);

    public Actor {
        rights = Set.copyOf(rights);
    }

    static Actor of(Device device) {
        return new Actor(
                Kind.DEVICE, "", device.id(), "", null, AccessRules.rights(device.use()), 0);
    }

    static Actor of(Person person, Device device, long passwordUntilMs) {
        return new Actor(
                Kind.PERSON,
                person.id(),
                device.id(),
                "",
                person.role(),
                AccessRules.rights(person.role(), device.use()),
                passwordUntilMs);
    }

    static Actor of(ProgramToken token) {
        return new Actor(
                Kind.PROGRAM,
                "",
                "",
                token.id(),
                token.role(),
                AccessRules.rights(token.role()),
                ALWAYS);
    }

    /** Whether this is among what they may do, be it after typing a password. */
    public boolean may(Right right) {
        return rights.contains(right);
    }

    /**
     * Whether they may, but must type their password first; so also when it would count for longer
     * than any does, because the clock was set back since.
     */
    public boolean mustProve(Right right, long nowMs) {
        boolean isFresh =
                passwordUntilMs == ALWAYS
                        || (nowMs < passwordUntilMs
                                && passwordUntilMs - nowMs <= AccessLimits.PASSWORD_FRESH_MILLIS);
        return right.needsPassword() && !isFresh;
    }

    /** The id that a log names: the person's, else the program's, else the device's; or empty. */
    public String id() {
        if (!personId.isEmpty()) {
            return personId;
        }
        return tokenId.isEmpty() ? deviceId : tokenId;
    }
}
