/**
 * The event log as the core sees it.
 *
 * <p>Purpose: what an event is, and the port through which events are kept. Rules: imports nothing
 * of ours but the root's checks; storage implements the port. Threading: {@link
 * sopwell.log.EventLog} says which calls are the desk's alone. What breaks if this changes: every
 * data folder ever written.
 */
package sopwell.log;
