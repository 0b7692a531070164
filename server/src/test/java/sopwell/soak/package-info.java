/**
 * A stand that is open for a whole day, hour after hour, to see that it holds no more at the end.
 */
package sopwell.soak;
