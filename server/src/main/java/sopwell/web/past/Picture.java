package sopwell.web.past;

import sopwell.menu.Menu;
import sopwell.web.live.Frame;

/**
 * A board as it was at one moment. Immutable.
 *
 * @param frame the whole board, seen at that moment
 * @param menu the menu that was in force
 */
public record Picture(Frame frame, Menu menu) {}
