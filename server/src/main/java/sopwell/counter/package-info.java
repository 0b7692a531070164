/**
 * What the counter shows of a call, on the server and in the page alike.
 *
 * <p>Purpose: {@link sopwell.counter.CallViews} reads a call, prices it and finds the words for
 * what is wrong with it; {@link sopwell.counter.Kit} is everything that is needed for that, in a
 * plain written form that travels to the browser. Rules: pure, because the same classes run as
 * JavaScript in the counter's page; nothing that the browser's Java does not have (no streams of
 * bytes, no formatter, no reflection). Threading: everything here is immutable or local to one
 * reading. What breaks if this changes: what a cashier reads back with the server away, and the
 * test that compares the page with the server call by call.
 */
package sopwell.counter;
