package sopwell.menu;

import sopwell.Check;

/** What one piece costs. Stateless. */
public final class Pricing {
    private Pricing() {}

    /**
     * The price of one piece made this way, in cents: the item in its size and every chosen
     * modifier.
     */
    public static long unitCents(Menu menu, Selection selection) {
        Item item = menu.item(selection.item());
        long cents = item.priceCents();
        if (!item.sizes().isEmpty()) {
            java.util.Optional<Size> size = item.size(selection.size());
            Check.that(size.isPresent(), "a selection's size is one of its item's");
            cents = size.get().priceCents();
        }
        for (String option : selection.options()) {
            cents = Math.addExact(cents, menu.option(option).priceCents());
        }
        return cents;
    }
}
