/**
 * When to start what, so that it is ready in time: prep tasks and orders, each with its reasons.
 *
 * <p>Purpose: a start list that a kitchen can trust. Rules: times are minutes that really pass, so
 * a change of the clocks lengthens nothing; hours are the stand's wall time; nothing is dropped in
 * silence: what can't be done in time stands in the plan as a warning that says what stood in the
 * way. Pure; the same question gives the same plan. Threading: a {@link sopwell.prep.plan.Calendar}
 * belongs to one thread; all else is immutable or stateless. The method is described in {@code
 * docs/prep-plan.md}.
 */
package sopwell.prep.plan;
