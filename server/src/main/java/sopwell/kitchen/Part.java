package sopwell.kitchen;

import java.util.Optional;

/**
 * One part on its way. Immutable.
 *
 * @param number the order's number
 * @param name the guest's name, or empty
 * @param before what it was before a change that the station has not seen yet
 * @param again that pieces of it are made again
 * @param cancelled begun, then taken off the order; stays in sight until it is seen
 * @param placedAtMs since when its guest waits for it, milliseconds since 1970-01-01 UTC
 * @param tappedAtMs when somebody first said that work began, or 0 when nobody has: what goes up
 *     unannounced was begun nobody knows when
 * @param startedAtMs when the work that is now in hand, or was put up last, began, or 0
 * @param upAtMs when it was put up, or 0
 */
public record Part(
        PartId id,
        int number,
        String name,
        Making making,
        Optional<Making> before,
        Optional<Again> again,
        boolean cancelled,
        long placedAtMs,
        long tappedAtMs,
        long startedAtMs,
        long upAtMs) {

    static Part fresh(PartId id, int number, String name, Making making, long atMs) {
        return new Part(
                id, number, name, making, Optional.empty(), Optional.empty(), false, atMs, 0, 0, 0);
    }

    /** How many pieces are to be made. */
    public int pieces() {
        return again.map(Again::toMake).orElse(making.quantity());
    }

    /** How far it is. */
    public PartState state() {
        if (upAtMs != 0) {
            return PartState.UP;
        }
        return startedAtMs != 0 ? PartState.STARTED : PartState.WAITING;
    }

    /** Whether the station has something to say "seen" to. */
    public boolean isUnseen() {
        return cancelled || before.isPresent();
    }

    /** Whether it is made and nothing about it is open. */
    public boolean isDone() {
        return state() == PartState.UP && !isUnseen();
    }

    /** The same work, for a guest who has waited since then. */
    Part since(long takenAtMs) {
        return new Part(
                id,
                number,
                name,
                making,
                before,
                again,
                cancelled,
                takenAtMs,
                tappedAtMs,
                startedAtMs,
                upAtMs);
    }

    Part started(long atMs) {
        return new Part(
                id,
                number,
                name,
                making,
                before,
                again,
                cancelled,
                placedAtMs,
                tappedAtMs == 0 ? atMs : tappedAtMs,
                atMs,
                0);
    }

    Part up(long atMs) {
        return with(before, cancelled, startedAtMs == 0 ? atMs : startedAtMs, atMs);
    }

    Part broughtBack() {
        return with(before, cancelled, startedAtMs, 0);
    }

    Part seen() {
        return with(Optional.empty(), cancelled, startedAtMs, upAtMs);
    }

    Part cancelledNow() {
        return with(before, true, startedAtMs, upAtMs);
    }

    /** Pieces made again: they alone when all are up, else among those that are being made. */
    Part again(int pieces, RemakeReason reason) {
        boolean up = state() == PartState.UP;
        Again next = new Again(pieces, up ? pieces : pieces(), reason);
        long started = up ? 0 : startedAtMs;
        return new Part(
                id,
                number,
                name,
                making,
                before,
                Optional.of(next),
                cancelled,
                placedAtMs,
                tappedAtMs,
                started,
                0);
    }

    /** Made another way from now on; what was up is work again. */
    Part changed(Making now, String newName) {
        Making first = before.orElse(making);
        Optional<Making> unseen = first.equals(now) ? Optional.empty() : Optional.of(first);
        return new Part(
                id,
                number,
                newName,
                now,
                unseen,
                Optional.empty(),
                false,
                placedAtMs,
                tappedAtMs,
                startedAtMs,
                0);
    }

    /** The same work under what the order says now. */
    Part refitted(Making now, String newName) {
        return new Part(
                id,
                number,
                newName,
                now,
                before,
                again,
                cancelled,
                placedAtMs,
                tappedAtMs,
                startedAtMs,
                upAtMs);
    }

    private Part with(
            Optional<Making> newBefore, boolean newCancelled, long newStarted, long newUp) {
        return new Part(
                id,
                number,
                name,
                making,
                newBefore,
                again,
                newCancelled,
                placedAtMs,
                tappedAtMs,
                newStarted,
                newUp);
    }
}
