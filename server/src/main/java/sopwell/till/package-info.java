/**
 * Payments, refunds and the till.
 *
 * <p>Purpose: who paid what for which order, what should be in each drawer, and what the day came
 * to. Rules: {@code decide} looks and never changes; {@code apply} changes and never refuses; both
 * are pure. A guest's money is never turned away for want of an open till: it is noted apart and
 * shown. Threading: {@link sopwell.till.Till} belongs to one thread; everything else is immutable.
 */
package sopwell.till;
