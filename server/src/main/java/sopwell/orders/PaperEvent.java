package sopwell.orders;

import sopwell.log.Event;

/** What is printed. */
public sealed interface PaperEvent extends Event {
    /**
     * A paper about an order was made.
     *
     * @param paper {@link Papers#SLIP}, or the id of the station whose ticket it is
     * @param copy how many of the same were made before it; 0 for the first
     */
    record PaperPrinted(String order, String paper, int copy) implements PaperEvent {}
}
