/**
 * Money: tax, discounts, what an order comes to, cash and its rounding, and the numbers of payment
 * cards, which are kept out.
 *
 * <p>Purpose: amounts that cannot be misused. Rules: whole cents only, exact arithmetic, every
 * rounding is named; imports nothing of ours. Currencies have hundredths (ISO 4217 minor unit 2:
 * dollar, euro, pound, krona, rupee); those without (yen, peso of Chile) or with thousandths (dinar
 * of Kuwait) are not dealt with. Threading: all types are immutable.
 */
package sopwell.money;
