/**
 * What the stand can do, measured beside what the machine can do, in one run.
 *
 * <p>Never part of the checks: {@code DEVELOPERS.md} has the command for each.
 */
package sopwell.bench;
