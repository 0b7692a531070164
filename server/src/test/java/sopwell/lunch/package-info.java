/**
 * Simulated lunches.
 *
 * <p>Purpose: show that the schedule, the quote and the estimate of hands are worth having, and how
 * much. Rules: every order and every tap goes through the stand's real rules; guests and cooks are
 * drawn from distributions that are stated here; the same seed is the same lunch, under every
 * policy. Threading: one lunch is one thread's.
 */
package sopwell.lunch;
