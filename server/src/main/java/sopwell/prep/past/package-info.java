/**
 * What became of past plans of prep: planned, made, used, left, short; and what it cost. Pure: no
 * I/O, no clock. Everything but {@link sopwell.prep.past.DayReading} is immutable or stateless.
 */
package sopwell.prep.past;
