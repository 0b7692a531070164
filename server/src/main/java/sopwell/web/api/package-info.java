/**
 * The interface for other programs: JSON over HTTP and over sockets.
 *
 * <p>Purpose: everything a screen can do, for software. Rules: every refusal is a problem document
 * (RFC 9457) with a code and a sentence; every write takes an idempotency key; nothing here waits
 * on an I/O thread. Threading: handlers are stateless. What breaks if this changes: other people's
 * programs.
 */
package sopwell.web.api;
