/**
 * What a day sold, how it was made, and how long guests waited.
 *
 * <p>Purpose: counts and waits of one business day. Rules: follows from orders and parts alone, so
 * it can always be counted again; void orders don't count; pure. Threading: everything here is
 * immutable.
 */
package sopwell.mix;
