/**
 * The kitchen's side of an order.
 *
 * <p>Purpose: which station makes which part, in which steps, how far each part is, and what wait
 * to quote. Rules: parts follow from orders and the menu, never the other way; {@code decide} looks
 * and never changes; {@code apply} changes and never refuses; pure. Threading: {@link
 * sopwell.kitchen.Kitchen} belongs to one thread; everything else is immutable.
 */
package sopwell.kitchen;
