package sopwell.menu;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;

/** The checks of pans: that everything that empties one is on the menu. Stateless. */
final class MenuCheckPans {
    private final MenuParts parts;
    private final Faults faults;
    private final Map<String, Item> items = new HashMap<>();
    private final Map<String, Group> groupOfOption = new HashMap<>();

    private MenuCheckPans(MenuParts parts, Faults faults) {
        this.parts = parts;
        this.faults = faults;
        parts.items().forEach(item -> items.putIfAbsent(item.id(), item));
        for (Group group : parts.groups()) {
            group.options().forEach(option -> groupOfOption.putIfAbsent(option.id(), group));
        }
    }

    static void faults(MenuParts parts, Faults faults) {
        MenuCheckPans check = new MenuCheckPans(parts, faults);
        for (int p = 0; p < parts.pans().size(); p++) {
            check.pan("/pans/" + p, parts.pans().get(p));
        }
    }

    private void pan(String place, Pan pan) {
        List<String> stations = parts.stations().stream().map(Station::id).toList();
        if (!stations.contains(pan.station())) {
            faults.unknown(place + "/station", "station", pan.station(), stations);
        }
        MenuCheck.number(place + "/full", pan.full(), 1, Limits.PAN_AMOUNT_MAX, faults);
        MenuCheck.number(
                place + "/reheatMinutes",
                pan.reheatMinutes(),
                0,
                Limits.PAN_REHEAT_MINUTES_MAX,
                faults);
        if (pan.uses().isEmpty()) {
            faults.add(
                    place + "/uses",
                    "Nothing takes from the pan \"" + pan.id() + "\".",
                    "Say how much an item or a modifier takes.");
        }
        Map<String, Integer> places = new HashMap<>();
        for (int u = 0; u < pan.uses().size(); u++) {
            Pan.Use use = pan.uses().get(u);
            use(place + "/uses/" + u, pan, use);
            String what = use.item() + " " + use.size() + " " + use.option();
            Integer first = places.putIfAbsent(what, u);
            if (first != null) {
                faults.add(
                        place + "/uses/" + u,
                        "The same is said at " + place + "/uses/" + first + ".",
                        "Say once how much it takes.");
            }
        }
        sizes(place, pan);
    }

    private void use(String place, Pan pan, Pan.Use use) {
        names(place, use);
        if (use.option().isEmpty() && use.percent() != 0) {
            faults.add(
                    place + "/percent",
                    "What an item takes by itself is no percentage.",
                    "Write an \"amount\"; percentages are for modifiers.");
        } else if ((use.amount() == 0) == (use.percent() == 0)) {
            faults.add(
                    place,
                    "It does not say how much, or says it twice.",
                    "Write either an \"amount\" or a \"percent\", above 0.");
        } else if (use.percent() != 0) {
            MenuCheck.number(place + "/percent", use.percent(), 1, Limits.PAN_PERCENT_MAX, faults);
        } else {
            MenuCheck.number(place + "/amount", use.amount(), 1, pan.full(), faults);
        }
    }

    private void names(String place, Pan.Use use) {
        Optional<Item> item = Optional.ofNullable(items.get(use.item()));
        if (use.item().isEmpty() && use.option().isEmpty()) {
            faults.add(
                    place,
                    "It does not say what takes from the pan.",
                    "Name an \"item\", an \"option\", or both.");
        }
        if (!use.item().isEmpty() && item.isEmpty()) {
            faults.unknown(place + "/item", "item", use.item(), items.keySet());
        }
        if (!use.size().isEmpty()) {
            size(place, use, item);
        }
        if (!use.option().isEmpty()) {
            option(place, use, item);
        }
    }

    private void size(String place, Pan.Use use, Optional<Item> item) {
        if (item.isEmpty() || !use.option().isEmpty()) {
            faults.add(
                    place + "/size",
                    "A size stands beside an item and no modifier.",
                    "Leave the size out, or name its item and leave the modifier out.");
        } else if (item.get().size(use.size()).isEmpty()) {
            List<String> sizes = item.get().sizes().stream().map(Size::id).toList();
            faults.unknown(place + "/size", "size of this item", use.size(), sizes);
        }
    }

    private void option(String place, Pan.Use use, Optional<Item> item) {
        Group group = groupOfOption.get(use.option());
        if (group == null) {
            faults.unknown(place + "/option", "modifier", use.option(), groupOfOption.keySet());
        } else if (item.isPresent() && !item.get().groups().contains(group.id())) {
            faults.add(
                    place + "/option",
                    "\"" + use.item() + "\" does not take \"" + use.option() + "\".",
                    "Give the item that modifier's group, or leave the use out.");
        }
    }

    /** An item whose sizes are named one by one has none left out. */
    private void sizes(String place, Pan pan) {
        for (Item item : parts.items()) {
            List<Pan.Use> own =
                    pan.uses().stream()
                            .filter(use -> use.option().isEmpty() && use.item().equals(item.id()))
                            .toList();
            if (own.isEmpty() || own.stream().anyMatch(use -> use.size().isEmpty())) {
                continue;
            }
            for (Size size : item.sizes()) {
                if (own.stream().noneMatch(use -> use.size().equals(size.id()))) {
                    faults.add(
                            place + "/uses",
                            "How much a " + size.id() + " \"" + item.id() + "\" takes is not said.",
                            "Name each of its sizes, or none for all.");
                }
            }
        }
    }
}
