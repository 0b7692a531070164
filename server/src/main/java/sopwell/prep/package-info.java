/**
 * The prep planner: what the next days will ask for, how much to make, and when to start. Pure: no
 * I/O, no clock, no randomness. {@code forecast}, {@code quantity} and {@code plan} do the three.
 */
package sopwell.prep;
