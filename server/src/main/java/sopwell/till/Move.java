package sopwell.till;

/**
 * Money that went into or out of a till for a reason: paid in, paid out, or given back to a guest.
 * Immutable.
 *
 * @param kind {@link TillEvent.Kind#PAID_IN}, {@link TillEvent.Kind#PAID_OUT} or {@link
 *     TillEvent.Kind#REFUNDED}
 * @param atMs milliseconds since 1970-01-01 UTC
 * @param order the order that a refund is for, else empty
 * @param means cash, but for refunds to a card
 */
public record Move(
        TillEvent.Kind kind,
        long atMs,
        String cashier,
        String order,
        Means means,
        long cents,
        String reason) {}
