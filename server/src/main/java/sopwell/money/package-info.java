/**
 * Money and tax.
 *
 * <p>Purpose: amounts that cannot be misused. Rules: whole cents only, exact arithmetic, every
 * rounding is named; imports nothing of ours. Threading: all types are immutable.
 */
package sopwell.money;
