/**
 * Cuts the power and fails the disk under the real log: a recorder in C stands between a process
 * and its disk, and every disk that a power cut could have left is made and opened.
 *
 * <p>Run longer by hand: see {@code DEVELOPERS.md}.
 */
package sopwell.power;
