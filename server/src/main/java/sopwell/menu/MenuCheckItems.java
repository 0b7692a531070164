package sopwell.menu;

import java.util.List;
import sopwell.Limits;

/** The checks of items: prices, sizes, groups and days. Stateless. */
final class MenuCheckItems {
    private MenuCheckItems() {}

    static void faults(MenuParts parts, Faults faults) {
        List<String> groups = parts.groups().stream().map(Group::id).toList();
        for (int i = 0; i < parts.items().size(); i++) {
            Item item = parts.items().get(i);
            String place = "/items/" + i;
            prices(place, item, faults);
            defaultSize(place, item, faults);
            for (int g = 0; g < item.groups().size(); g++) {
                if (!groups.contains(item.groups().get(g))) {
                    faults.unknown(place + "/groups/" + g, "group", item.groups().get(g), groups);
                }
            }
            MenuCheck.number(
                    place + "/keepsSeconds",
                    item.keepsSeconds(),
                    0,
                    Limits.ITEM_KEEPS_SECONDS_MAX,
                    faults);
            MenuCheck.repeats(place + "/groups", item.groups(), faults);
            MenuCheck.repeats(place + "/days", item.days(), faults);
            MenuCheck.allergens(place, item.allergens(), faults);
        }
    }

    private static void prices(String place, Item item, Faults faults) {
        MenuCheck.price(place, item.priceCents(), faults);
        for (int s = 0; s < item.sizes().size(); s++) {
            MenuCheck.price(place + "/sizes/" + s, item.sizes().get(s).priceCents(), faults);
        }
        if (!item.sizes().isEmpty() && item.priceCents() != 0) {
            faults.add(
                    place + "/priceCents",
                    "\"" + item.id() + "\" has a price of its own and sizes with prices.",
                    "Leave the item's price out: each size has one.");
        }
    }

    private static void defaultSize(String place, Item item, Faults faults) {
        String id = item.defaultSize();
        if (!id.isEmpty() && item.size(id).isEmpty()) {
            List<String> sizes = item.sizes().stream().map(Size::id).toList();
            faults.unknown(place + "/defaultSize", "size of this item", id, sizes);
        }
    }
}
