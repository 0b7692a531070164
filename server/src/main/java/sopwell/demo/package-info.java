/**
 * The demo: a stand of our own invention.
 *
 * <p>Purpose: a lunch already under way, so that every screen has something to show. Rules: goes
 * through the real desk like any order; the same seed makes the same lunch; all names are invented.
 * Threading: used once, before the stand opens its doors.
 */
package sopwell.demo;
