/**
 * Backups of a running stand and the way back from one. A backup is one file that SQLite makes out
 * of the running log; it has its name only when it was opened, read whole and replayed to what the
 * stand is.
 */
package sopwell.backup;
