package sopwell.stock.recipes;

import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.stock.recipes.RecipeFault.Kind;

/** The checks of what sold pieces take: that it is sold, and said once. For one check. */
final class UseCheck {
    private final RecipeParts parts;
    private final Menu menu;
    private final FoundFaults faults;
    private final List<String> ingredients;

    UseCheck(RecipeParts parts, Menu menu, FoundFaults faults) {
        this.parts = parts;
        this.menu = menu;
        this.faults = faults;
        this.ingredients = parts.ingredients().stream().map(Ingredient::id).toList();
    }

    void check() {
        for (int n = 0; n < parts.uses().size(); n++) {
            Use use = parts.uses().get(n);
            String place = "/uses/" + n;
            faults.known(
                    place + "/ingredient", Kind.UNKNOWN_INGREDIENT, use.ingredient(), ingredients);
            subject(place, use);
            howMuch(place, use);
        }
        faults.twice("/uses", parts.uses().stream().map(UseCheck::subject).toList());
    }

    /** What a use is about, to find those that say the same; a percentage is another thing. */
    private static String subject(Use use) {
        StringBuilder subject = new StringBuilder(use.ingredient());
        for (String part : List.of(use.item(), use.size(), use.option())) {
            subject.append(part.isEmpty() ? "" : " · " + part);
        }
        return subject.append(use.isPercent() ? " %" : "").toString();
    }

    private void subject(String place, Use use) {
        if (use.item().isEmpty() && use.option().isEmpty()) {
            faults.add(place, Kind.USE_OF_NOTHING);
        }
        Optional<Item> item =
                menu.hasItem(use.item()) ? Optional.of(menu.item(use.item())) : Optional.empty();
        if (!use.item().isEmpty()) {
            List<String> items = menu.items().stream().map(Item::id).toList();
            faults.known(place + "/item", Kind.UNKNOWN_ITEM, use.item(), items);
        }
        if (!use.size().isEmpty()) {
            size(place, use, item);
        }
        if (!use.option().isEmpty()) {
            option(place, use, item);
        }
    }

    private void size(String place, Use use, Optional<Item> item) {
        if (use.item().isEmpty()) {
            faults.add(place + "/size", Kind.SIZE_WITHOUT_ITEM);
        } else if (item.isPresent()) {
            List<String> sizes = item.get().sizes().stream().map(Size::id).toList();
            faults.known(place + "/size", Kind.UNKNOWN_SIZE, use.size(), sizes);
        }
    }

    private void option(String place, Use use, Optional<Item> item) {
        List<String> options =
                menu.groups().stream()
                        .flatMap(group -> group.options().stream().map(Option::id))
                        .toList();
        faults.known(place + "/option", Kind.UNKNOWN_OPTION, use.option(), options);
        if (item.isPresent()
                && menu.hasOption(use.option())
                && !item.get().groups().contains(menu.groupOf(use.option()).id())) {
            faults.add(place + "/option", Kind.OPTION_NOT_TAKEN, use.item(), use.option());
        }
    }

    private void howMuch(String place, Use use) {
        boolean amount = use.amount().signum() != 0;
        if (use.option().isEmpty() && use.isPercent()) {
            faults.add(place + "/percent", Kind.PERCENT_OF_ITEM);
        } else if (amount == use.isPercent()) {
            faults.add(place, Kind.USE_HOW_MUCH);
        } else if (amount) {
            faults.amount(place + "/amount", use.amount());
        } else {
            faults.number(place + "/percent", use.percent(), 1, Limits.USE_PERCENT_MAX);
        }
    }
}
