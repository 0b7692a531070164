/**
 * The stand's screens as HTML.
 *
 * <p>Purpose: the routes that people's browsers use, what each screen shows, and the templates that
 * draw it. Rules: one template per thing serves the page, the reply to a press, and the frame; text
 * comes from the bundles and the menu; every change asks the desk under an idempotency key; what
 * waits, waits at most five seconds. Threading: everything is stateless or thread-safe; handlers
 * run on worker threads.
 */
package sopwell.web.pages;
