/**
 * Days that are over, or the newest as far as it got, looked at again.
 *
 * <p>Purpose: any board at any moment of a day, the curve of its waits, and questions about the
 * whole of it. Rules: reads the log, never writes; draws with what draws the screens of now.
 * Threading: everything is done on one thread of its own with a short queue, so that nothing that
 * is shown now waits for it; {@link sopwell.web.past.PastDays} may be called from any thread. What
 * breaks if this changes: playback and what-if.
 */
package sopwell.web.past;
