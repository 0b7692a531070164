package sopwell.orders;

/**
 * Asks for a paper about an order of the newest day, open or not.
 *
 * @param paper {@link Papers#SLIP}, or the id of the station whose ticket it is
 */
public record PaperCommand(String order, String paper) {}
