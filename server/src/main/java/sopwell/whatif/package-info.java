/**
 * A day's guests and work again, with other hands.
 *
 * <p>Purpose: says what the waits of a day would have been with another pair of hands, another
 * basket or more guests, and how true such an answer is, by doing the unchanged day again beside
 * what was measured. Rules: pure; every draw depends on what it is for and on a seed, so that two
 * tries differ by what was changed alone. Threading: everything is immutable but what one run works
 * with. What breaks if this changes: the what-if page.
 */
package sopwell.whatif;
