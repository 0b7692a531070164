/**
 * Kills the real server and looks at what is left.
 *
 * <p>Run longer by hand: see {@code DEVELOPERS.md}.
 */
package sopwell.crash;
