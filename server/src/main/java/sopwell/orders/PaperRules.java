package sopwell.orders;

import sopwell.menu.Menu;

/** What may be printed. Stateless and pure: looks, never changes. */
public final class PaperRules {
    private PaperRules() {}

    /**
     * The event that a command comes to, or why it is refused.
     *
     * @param menu the menu in force; a station that left it prints nothing
     */
    public static Decision decide(Papers papers, Orders orders, PaperCommand command, Menu menu) {
        if (orders.find(command.order()).isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_ORDER, command.order());
        }
        if (!command.paper().equals(Papers.SLIP) && !menu.hasStation(command.paper())) {
            return Decision.refused(Reason.UNKNOWN_PAPER, command.paper());
        }
        return Decision.accepted(
                new PaperEvent.PaperPrinted(
                        command.order(),
                        command.paper(),
                        papers.made(command.order(), command.paper())));
    }
}
