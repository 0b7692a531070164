/**
 * The single writer, and the follower that shows what it wrote.
 *
 * <p>Purpose: takes commands one by one, keeps their events, answers after they are durable, and
 * hands them to everything that shows. Rules: only the desk's thread decides and appends; only the
 * follower's thread touches what is shown; nothing is shown before it is durable. A failed store or
 * a broken rule throws the desk's state away and rebuilds it from the log. Threading: {@link
 * sopwell.desk.Desk} and {@link sopwell.desk.Follower} may be called from any thread.
 */
package sopwell.desk;
