package sopwell.access;

/**
 * A program's token was made. Local to its request: the token is shown once and never again.
 *
 * @param secret what the program shows
 */
public record MadeToken(ProgramToken token, String secret) {}
