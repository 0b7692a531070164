package sopwell.boards;

import sopwell.kitchen.PartId;
import sopwell.menu.LocalText;

/**
 * What a row waits for at another station. Immutable.
 *
 * @param part the part that goes into the row's
 * @param what the step that it is made by
 * @param station where
 * @param begun whether work on it has begun
 * @param expectedMs when it is expected to be up, milliseconds since 1970-01-01 UTC; 0 when it
 *     can't be said
 */
public record RowWait(
        PartId part, LocalText what, LocalText station, boolean begun, long expectedMs) {}
