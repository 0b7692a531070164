/**
 * The stand's face to people and programs: HTTP routes, pages, the program interface, sockets.
 *
 * <p>Purpose: turns requests into commands for the desk and what the follower knows into pages,
 * JSON and frames. Rules: never imports storage; handlers that wait run off the I/O threads.
 * Threading: handlers are stateless and may run on many threads at once.
 */
package sopwell.web;
