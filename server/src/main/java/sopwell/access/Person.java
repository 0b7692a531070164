package sopwell.access;

/**
 * Somebody who works here. Immutable.
 *
 * @param id such as {@code s3}; never given to somebody else
 * @param name what the others call them; empty once it was erased
 * @param pinHash the PIN's hash, or empty while there is none
 * @param passwordHash the password's hash, or empty while there is none
 * @param ended whether they no longer get in
 * @param endedAtMs since when, milliseconds since 1970-01-01 UTC; 0 while they do, or unknown
 */
public record Person(
        String id,
        String name,
        Role role,
        String pinHash,
        String passwordHash,
        boolean ended,
        long endedAtMs) {
    /** Somebody new, who has neither PIN nor password yet. */
    static Person fresh(String id, String name, Role role) {
        return new Person(id, name, role, "", "", false, 0);
    }

    public boolean hasPin() {
        return !pinHash.isEmpty();
    }

    public boolean hasPassword() {
        return !passwordHash.isEmpty();
    }

    Person withName(String other) {
        return new Person(id, other, role, pinHash, passwordHash, ended, endedAtMs);
    }

    /** With another role; a password that the role does not have goes with the old one. */
    Person withRole(Role other) {
        String password = other.hasPassword() ? passwordHash : "";
        return new Person(id, name, other, pinHash, password, ended, endedAtMs);
    }

    Person withPin(String hash) {
        return new Person(id, name, role, hash, passwordHash, ended, endedAtMs);
    }

    Person withPassword(String hash) {
        return new Person(id, name, role, pinHash, hash, ended, endedAtMs);
    }

    /** No longer working here; nothing secret stays. */
    Person gone(long atMs) {
        return new Person(id, name, role, "", "", true, atMs);
    }
}
