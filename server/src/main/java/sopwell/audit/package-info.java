/**
 * Who did what must be answered for.
 *
 * <p>Purpose: the words about it in the log, which hold ids and never a name. Rules: what was done
 * is said by the slice that it belongs to; here stands by whom. Threading: everything is immutable.
 */
package sopwell.audit;
