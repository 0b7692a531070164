package sopwell.access;

/**
 * What a program shows instead of a person's session. Immutable.
 *
 * @param id such as {@code t1}
 * @param name which program it is for
 * @param role what it may do, without ever being asked for a password
 * @param tokenHash the token's SHA-256
 * @param madeAtMs when it was made
 * @param ended whether it no longer works
 */
public record ProgramToken(
        String id, String name, Role role, String tokenHash, long madeAtMs, boolean ended) {
    ProgramToken gone() {
        return new ProgramToken(id, name, role, "", madeAtMs, true);
    }
}
