package sopwell.log;

/**
 * What taking names out comes to, once the event that says so is appended. Immutable.
 *
 * @param names how many texts are other ones than before
 * @param digest stands for every changed event as it is afterwards, 64 hexadecimal digits
 */
public record Blanked(int names, String digest) {}
