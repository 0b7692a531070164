/**
 * The way into Sopwell's Java from the counter's page, where it runs as JavaScript.
 *
 * <p>Purpose: {@link sopwell.page.Reader} is what the page's scripts call; the build compiles it
 * and everything it reaches ({@code counter}, {@code call}, {@code menu}, {@code money}) into one
 * script. Rules: thin; texts go in and texts come out; never part of the server, and left out of
 * the jar. Threading: a browser's page has one thread. What breaks if this changes: the page's
 * scripts, which call these names.
 */
package sopwell.page;
