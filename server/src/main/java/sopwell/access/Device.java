package sopwell.access;

/**
 * A screen or machine that was let in once with a code. Immutable.
 *
 * @param id such as {@code d2}
 * @param name where it stands
 * @param tokenHash the SHA-256 of what it shows to be known again
 * @param pairedAtMs when it was let in
 * @param ended whether it no longer gets in
 */
public record Device(
        String id, String name, Use use, String tokenHash, long pairedAtMs, boolean ended) {
    Device gone() {
        return new Device(id, name, use, "", pairedAtMs, true);
    }
}
