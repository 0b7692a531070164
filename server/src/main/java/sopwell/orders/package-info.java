/**
 * Orders and the business day.
 *
 * <p>Purpose: what may be done to an order, and what is known of it. Rules: {@code decide} looks
 * and never changes; {@code apply} changes and never refuses; both are pure. Threading: {@link
 * sopwell.orders.Orders} belongs to one thread; everything else is immutable.
 */
package sopwell.orders;
