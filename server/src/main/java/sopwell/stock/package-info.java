/**
 * What is kept on the stations and how long it lasts. Pure: no I/O, no clock, no randomness.
 *
 * <p>Knows orders, menu and log. What is made at a station is told to it by the desk's stand, so
 * that it needs to know nothing of the kitchen.
 */
package sopwell.stock;
