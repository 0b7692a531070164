/**
 * What is bought and made, in what amounts, and what each sold piece takes of it. Pure: no I/O, no
 * clock, no randomness.
 *
 * <p>Amounts are exact decimals in an ingredient's base unit: grams, millilitres or pieces. Knows
 * the orders' refusals, the menu and the log.
 */
package sopwell.stock.recipes;
