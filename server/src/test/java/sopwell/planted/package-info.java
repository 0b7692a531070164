/** Bugs that are put in on purpose, one at a time, to see that a named test finds each. */
package sopwell.planted;
