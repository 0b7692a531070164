/**
 * Live screens over WebSocket.
 *
 * <p>Purpose: sends each screen the whole board when it connects and what changed after that.
 * Rules: only durable events are shown; every frame carries the log's place; a screen that can't
 * keep up loses frames, never the server's time, and gets the whole board when it can. Threading:
 * boards are drawn up on the follower's thread; sending is asynchronous, one frame under way to a
 * screen at a time.
 */
package sopwell.web.live;
