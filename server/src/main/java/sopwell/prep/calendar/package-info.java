/**
 * What the owner knows of coming days before anybody has sold anything on them: closed days, other
 * hours, occasions, and first guesses. Pure: no I/O, no clock.
 */
package sopwell.prep.calendar;
