/**
 * How much to have: the cost of running short against the cost of what is left over.
 *
 * <p>Purpose: quantities whose arithmetic can be shown. Rules: amounts of one ingredient are in its
 * base unit; costs are money for one such unit, in cents; where a tie decides, whole numbers or
 * decimals are compared, not floating point. Pure; the same input gives the same answer. Threading:
 * immutable or stateless throughout. The method is described in {@code docs/prep-plan.md}.
 */
package sopwell.prep.quantity;
