/**
 * Damages the files of a log as failing disks and careless hands do, and looks whether it is found.
 *
 * <p>Run longer by hand: see {@code DEVELOPERS.md}.
 */
package sopwell.damage;
