/**
 * What the stand keeps on disk, and how it is written.
 *
 * <p>Purpose: the event log on SQLite and in memory, the codec between events and their written
 * form, the menu and stand files, and the data folder that holds them. Rules: a written form is
 * never changed, only joined by a newer version; nothing is shown before it is durable; a file that
 * can't be read in full is refused with every fault it has. Threading: each type says so. What
 * breaks if this changes: every data folder ever written.
 */
package sopwell.storage;
