/**
 * What each screen shows, as data.
 *
 * <p>Purpose: turns orders and parts into rows. Rules: pure functions of what the slices know; no
 * markup, no language picked; two equal rows look alike. Threading: everything here is immutable
 * but {@link sopwell.boards.Digits}, which belongs to one thread. What breaks if this changes: the
 * screens and the JSON frames.
 */
package sopwell.boards;
