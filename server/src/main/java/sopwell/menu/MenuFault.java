package sopwell.menu;

/**
 * One thing wrong with a menu. Immutable.
 *
 * @param place where, as a JSON Pointer (RFC 6901) into the menu file
 * @param wrong what is wrong, one sentence
 * @param right what would be right, one sentence
 */
public record MenuFault(String place, String wrong, String right) {}
